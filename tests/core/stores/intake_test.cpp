#include "core/stores/intake.h"

#include <gtest/gtest.h>

#include "tests/core/stores/support.h"

namespace bathside::test {
namespace {

const std::vector<ComponentId> kRecipe{{"serotype 3"}, {"serotype 1"}};

const std::string kHead =
    "kind,item,lot,doses,volume_ml,count,expires,titre_pfu,vessel,canister,cane,delivery\r\n";
const std::string kGood =
    kHead +
    "ampoule,serotype 3,K07,2000,,30,2027-01-31,3200,vessel 1,canister 2,cane 5,N-17\r\n"
    "diluent,,D71,,400.5,20,2026-12-31,,shelf,,,N-17\r\n"
    "consumable,needle,,,,1000,,,,,,\r\n";

Intake intake(const std::string& csv, const Stores& stores = {})
{
    return intakeFrom(csv, stores, kRecipe);
}

TEST(IntakeTest, takesADelivery)
{
    const Intake found = intake(kGood);
    ASSERT_EQ(found.taken.size(), 3U);
    EXPECT_TRUE(found.faults.empty());
    const StoreReceived& first = found.taken[0].received;
    EXPECT_EQ(first.of, ampoulesOf(kThree, {"K07"}));
    EXPECT_EQ(first.place, kCane);
    EXPECT_EQ(first.count, 30);
    EXPECT_EQ(first.doses, 2000);
    EXPECT_EQ(first.expires, onDay("2027-01-31"));
    EXPECT_EQ(first.titre, 3200);
    EXPECT_EQ(first.delivery, "N-17");
    EXPECT_EQ(found.taken[1].received.of.volume, MicroLitres{400'500});
    EXPECT_EQ(found.taken[2].line, 4);
}

TEST(IntakeTest, takesColumnsInAnyOrderAndTheSpreadsheetsOwnWay)
{
    const Intake found = intake(
        "\xEF\xBB\xBF"
        "count;kind;volume_ml;lot;expires\n20;diluent;400,5;D71;2026-12-31\n");
    ASSERT_EQ(found.taken.size(), 1U);
    EXPECT_EQ(found.taken[0].received.of, diluentOf({400'500}, {"D71"}));
}

TEST(IntakeTest, theSameFileAgainIsNotTakenTwice)
{
    Stores stores;
    for (const IntakeLine& line : intake(kGood).taken)
        tell(stores, line.received);

    const Intake again = intake(kGood, stores);
    EXPECT_TRUE(again.taken.empty());
    EXPECT_EQ(again.doubled.size(), 3U);
    EXPECT_TRUE(again.faults.empty());
}

TEST(IntakeTest, aLineThatStandsTwiceIsTakenOnce)
{
    const std::string line = "diluent,,D71,,400,20,2026-12-31,,,,,\r\n";
    const Intake found = intake(kHead + line + line);
    EXPECT_EQ(found.taken.size(), 1U);
    ASSERT_EQ(found.doubled.size(), 1U);
    EXPECT_EQ(found.doubled[0].line, 3);
}

TEST(IntakeTest, wrongLinesAreReportedAndRightOnesTaken)
{
    const Intake found = intake(kHead +
                                "ampoule,serotype 3,K07,2000,,30,31.1.2027,,,,,\r\n"
                                "ampoule,serotype 3,K07,2000,,30,2027-01-31,,,,,\r\n"
                                "ampoule,serotype 3,K07,1000,,5,2027-01-31,,,,,\r\n");
    EXPECT_EQ(found.taken.size(), 1U);
    const std::vector<IntakeFault> expected{{2, "expires", "31.1.2027", IntakeExpects::Day},
                                            {4, "doses", "1000", IntakeExpects::AsBefore}};
    EXPECT_EQ(found.faults, expected);
}

struct BadLine {
    const char* name;
    const char* line;
    const char* column;
    IntakeExpects expected;
};

class IntakeRefuses : public testing::TestWithParam<BadLine> {};

TEST_P(IntakeRefuses, aLineThatIsNotRight)
{
    const Intake found = intake(kHead + GetParam().line + "\r\n");
    EXPECT_TRUE(found.taken.empty());
    ASSERT_EQ(found.faults.size(), 1U);
    EXPECT_EQ(found.faults[0].line, 2);
    EXPECT_EQ(found.faults[0].column, GetParam().column);
    EXPECT_EQ(found.faults[0].expected, GetParam().expected);
}

INSTANTIATE_TEST_SUITE_P(
    Intake, IntakeRefuses,
    testing::Values(
        BadLine{"Kind", "vial,serotype 3,K07,2000,,30,2027-01-31,,,,,", "kind",
                IntakeExpects::KindWord},
        BadLine{"NoCount", "ampoule,serotype 3,K07,2000,,,2027-01-31,,,,,", "count",
                IntakeExpects::WholeNumber},
        BadLine{"CountZero", "ampoule,serotype 3,K07,2000,,0,2027-01-31,,,,,", "count",
                IntakeExpects::WholeNumber},
        BadLine{"CountInWords", "ampoule,serotype 3,K07,2000,,ten,2027-01-31,,,,,", "count",
                IntakeExpects::WholeNumber},
        BadLine{"NoLot", "ampoule,serotype 3,,2000,,30,2027-01-31,,,,,", "lot",
                IntakeExpects::Something},
        BadLine{"NoDoses", "ampoule,serotype 3,K07,,,30,2027-01-31,,,,,", "doses",
                IntakeExpects::Something},
        BadLine{"NoExpiry", "ampoule,serotype 3,K07,2000,,30,,,,,,", "expires",
                IntakeExpects::Something},
        BadLine{"NoSuchDay", "ampoule,serotype 3,K07,2000,,30,2027-02-29,,,,,", "expires",
                IntakeExpects::Day},
        BadLine{"OtherComponent", "ampoule,serotype 2,K07,2000,,30,2027-01-31,,,,,", "item",
                IntakeExpects::KnownComponent},
        BadLine{"AmpouleWithVolume", "ampoule,serotype 3,K07,2000,400,30,2027-01-31,,,,,",
                "volume_ml", IntakeExpects::Nothing},
        BadLine{"DiluentWithoutVolume", "diluent,,D71,,,30,2027-01-31,,,,,", "volume_ml",
                IntakeExpects::Something},
        BadLine{"VolumeTooFine", "diluent,,D71,,0.0005,30,2027-01-31,,,,,", "volume_ml",
                IntakeExpects::Millilitres},
        BadLine{"VolumeZero", "diluent,,D71,,0,30,2027-01-31,,,,,", "volume_ml",
                IntakeExpects::Millilitres},
        BadLine{"DiluentWithDoses", "diluent,,D71,2000,400,30,2027-01-31,,,,,", "doses",
                IntakeExpects::Nothing},
        BadLine{"TooManyCells", "consumable,needle,,,,10,,,,,,,,", "", IntakeExpects::AsManyCells},
        BadLine{"ControlCharacter", "consumable,\"nee\ndle\",,,,10,,,,,,", "item",
                IntakeExpects::PlainText}),
    [](const auto& row) { return std::string(row.param.name); });

TEST(IntakeHeadTest, namesWhatIsWrong)
{
    EXPECT_EQ(intake("").faults[0].expected, IntakeExpects::HeadLine);
    EXPECT_EQ(intake("kind,count,colour\n").faults[0],
              (IntakeFault{1, "colour", "colour", IntakeExpects::KnownColumn}));
    EXPECT_EQ(intake("kind,count,kind\n").faults[0].expected, IntakeExpects::ColumnOnce);
    EXPECT_EQ(intake("kind,lot\n").faults[0],
              (IntakeFault{1, "count", "", IntakeExpects::NeededColumn}));
    EXPECT_EQ(intake("kind,count\n\"diluent").faults[0].expected, IntakeExpects::ClosedQuote);
    EXPECT_EQ(intake("kind,count\n\xFF").faults[0].expected, IntakeExpects::Utf8);
}

}  // namespace
}  // namespace bathside::test
