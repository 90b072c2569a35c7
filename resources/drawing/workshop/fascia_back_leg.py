"""Back view: sheets and bands of the knee hollow and the ankle, and the partition and arch between muscles.

Drawn from memory of anatomy over the bones and muscles of this region.
"""
from pen import Shape, closed, ribbon, stroke

SHAPES = []


def sheet(id_, d, fibres=(), piece=1, z=1.0, layer="deep-fascia"):
    SHAPES.append(Shape(id_, layer, d, [stroke(f) for f in fibres], piece, z))


sheet("posterior-intermuscular-septum-of-leg", ribbon(
    [(74.4, 758), (78.6, 776), (81, 800), (79.6, 826), (75.4, 852), (70.6, 878), (66.8, 904), (64, 930)],
    [1.2, 2, 2, 2, 2, 2, 1.8, 1.2], blunt=False), layer="intermediate-muscle", z=0.3)
sheet("tendinous-arch-of-soleus", ribbon(
    [(70.4, 752.6), (66, 756.4), (60, 763), (54.4, 770.4), (48.4, 778.6)], [1.8, 2.8, 3, 2.8, 1.6], blunt=False),
    layer="intermediate-muscle", z=0.1)
sheet("popliteal-fascia", closed([
    (45.6, 684), (53.6, 676), (62.4, 684.4), (70.6, 700), (75.4, 717), (76.2, 734), (73, 749), (64.6, 760), (52, 771),
    (42, 762), (33.6, 751.6), (29.6, 738), (29.8, 721), (35, 703)], (1, 8)),
    [[(34.6, 711), (52.6, 706), (70.4, 711)], [(33.4, 726), (52.6, 722), (72, 726)], [(34, 742), (52.6, 739),
     (71, 742)], [(41, 755), (52.6, 753), (64, 755)]])
sheet("flexor-retinaculum-of-foot", closed([
    (31, 949.6), (34.6, 950.6), (38.4, 958), (43.4, 968), (47, 981), (44.6, 988), (38.4, 990), (34, 983), (31.4, 974),
    (31.6, 965), (30, 957)], (0, 1, 4, 6)),
    [[(33, 953), (36, 963), (41, 974), (43.6, 985)], [(32, 958), (34, 968), (38, 979), (41, 987.6)],
     [(32.4, 969), (35, 978), (38.6, 986)]])
sheet("superior-fibular-retinaculum", closed([
    (69.4, 957), (69, 965), (65.6, 969.6), (60.6, 976.6), (58, 973.6), (59.4, 966.6), (62.6, 959)], (0, 2, 3, 4, 6)),
    [[(68.4, 959.4), (63.6, 966), (59.4, 973.4)], [(67.8, 964.6), (63.8, 969.4), (60.2, 975)]])
sheet("inferior-fibular-retinaculum", closed([
    (60, 978.4), (64, 975), (69.4, 972.4), (70.4, 975.4), (66.4, 979.6), (61.4, 983.4)], (0, 2, 3, 5)),
    [[(61, 979.8), (65.4, 976.6), (69.6, 973.8)], [(61.4, 982), (66, 978.4), (69.8, 975.2)]])
sheet("pes-anserinus", closed([
    (25, 744), (28.6, 743), (32.6, 752), (36.4, 760), (38.2, 770), (38.6, 779), (35, 775), (30.4, 766), (26.4, 755)],
    (0, 1, 5)),
    [[(27.6, 746), (31.4, 756), (36.4, 767)], [(27, 750), (30.4, 760.6), (36, 772)]], z=1.1)
# lies over the tendon, under the skin of the heel
sheet("subcutaneous-calcaneal-bursa", closed([(42.4, 979), (46.6, 977.4), (52.4, 977.4), (56.4, 979), (57, 982.4), (54.6, 985),
                                              (49, 986.6), (43.6, 985.2), (41.6, 982.2)]), z=4)
