// The palette against WCAG 2.2 (1.4.3, 1.4.6, 1.4.11) and against the three kinds of dichromacy.
//
// Distance: 2.3 in CIE 1976 L*a*b* is just noticeable (Mahy and others 1994, from memory); the
// levels and the next step's button keep ten times that for every kind of eye. Shape and word stand
// beside it anyway.

#include "ui/theme/palette.h"

#include <array>

#include <gtest/gtest.h>

#include "ui/theme/colour_vision.h"
#include "ui/theme/contrast.h"

namespace bathside::ui {
namespace {

constexpr double kApart = 23;
constexpr std::array kVisions{Vision::Full, Vision::Protanopia, Vision::Deuteranopia,
                              Vision::Tritanopia};
constexpr std::array kTold{Role::Good, Role::HeadsUp, Role::Limit, Role::Overrun, Role::Primary};

class PaletteTest : public testing::TestWithParam<Scheme> {
protected:
    const Palette& p = Palette::of(GetParam());

    static void forEachTone(const Palette& palette, const auto& check)
    {
        for (int i = 0; i < kRoles; ++i) {
            SCOPED_TRACE(testing::Message() << "role " << i);
            check(palette.tone(static_cast<Role>(i)));
        }
    }
};

TEST_P(PaletteTest, wordsOnEveryToneKeepWhatIsTimed)
{
    forEachTone(
        p, [](const Tone& tone) { EXPECT_GE(contrastRatio(tone.ink, tone.fill), kTimedContrast); });
}

TEST_P(PaletteTest, barsAreSeenOnTheirTone)
{
    forEachTone(
        p, [](const Tone& tone) { EXPECT_GE(contrastRatio(tone.bar, tone.fill), kShapeContrast); });
}

TEST_P(PaletteTest, edgesAreSeenOnGroundAndPanel)
{
    forEachTone(p, [this](const Tone& tone) {
        EXPECT_GE(contrastRatio(tone.edge, p.ground()), kShapeContrast);
        EXPECT_GE(contrastRatio(tone.edge, p.panel()), kShapeContrast);
    });
}

TEST_P(PaletteTest, plainWords)
{
    for (const QColor& behind : {p.ground(), p.panel()}) {
        EXPECT_GE(contrastRatio(p.ink(), behind), kTimedContrast);
        EXPECT_GE(contrastRatio(p.softInk(), behind), kTextContrast);
        EXPECT_GE(contrastRatio(p.focus(), behind), kShapeContrast);
    }
}

TEST_P(PaletteTest, levelsStayApartForEveryEye)
{
    for (const Vision vision : kVisions)
        for (std::size_t a = 0; a < kTold.size(); ++a)
            for (std::size_t b = a + 1; b < kTold.size(); ++b)
                EXPECT_GE(colourDistance(seenWith(vision, p.tone(kTold.at(a)).fill),
                                         seenWith(vision, p.tone(kTold.at(b)).fill)),
                          kApart)
                    << "vision " << static_cast<int>(vision) << ", roles "
                    << static_cast<int>(kTold.at(a)) << " and " << static_cast<int>(kTold.at(b));
}

INSTANTIATE_TEST_SUITE_P(Schemes, PaletteTest, testing::Values(Scheme::Light, Scheme::Dark),
                         [](const auto& test) {
                             return test.param == Scheme::Light ? "Light" : "Dark";
                         });

TEST(RoleTest, everyLevelHasItsOwnMark)
{
    const std::array marks{markOf(Role::Good), markOf(roleOf(Level::HeadsUp)),
                           markOf(roleOf(Level::Limit)), markOf(roleOf(Level::Overrun))};
    for (std::size_t a = 0; a < marks.size(); ++a) {
        EXPECT_NE(marks.at(a), Mark::None);
        for (std::size_t b = a + 1; b < marks.size(); ++b)
            EXPECT_NE(marks.at(a), marks.at(b));
    }
}

TEST(RoleTest, noValidReadingCountsAsNotSure)
{
    EXPECT_EQ(roleOf(std::optional<Verdict>()), Role::HeadsUp);
    EXPECT_EQ(roleOf(std::optional(Verdict::Inside)), Role::Good);
    EXPECT_EQ(roleOf(std::optional(Verdict::Outside)), Role::Limit);
    EXPECT_EQ(roleOf(std::optional<Level>()), Role::Good);
}

}  // namespace
}  // namespace bathside::ui
