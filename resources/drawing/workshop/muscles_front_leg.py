"""Front view: muscles of the lower leg and of the top of the foot.

Heights of attachments follow the published models where those have the muscle; outlines are drawn from memory of
anatomy.
"""
from bones_front_leg import METATARSALS, TOES, ray
from fibres import muscle as drawn
from pen import Shape, closed, ribbon, stroke

SHAPES = []
SUPERFICIAL, INTERMEDIATE, DEEP = "superficial-muscle", "intermediate-muscle", "deep-muscle"


def muscle(*args, z=0.0, **kwargs):
    shape = drawn(*args, **kwargs)
    shape.z = z
    SHAPES.append(shape)


def tendon(id_, layer, points, widths, piece, z=0.0):
    """A tendon as a piece of its muscle, with a stroke along each side of its middle."""
    SHAPES.append(Shape(id_, layer, ribbon(points, widths), [stroke(points)], piece, z))


# ---- deep -----------------------------------------------------------------------------------------------------------
muscle("articularis-genus", DEEP,
       [(55.4, 668), (53.4, 680), (50.4, 692), (48.4, 703)], [(63, 668), (63.4, 680), (62.4, 692), (61.2, 703)], 4,
       end=[(52, 705.4), (57.6, 705.4)], start=[(61, 665.4), (57.4, 665.4)])
for n in range(1, 5):  # each between two metatarsals, tapering to the toe
    (a, b, _, wa, _), (c, d, _, wc, _) = METATARSALS[n], METATARSALS[n + 1]
    inner = ray(a, b, [(0.24, -wa * 0.3), (0.5, -wa * 0.5), (0.76, -wa * 0.9)])
    outer = ray(c, d, [(0.24, wc * 0.3), (0.5, wc * 0.5), (0.76, wc * 0.9)])
    x, y = TOES[n + 1][0] if n > 1 else TOES[2][0]
    tip = (x + (-2.2 if n == 1 else 2), y + 1) if n < 3 else (TOES[n][0][0] + 2, TOES[n][0][1] + 1)
    if n == 2:
        tip = (TOES[2][0][0] + 2.2, TOES[2][0][1] + 1)
    muscle("dorsal-interossei-of-foot", DEEP, inner + [(tip[0] - 0.6, tip[1])], outer + [(tip[0] + 0.6, tip[1])], 3,
           piece=n, lo=0.02, hi=0.98)
SHAPES.append(Shape("tibialis-posterior", DEEP, ribbon(
    [(32.6, 965.6), (33.8, 969), (36.4, 971), (39.4, 971.6)], [1.8, 2.4, 2.6, 2.8]), [
        stroke([(32.8, 966.4), (34, 969), (36.4, 970.9), (39, 971.6)]), stroke([(33.4, 966.6), (34.8, 969), (36.6, 970.2)]),
        stroke([(32.4, 967), (33.6, 969.8), (36, 971.6)])]))

# ---- intermediate ---------------------------------------------------------------------------------------------------
muscle("soleus", INTERMEDIATE,
       [(39.4, 790), (41, 806), (41.6, 830), (41.4, 856), (40.6, 880), (38.6, 904), (35.4, 924), (32.3, 938)],
       [(30, 800), (25, 815), (22.8, 835), (24, 857), (26.8, 879), (29.4, 901), (31.4, 920), (31.8, 938)], 6,
       start=[(34.6, 791)], rounded="both")
muscle("soleus", INTERMEDIATE,
       [(72, 760), (76, 778), (78.4, 800), (77.6, 824), (74.6, 848), (70.8, 872), (68.6, 890)],
       [(77, 760), (82, 778), (84.6, 796), (84.6, 818), (81.6, 843), (77.2, 868), (72.2, 890)], 4, piece=2,
       start=[(74.6, 757.6)], rounded="start")
muscle("extensor-hallucis-longus", INTERMEDIATE,
       [(62, 806), (59.4, 830), (56.4, 860), (53.6, 890), (51.2, 915), (49, 940), (46.8, 957), (44.8, 970), (42, 984),
        (40.2, 994)],
       [(64.8, 806), (64.6, 832), (62.6, 862), (58.6, 892), (54.6, 916), (51.4, 940), (49, 957), (46.8, 970),
        (44, 984), (42.2, 994)], 5, start=[(63.4, 803)], rounded="start")
muscle("fibularis-brevis", INTERMEDIATE,
       [(67.2, 850), (66.4, 872), (65.6, 895), (65.4, 915), (66.2, 932)],
       [(72.6, 846), (72.6, 866), (70.6, 890), (68.6, 912), (67.2, 932)], 4, start=[(69.8, 843)], rounded="start")
tendon("fibularis-brevis", INTERMEDIATE, [(67.6, 968.6), (69.2, 972), (71.2, 975.4), (73.2, 978)], [2, 2.2, 2.2, 2.8], 2)

