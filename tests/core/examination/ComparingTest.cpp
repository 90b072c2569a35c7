// Like is compared with like, and nothing is said where no figure is published.
#include "core/examination/ComparingWords.h"

#include <gtest/gtest.h>

#include <cmath>

namespace raphe {

namespace {

Movement hipFlexion()
{
    Movement m;
    m.id = "hip-flexion";
    m.furthest = 180;
    const auto norm = [](MoveMode mode, Device device, std::optional<Sex> sex, int from, int to, double mean,
                          std::optional<double> sd) {
        return Norm{mode, device, sex, from, to, mean, {}, sd, "s", Reading::Memory};
    };
    m.norms = {norm(MoveMode::Passive, Device::Goniometer, Sex::Female, 20, 44, 134, {}),
        norm(MoveMode::Passive, Device::Goniometer, Sex::Male, 20, 44, 130, {}),
        norm(MoveMode::Passive, Device::Goniometer, Sex::Male, 30, 40, 120, 8.0),
        norm(MoveMode::Active, Device::Inclinometer, {}, 20, 60, 118, 10.0)};
    m.errors = {{MoveMode::Passive, Device::Goniometer, ErrorKind::Sem, 3, "s", Reading::Memory},
        {{}, Device::Inclinometer, ErrorKind::Mdc90, 9, "s", Reading::Memory}};
    return m;
}

Measure measured(double value, Side side = Side::Right, std::optional<MoveMode> mode = MoveMode::Passive,
    std::optional<Device> device = Device::Goniometer)
{
    Measure m;
    m.movement = "hip-flexion";
    m.side = side;
    m.value = value;
    m.mode = mode;
    m.device = device;
    return m;
}

TEST(ComparingTest, AgeSexModeAndDeviceChooseTheNorm)
{
    const Movement m = hipFlexion();
    EXPECT_EQ(comparedWithNorm(m, measured(120), {Sex::Female, 30}).norm, &m.norms[0]);
    EXPECT_EQ(comparedWithNorm(m, measured(120), {Sex::Male, 25}).norm, &m.norms[1]);
    EXPECT_EQ(comparedWithNorm(m, measured(120), {Sex::Male, 35}).norm, &m.norms[2]) << "the narrower band";
    EXPECT_EQ(comparedWithNorm(m, measured(120, Side::Left, MoveMode::Active, Device::Inclinometer), {{}, 35}).norm, &m.norms[3])
        << "a norm of both sexes asks for none";
}

TEST(ComparingTest, AZScoreOnlyWhereTheSourceGivesAnSd)
{
    const Movement m = hipFlexion();
    const NormComparison plain = comparedWithNorm(m, measured(124), {Sex::Female, 44});
    EXPECT_DOUBLE_EQ(plain.difference, -10);
    EXPECT_FALSE(plain.z);
    const NormComparison scored = comparedWithNorm(m, measured(104), {Sex::Male, 40});
    EXPECT_DOUBLE_EQ(scored.difference, -16);
    EXPECT_DOUBLE_EQ(scored.z.value(), -2);
}

TEST(ComparingTest, AnotherSourceIsNamedToo)
{
    Movement m = hipFlexion();
    EXPECT_EQ(comparedWithNorm(m, measured(120), {Sex::Male, 35}).other, nullptr) << "its other bands are no second opinion";
    m.norms[1].source = "t";
    const NormComparison both = comparedWithNorm(m, measured(120), {Sex::Male, 35});
    EXPECT_EQ(both.norm, &m.norms[2]);
    EXPECT_EQ(both.other, &m.norms[1]);
    EXPECT_NE(inWords(m, both).find("another sample, men of 20-44 years: 130 degrees (T, from memory)"), std::string::npos)
        << inWords(m, both);
}

TEST(ComparingTest, WhatIsMissingIsSaid)
{
    const Movement m = hipFlexion();
    Measure watched = measured(0);
    watched.value.reset();
    EXPECT_EQ(comparedWithNorm(m, watched, {Sex::Male, 35}).why, NoNorm::NotMeasured);
    EXPECT_EQ(comparedWithNorm(m, measured(1, Side::Right, {}), {Sex::Male, 35}).why, NoNorm::ModeUnknown);
    EXPECT_EQ(comparedWithNorm(m, measured(1, Side::Right, MoveMode::Passive, {}), {Sex::Male, 35}).why, NoNorm::DeviceUnknown);
    EXPECT_EQ(comparedWithNorm(m, measured(1), {Sex::Male, {}}).why, NoNorm::AgeUnknown);
    EXPECT_EQ(comparedWithNorm(m, measured(1), {{}, 35}).why, NoNorm::SexUnknown);
    EXPECT_EQ(comparedWithNorm(m, measured(1), {Sex::Male, 70}).why, NoNorm::NonePublished);
    EXPECT_EQ(comparedWithNorm(m, measured(1, Side::Right, MoveMode::Active), {Sex::Male, 35}).why, NoNorm::NonePublished)
        << "an active range is never held against a passive one";
    EXPECT_EQ(comparedWithNorm(m, measured(1, Side::Right, MoveMode::Passive, Device::Phone), {Sex::Male, 35}).why,
        NoNorm::NonePublished);
    for (const NoNorm why : {NoNorm::AgeUnknown, NoNorm::SexUnknown})
        EXPECT_EQ(comparedWithNorm(m, measured(1),
                      {why == NoNorm::SexUnknown ? std::nullopt : std::optional(Sex::Male),
                          why == NoNorm::AgeUnknown ? std::nullopt : std::optional(35)})
                      .norm,
            nullptr);
}

TEST(ComparingTest, ADeviceThatCannotMeasureItIsNotTold)
{
    Movement m = hipFlexion();
    EXPECT_EQ(deviceFor(m, Device::Goniometer), Device::Goniometer);
    EXPECT_EQ(deviceFor(m, Device::Tape), std::nullopt) << "degrees";
    m.unit = Unit::Millimetres;
    EXPECT_EQ(deviceFor(m, Device::Goniometer), std::nullopt);
    EXPECT_EQ(deviceFor(m, Device::Ruler), Device::Ruler);
    EXPECT_EQ(deviceFor(m, Device::Eye), Device::Eye);
    EXPECT_EQ(deviceFor(m, {}), std::nullopt);
}

TEST(ComparingTest, SidesAgainstThePublishedError)
{
    const Movement m = hipFlexion();
    const double least = 1.96 * std::sqrt(2.0) * 3; // Weir 2005: from the SEM
    const auto sides = [&](double right, double left) {
        return comparedSides(m, {measured(right), measured(left, Side::Left)}, MoveMode::Passive);
    };
    EXPECT_EQ(sides(120, 120 + least - 0.01)->beyond, Beyond::Within);
    EXPECT_EQ(sides(120, 120 + least + 0.01)->beyond, Beyond::Beyond);
    EXPECT_DOUBLE_EQ(sides(100, 110)->difference, -10);
    EXPECT_DOUBLE_EQ(sides(110, 100)->difference, 10) << "mirrored, the difference turns its sign";
}

TEST(ComparingTest, WithoutAPublishedErrorNothingIsCalledMore)
{
    Movement m = hipFlexion();
    const auto both = [](Device device) {
        return std::vector{
            measured(10, Side::Right, MoveMode::Passive, device), measured(90, Side::Left, MoveMode::Passive, device)};
    };
    EXPECT_EQ(comparedSides(m, both(Device::Phone), MoveMode::Passive)->beyond, Beyond::Unknown);
    EXPECT_EQ(comparedSides(m, both(Device::Inclinometer), MoveMode::Passive)->beyond, Beyond::Beyond)
        << "an error without a mode holds for both";
    m.errors.clear();
    EXPECT_EQ(comparedSides(m, both(Device::Goniometer), MoveMode::Passive)->beyond, Beyond::Unknown);
}

TEST(ComparingTest, UnlikeSidesAreNotCompared)
{
    const Movement m = hipFlexion();
    EXPECT_FALSE(comparedSides(m, {measured(1)}, MoveMode::Passive));
    EXPECT_FALSE(comparedSides(m, {measured(1), measured(2, Side::Left, MoveMode::Passive, Device::Eye)}, MoveMode::Passive));
    EXPECT_FALSE(comparedSides(m, {measured(1), measured(2, Side::Left, MoveMode::Active)}, MoveMode::Passive));
}

} // namespace

} // namespace raphe
