// What a scan does on its own: before a pull, within the window, and what is asked after it.
// Codes are GS1 element strings (General Specifications, 3): 01 GTIN, 17 expiry, 10 lot; the GTIN
// is that of the specifications' own examples (prefix 952, for demonstrations).

#include <gmock/gmock.h>

#include "core/base/day.h"
#include "core/bench/next.h"
#include "core/scan/own_code.h"
#include "tests/core/stores/support.h"
#include "tests/support/shift.h"

namespace bathside::test {
namespace {

using testing::ElementsAre;

const ComponentId kOne{"serotype 1"};
constexpr auto kK50 =
    "]d20109521234500018"
    "17261231"
    "10K50";
constexpr auto kR50 =
    "]d20109521234500018"
    "17270228"
    "10R50";

StoreReceived received(const Stock& of, std::int64_t count, const char* expires)
{
    return {
        .of = of,
        .place = "here",
        .count = count,
        .doses = of.kind == StockKind::Ampoule ? std::optional<std::int64_t>(2000) : std::nullopt,
        .expires = dayFrom(expires)};
}

class ScanTest : public testing::Test {
protected:
    void SetUp() override
    {
        shift.open();
        shift.say(Receive{{received(ampoulesOf(kThree, {"K50"}), 2, "2026-12-31"),
                           received(ampoulesOf(kThree, {"K51"}), 9, "2027-06-30"),
                           received(ampoulesOf(kThree, {"K40"}), 2, "2026-03-04"),
                           received(ampoulesOf(kOne, {"R50"}), 9, "2027-02-28"),
                           received(diluentOf({400'000}, {"D1"}), 9, "2026-12-31"),
                           received(diluentOf({400'000}, {"D2"}), 9, "2026-12-31")}});
    }
    std::vector<std::string> scanned(const std::string& text)
    {
        return shift.kindsFrom(shift.say(Scan{text}).first);
    }
    Refusal refused(const std::string& text)
    {
        const auto taken = shift.attempt(Scan{text});
        EXPECT_FALSE(taken) << text << " was taken";
        return taken ? Refusal{} : taken.error();
    }
    /// One ampoule of each component out and in the bath, at 60 s and 65 s.
    void pull(const char* three = "K50", const char* one = "R50")
    {
        shift.readyBag("B1").at(60).say(TakeOut{{{0, kThree, {three}}, {0, kOne, {one}}}});
        shift.at(65).say(moved(Step::Bath));
    }
    void endPull()
    {
        shift.at(145).say(moved(Step::Diluent));
        shift.at(150).say(moved(Step::Bagged));
    }
    std::vector<Question> asked() { return questions(shift.station.state()); }

    BenchShift shift;
};

// --- before a pull -------------------------------------------------------------------------------

TEST_F(ScanTest, aPersonTakesDuty)
{
    EXPECT_THAT(scanned(textOf(PersonCode{{"MK"}})), ElementsAre("code.scanned", "duty.taken"));
    EXPECT_EQ(shift.bench().onDuty->id.text, "MK");
    EXPECT_EQ(shift.recorder.events.back().person->id.text, "MK");
}

TEST_F(ScanTest, aPersonWhoMayNotIsRefusedAsATapWouldBe)
{
    shift.say(ListPerson{{{"LS"}, "Lead", Role::ShiftLead, false}, {}});
    EXPECT_EQ(refused(textOf(PersonCode{{"MK"}})).code, shift.refused(TakeDuty{{"MK"}}));
    EXPECT_EQ(shift.bench().onDuty->id.text, "AB");
}

TEST_F(ScanTest, aBagIsWrittenDown)
{
    using namespace std::chrono;
    EXPECT_THAT(scanned(textOf(BagCode{{"B1"}, 2026y / March / 5})), ElementsAre("code.scanned"));
}

TEST_F(ScanTest, theExpectedLotIsChosenOnce)
{
    EXPECT_THAT(scanned(kK50), ElementsAre("code.scanned", "lot.chosen"));
    EXPECT_EQ(shift.bench().stores.chosen.at(kThree).lot.text, "K50");
    EXPECT_THAT(scanned(kK50), ElementsAre("code.scanned"));
}

TEST_F(ScanTest, aChosenPlaceStays)
{
    shift.say(ChooseLot{kThree, {"K50"}, "here"});
    EXPECT_THAT(scanned(kK50), ElementsAre("code.scanned"));
    EXPECT_EQ(shift.bench().stores.chosen.at(kThree).place, "here");
}

TEST_F(ScanTest, anotherLotIsRefusedAndChoosesNothing)
{
    const Refusal why = refused("(10)K51");
    EXPECT_EQ(why.code, RefusalCode::WrongLot);
    EXPECT_EQ(why.detail, "K50");
    EXPECT_FALSE(shift.bench().stores.chosen.contains(kThree));
    EXPECT_EQ(shift.all<TapRefused>().back().why, "wrong lot");
    EXPECT_TRUE(shift.all<CodeScanned>().empty());
}

TEST_F(ScanTest, theNextLotIsTakenWhenTheExpectedOneIsSpent)
{
    scanned(kK50);
    shift.readyBag("B1").at(60).say(TakeOut{{{0, kThree, {}}, {0, kThree, {}}}});
    for (const Step step : {Step::Bath, Step::Diluent, Step::Bagged})
        shift.say(moved(step));
    shift.say(MixBag{});
    shift.at(80);
    EXPECT_THAT(scanned("(10)K51"), ElementsAre("code.scanned", "lot.chosen"));
    EXPECT_EQ(refused(kK50).code, RefusalCode::WrongLot);
}

TEST_F(ScanTest, whatMayNotBeUsedIsRefusedAsTheStoresDo)
{
    EXPECT_EQ(refused("(10)K40").code, RefusalCode::LotExpired);
    EXPECT_EQ(refused("(10)X9").code, RefusalCode::LotUnknown);
    EXPECT_EQ(refused("(17)270101(10)K50").code, RefusalCode::LotDiffers);
    shift.say(QuarantineLot{ampoulesOf(kThree, {"K50"}), {}, "certificate missing"});
    EXPECT_EQ(refused(kK50).code, RefusalCode::LotInQuarantine);
}

TEST_F(ScanTest, allowedByAShiftLeadItIsRightWhenItIsChosen)
{
    shift.say(AllowLot{ampoulesOf(kThree, {"K40"}), {"LS"}, "no other is there"});
    EXPECT_EQ(refused("(10)K51").code, RefusalCode::WrongLot);
    EXPECT_THAT(scanned("(10)K40"), ElementsAre("code.scanned", "lot.chosen"));
}

TEST_F(ScanTest, diluentIsHeldAgainstTheBag)
{
    EXPECT_THAT(scanned("(10)D2"), ElementsAre("code.scanned"));
    shift.readyBag("B1");
    EXPECT_THAT(scanned("(10)D1"), ElementsAre("code.scanned"));
    const Refusal why = refused("(10)D2");
    EXPECT_EQ(why.code, RefusalCode::WrongLot);
    EXPECT_EQ(why.detail, "D1");
}

TEST_F(ScanTest, whatSaysNothingAboutALotIsWrittenDown)
{
    EXPECT_THAT(scanned("(01)09521234500018"), ElementsAre("code.scanned"));
    EXPECT_THAT(scanned("tray 7"), ElementsAre("code.scanned"));
    EXPECT_EQ(refused("(01)09521234500019").code, RefusalCode::BadValue);  // check digit
    EXPECT_EQ(refused("BSP.MK.T").code, RefusalCode::BadValue);
    EXPECT_EQ(refused("").code, RefusalCode::BadValue);
}

TEST_F(ScanTest, aChosenLotCanBeTakenBackWithItsScan)
{
    scanned(kK50);
    shift.say(TakeBack{"wrong box"});
    EXPECT_FALSE(shift.bench().stores.chosen.contains(kThree));
}

TEST(ScanWithoutStores, everyLotIsWrittenDown)
{
    BenchShift shift;
    shift.open();
    EXPECT_THAT(shift.kindsFrom(shift.say(Scan{kK50}).first), ElementsAre("code.scanned"));
}

TEST(ScanWithoutAShift, aLotIsWrittenDownAndAPersonRefused)
{
    BenchShift shift;
    EXPECT_THAT(shift.kindsFrom(shift.say(Scan{kK50}).first), ElementsAre("code.scanned"));
    EXPECT_EQ(shift.refused(Scan{textOf(PersonCode{{"MK"}})}), RefusalCode::ShiftNotOpen);
}

// --- within the window, and after it -------------------------------------------------------------

TEST_F(ScanTest, withinTheWindowEverythingIsOnlyWrittenDown)
{
    pull();
    for (const char* text : {"(10)K51", "(10)K40", "(10)X9", "BSP.MK.T", kR50, "tray 7"})
        EXPECT_THAT(scanned(text), ElementsAre("code.scanned")) << text;
    EXPECT_THAT(scanned(textOf(PersonCode{{"MK"}})), ElementsAre("code.scanned"));
    EXPECT_EQ(shift.bench().onDuty->id.text, "AB");
    EXPECT_TRUE(asked().empty());
}

TEST_F(ScanTest, theLotOnRecordIsNotAskedAbout)
{
    pull();
    scanned(kK50);
    scanned(kR50);
    scanned("(10)D2");  // a bag's label
    endPull();
    EXPECT_TRUE(asked().empty());
}

TEST_F(ScanTest, anotherLotIsAskedAboutAndCorrected)
{
    pull();
    const Seq seq = shift.say(Scan{"(10)K51"}).first;
    EXPECT_TRUE(asked().empty());
    endPull();

    ASSERT_EQ(asked().size(), 1U);
    const Question question = asked().front();
    EXPECT_EQ(question.id, "which ampoule pull:1 scan:" + std::to_string(seq));
    EXPECT_THAT(question.choices, ElementsAre("1", "none"));  // the other is of another component
    EXPECT_EQ(question.lot.text, "K51");

    const Taken answer = shift.at(170).say(Answer{"which ampoule", "1"});
    EXPECT_THAT(shift.kindsFrom(answer.first),
                ElementsAre("question.answered", "fact.corrected", "bag.held"));
    EXPECT_EQ(shift.bench().ampoule({1, 1})->lot.text, "K51");
    EXPECT_EQ(shift.bench().bag({"B1"})->held()->why, HoldReason::WrongLot);
    EXPECT_EQ(shift.bench().stores.lot(ampoulesOf(kThree, {"K50"}))->balance(), 2);
    EXPECT_TRUE(asked().empty());
}

TEST_F(ScanTest, noneOfThemCorrectsNothing)
{
    pull();
    scanned("(10)K51");
    endPull();
    const Taken answer = shift.at(170).say(Answer{"which ampoule", "none"});
    EXPECT_THAT(shift.kindsFrom(answer.first), ElementsAre("question.answered"));
    EXPECT_TRUE(asked().empty());
}

TEST_F(ScanTest, aLotThatNobodyKnowsMayBeOfAny)
{
    pull();
    scanned("(10)X9");
    endPull();
    ASSERT_EQ(asked().size(), 1U);
    EXPECT_THAT(asked().front().choices, ElementsAre("1", "2", "none"));
}

// The stores know R50 as serotype 1, and only serotype 3 was out: that, too, was said wrongly.
TEST_F(ScanTest, theComponentIsCorrectedWithTheLot)
{
    shift.readyBag("B1").at(60).say(TakeOut{{{0, kThree, {"K50"}}}});
    scanned(kR50);
    shift.at(65).say(moved(Step::Bath));
    endPull();
    shift.at(170).say(Answer{"which ampoule", "1"});
    EXPECT_EQ(shift.bench().ampoule({1, 1})->component, kOne);
    EXPECT_EQ(shift.bench().ampoule({1, 1})->lot.text, "R50");
}

TEST_F(ScanTest, aScanInTheWindowsTailBelongsToItsPull)
{
    pull();
    endPull();
    shift.at(159);
    EXPECT_THAT(scanned("(10)X9"), ElementsAre("code.scanned"));
    ASSERT_EQ(asked().size(), 1U);
    shift.at(161);
    EXPECT_EQ(refused("(10)X9").code, RefusalCode::LotUnknown);
    EXPECT_EQ(asked().size(), 1U);
}

TEST_F(ScanTest, eachScanIsAskedAboutOnItsOwn)
{
    pull();
    scanned("(10)X9");
    scanned("(10)X8");
    endPull();
    EXPECT_EQ(asked().size(), 2U);
    EXPECT_EQ(shift.at(170).refused(Answer{"which ampoule", "1"}), RefusalCode::NoSuchQuestion);
    shift.say(Answer{asked().back().id, "2"});
    EXPECT_EQ(shift.bench().ampoule({1, 2})->lot.text, "X8");
    EXPECT_EQ(asked().size(), 1U);
}

}  // namespace
}  // namespace bathside::test