# ---- superficial ----------------------------------------------------------------------------------------------------
muscle("gastrocnemius-lateral-head", SUPERFICIAL,
       [(79.6, 756), (81.8, 772), (83.4, 790), (83.8, 806), (83, 832)],
       [(80.4, 754), (82.6, 768), (84.9, 786), (85.8, 803), (83.6, 833)], 3, lo=0.1, hi=0.9, z=-1)
muscle("extensor-hallucis-brevis", SUPERFICIAL,
       [(59.6, 968.6), (54, 972), (49.6, 977), (46.2, 983), (43, 989.6)],
       [(61.4, 970.8), (56.6, 975), (52, 979.4), (48, 985), (44.6, 990)], 3, z=-1)
muscle("extensor-digitorum-brevis", SUPERFICIAL,
       [(60.4, 969), (57.4, 972.6), (56, 976.6), (55.8, 980.4)],
       [(65.6, 971.4), (67, 974.4), (67.6, 978), (67.6, 981.4)], 5,
       end=[(58.8, 979.6), (61.6, 981.4), (64.6, 980.6)], start=[(63.2, 969.2)], z=-1, hi=0.9)
for piece, n, start in [(2, 2, (57.2, 979.4)), (3, 3, (61.8, 980)), (4, 4, (66, 980))]:
    x, y = TOES[n][0]
    tendon("extensor-digitorum-brevis", SUPERFICIAL,
           [start, ((start[0] + x + 1.6) / 2 + 0.4, (start[1] + y) / 2), (x + 1.8, y + 0.4), (x + 1.4, y + 3)],
           [1.6, 1.2, 1.1, 0.8], piece, z=-1)
muscle("abductor-hallucis", SUPERFICIAL,
       [(34, 970.6), (33, 976), (32.4, 981), (32.4, 986), (35.4, 991)],
       [(37, 972), (37.4, 977), (36.2, 983), (36.2, 988), (37, 991)], 4, start=[(35.6, 970.4)], rounded="start")
muscle("abductor-digiti-minimi-of-foot", SUPERFICIAL,
       [(71.4, 978.6), (75.8, 981.6), (79.8, 984.4), (82, 988.6)],
       [(72.6, 975), (77.6, 979), (83.4, 983.8), (83.8, 989)], 3, rounded="start")
muscle("fibularis-longus", SUPERFICIAL,
       [(70.6, 750), (73, 764), (74.4, 782), (74.6, 802), (73.2, 828), (70.8, 852), (68.4, 880), (67.4, 905), (67, 925),
        (67, 944)],
       [(75, 751), (78.8, 766), (81.4, 784), (82.4, 803), (81, 824), (77.6, 848), (73.4, 874), (70.4, 897),
        (68.6, 917), (67.6, 944)], 6, start=[(73.2, 747)], hi=0.9)
tendon("fibularis-longus", SUPERFICIAL, [(66.6, 969.8), (68, 972.6), (69.2, 975.4), (69.2, 978.4)], [2, 2.2, 2.2, 1.8], 2)
muscle("extensor-digitorum-longus", SUPERFICIAL,
       [(63.6, 744), (66.2, 757), (67.6, 776), (67.4, 800), (65.4, 826), (62, 852), (58.8, 878), (56.6, 902),
        (55.6, 925), (55, 946), (54.8, 962)],
       [(69, 746), (72.2, 760), (74, 778), (74.2, 802), (72.8, 828), (70.2, 852), (66.8, 878), (62.4, 902), (59.8, 925),
        (58.4, 946), (58.4, 962)], 6, start=[(67, 743)], hi=0.97)
for piece, n in enumerate((2, 3, 4, 5), 2):
    x, y = TOES[n][0]
    start = (53.8 + n * 1.0 - 1, 961)
    tendon("extensor-digitorum-longus", SUPERFICIAL,
           [start, (start[0] + (x - start[0]) * 0.24, 969.4), (start[0] + (x - start[0]) * 0.62, 979),
            (x, y), TOES[n][1], TOES[n][2], ((TOES[n][2][0] + TOES[n][3][0]) / 2, (TOES[n][2][1] + TOES[n][3][1]) / 2)],
           [1.3, 1.4, 1.4, 1.5, 1.4, 1.3, 1], piece)
muscle("fibularis-tertius", SUPERFICIAL,
       [(66.4, 876), (63.4, 898), (61.2, 922), (60.2, 944), (61.4, 958), (65.4, 968), (70, 976)],
       [(68.4, 874), (66.8, 898), (64.6, 922), (62.6, 944), (63.4, 957), (67.4, 966.6), (73, 975.6)], 4,
       start=[(67.6, 872)], rounded="start")
muscle("tibialis-anterior", SUPERFICIAL,
       [(57.4, 746), (54.8, 760), (52.8, 778), (52, 800), (51.8, 830), (51.2, 856), (49.4, 880), (46.6, 902),
        (43.8, 925), (40.8, 948), (38.2, 966), (36.6, 976.6)],
       [(63, 744), (65.6, 757), (67, 776), (66.8, 800), (64.8, 826), (61, 850), (56, 876), (51, 902), (47.6, 925),
        (44.4, 948), (41.4, 966), (39.6, 977.4)], 6, start=[(60, 742.4)], hi=0.97)
