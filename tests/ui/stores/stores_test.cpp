// The stores page, by real taps: lots and what is done with them, a delivery typed and from a file,
// warnings, the reckoning. Sizes as in tests/ui/bench/walk_test.cpp.

#include <algorithm>

#include <gtest/gtest.h>

#include "core/base/day.h"
#include "core/scan/own_code.h"
#include "tests/ui/stores/stores_stand.h"
#include "ui/controls/banner.h"
#include "ui/record/field_sheet.h"
#include "ui/stores/reckoning_view.h"
#include "ui/stores/stores_page.h"

namespace bathside::test {
namespace {

const Stock kK07 = ampoulesOf({"serotype 3"}, {"K07-112"});
const Stock kR22 = ampoulesOf({"serotype 1"}, {"R22-019"});
constexpr auto kTileK05 = "stores.lot.ampoule:serotype 3:K05-031:0";
constexpr auto kTileR22 = "stores.lot.ampoule:serotype 1:R22-019:0";
constexpr auto kTileK07 = "stores.lot.ampoule:serotype 3:K07-112:0";

class StoresPageTest : public testing::Test {
protected:
    explicit StoresPageTest(bool filled = true) : pages(kTenInch, QStringLiteral("en"))
    {
        if (filled)
            fill(pages.stand());
        pages.show();
    }

    Stand& stand() { return pages.stand(); }
    /// Turns pages until that tile is in sight, and taps it.
    void tapLot(const char* tile)
    {
        const QString place = QString::fromLatin1(tile);
        for (int page = 0; page < 5 && !stand().target(place); ++page)
            stand().tap(QStringLiteral("stores.more"));
        stand().tap(place);
    }
    std::int64_t balance(const Stock& of) { return pages.stores().lot(of)->balance(); }
    void type(std::int64_t number)
    {
        for (const char digit : std::to_string(number))
            stand().tap(QStringLiteral("pad.") + QLatin1Char(digit));
        stand().tap(QStringLiteral("pad.set"));
    }
    void spell(const char* text)
    {
        for (const char* letter = text; *letter; ++letter)
            stand().tap(QStringLiteral("letters.") + QLatin1Char(*letter));
        stand().tap(QStringLiteral("letters.set"));
    }
    QString notice()
    {
        return stand().frame().findChild<ui::Banner*>(QStringLiteral("stores.notice"))->text();
    }

    StoresStand pages;
};

class EmptyStoresPageTest : public StoresPageTest {
protected:
    EmptyStoresPageTest() : StoresPageTest(false) {}
};

TEST_F(StoresPageTest, isTwoTapsFromTheIdleBench)
{
    stand().tap(QStringLiteral("stores.bench"));
    stand().taps({"more", "ask.page:stores"});
    EXPECT_TRUE(stand().target(QStringLiteral("stores.bench")));
}

TEST_F(StoresPageTest, countsALot)
{
    tapLot(kTileK05);
    stand().tap(QStringLiteral("ask.count"));
    type(2);
    EXPECT_EQ(balance(ampoulesOf({"serotype 3"}, {"K05-031"})), 2);
}

TEST_F(StoresPageTest, movesSomeOfALot)
{
    tapLot(kTileK07);
    stand().taps({"ask.move", "ask.at:vessel 1 / canister 2 / cane 5"});
    type(4);
    stand().tap(QStringLiteral("ask.at:vessel 2 / canister 1 / cane 1"));
    EXPECT_EQ(pages.stores().lot(kK07)->places.at("vessel 2 / canister 1 / cane 1").count, 4);
    EXPECT_EQ(balance(kK07), 18);
}

TEST_F(StoresPageTest, takesBrokenOnesOut)
{
    tapLot(kTileK07);
    stand().taps({"ask.discard", "ask.at:vessel 1 / canister 2 / cane 6"});
    type(2);
    stand().tap(QStringLiteral("ask.broken"));
    EXPECT_EQ(balance(kK07), 16);
    EXPECT_EQ(pages.stores().lot(kK07)->flow.discarded, 2);
}

TEST_F(StoresPageTest, moreThanThereIsIsRefusedInWords)
{
    tapLot(kTileK07);
    stand().taps({"ask.discard", "ask.at:vessel 1 / canister 2 / cane 6"});
    type(7);
    stand().tap(QStringLiteral("ask.broken"));
    EXPECT_EQ(balance(kK07), 18);
    EXPECT_TRUE(notice().contains(QStringLiteral("only 6"))) << notice().toStdString();
}

TEST_F(StoresPageTest, setsALotApartAndReleasesIt)
{
    tapLot(kTileK07);
    stand().taps({"ask.quarantine", "ask.why:recalled by its maker"});
    EXPECT_EQ(pages.stores().lot(kK07)->quarantine, "recalled by its maker");
    tapLot(kTileK07);
    stand().tap(QStringLiteral("ask.release"));
    spell("EF");
    stand().tap(QStringLiteral("ask.why:set apart by mistake"));
    EXPECT_TRUE(pages.stores().lot(kK07)->quarantine.empty());
}

TEST_F(StoresPageTest, whereALeadIsListedTheirPinIsAskedForAndNoInitials)
{
    stand().say(ListPerson{
        {.person = {"LS"}, .name = "Lena Sanz", .role = Role::ShiftLead, .departed = false}, {}});
    ASSERT_TRUE(pages.pins().keep({"LS"}, "4071"));
    stand().say(SetPin{{"LS"}});
    tapLot(kTileR22);
    stand().tap(QStringLiteral("ask.release"));
    for (const char* digit : {"1", "2", "3", "4", "set"})
        stand().tap(QStringLiteral("pad.") + QLatin1String(digit));
    EXPECT_FALSE(notice().isEmpty());
    EXPECT_FALSE(pages.stores().lot(kR22)->quarantine.empty());
    stand().pass(std::chrono::minutes(1));
    for (const char* digit : {"4", "0", "7", "1", "set"})
        stand().tap(QStringLiteral("pad.") + QLatin1String(digit));
    stand().tap(QStringLiteral("ask.why:certificate seen"));
    EXPECT_TRUE(pages.stores().lot(kR22)->quarantine.empty());
}

TEST_F(StoresPageTest, aPersonsCodeSaysWhoSignsAndTakesNoDutyMeanwhile)
{
    const auto lead = [&](const char* id, const char* pin, std::optional<PersonId> by) {
        stand().say(ListPerson{
            {.person = {id}, .name = id, .role = Role::ShiftLead, .departed = false}, by});
        ASSERT_TRUE(pages.pins().keep({id}, pin));
        stand().say(SetPin{{id}, by});
    };
    const auto badge = [&](const char* id) {
        stand().scan(QString::fromStdString(textOf(PersonCode{{id}})));
    };
    lead("LS", "4071", {});
    lead("EF", "5180", PersonId{"LS"});
    const auto onDuty = stand().bench().onDuty;
    tapLot(kTileR22);
    stand().tap(QStringLiteral("ask.release"));
    badge("EF");
    badge("LS");  // the PIN of EF is asked for
    for (const char* digit : {"5", "1", "8", "0", "set"})
        stand().tap(QStringLiteral("pad.") + QLatin1String(digit));
    stand().tap(QStringLiteral("ask.why:certificate seen"));
    EXPECT_TRUE(pages.stores().lot(kR22)->quarantine.empty());
    const auto released = std::ranges::find_if(stand().kept().all, [](const Event& event) {
        return std::holds_alternative<LotReleased>(event.fact);
    });
    ASSERT_NE(released, stand().kept().all.end());
    EXPECT_EQ(released->person, (Person{{"EF"}, Proof::Proven}));
    EXPECT_EQ(stand().bench().onDuty, onDuty);
}

TEST_F(StoresPageTest, aLotApartIsUsedByAShiftLeadsWordOnly)
{
    tapLot(kTileR22);
    stand().tap(QStringLiteral("ask.next"));
    EXPECT_FALSE(pages.stores().chosen.contains({"serotype 1"}));
    stand().tap(QStringLiteral("ask.allow"));
    spell("EF");
    stand().tap(QStringLiteral("ask.why:no other lot is there"));
    tapLot(kTileR22);
    stand().tap(QStringLiteral("ask.next"));
    EXPECT_EQ(pages.stores().chosen.at({"serotype 1"}).lot, LotId{"R22-019"});
}

TEST_F(EmptyStoresPageTest, receivesAmpoulesQuestionByQuestion)
{
    stand().taps({"stores.receive", "ask.ampoule:serotype 3"});
    spell("K");
    type(2000);
    type(20270131);
    type(3200);
    for (const char* part : {"A", "B", "C"})
        spell(part);
    type(30);
    const StockLot* lot = pages.stores().lot(ampoulesOf({"serotype 3"}, {"K"}));
    ASSERT_TRUE(lot);
    EXPECT_EQ(lot->places.at("A / B / C").count, 30);
    EXPECT_EQ(lot->doses, 2000);
    EXPECT_EQ(lot->expires, dayFrom("2027-01-31"));
    EXPECT_EQ(lot->titre, 3200);
}

TEST_F(EmptyStoresPageTest, aDayThatThereIsNotIsAskedAgain)
{
    stand().taps({"stores.receive", "ask.ampoule:serotype 3"});
    spell("K");
    type(2000);
    type(20270231);
    EXPECT_TRUE(stand().target(QStringLiteral("pad.set")));
    EXPECT_TRUE(notice().contains(QStringLiteral("day of expiry"))) << notice().toStdString();
}

TEST_F(EmptyStoresPageTest, aDeliveryIsShownBeforeItIsTakenAndTakenOnce)
{
    pages.deliveries().texts[QStringLiteral("delivery.csv")] = deliveryFile();
    stand().taps({"stores.file", "ask.file:delivery.csv"});
    const auto* sheet = stand().frame().findChild<ui::FieldSheet*>(QStringLiteral("stores.sheet"));
    ASSERT_TRUE(sheet && sheet->isVisible());
    ASSERT_EQ(sheet->fields().size(), 3);
    EXPECT_EQ(
        sheet->fields().first().value,
        QStringLiteral("Line 3, column expires: found “30.6.2027”, expected a day as YYYY-MM-DD."));
    EXPECT_TRUE(pages.stores().lots.empty());

    stand().tap(QStringLiteral("stores.take"));
    EXPECT_EQ(pages.stores().lots.size(), 2U);
    EXPECT_FALSE(stand().target(QStringLiteral("stores.take")));

    stand().taps({"stores.file", "ask.file:delivery.csv"});
    EXPECT_FALSE(stand().target(QStringLiteral("stores.take")));
    EXPECT_TRUE(sheet->title().contains(QStringLiteral("2 received before")))
        << sheet->title().toStdString();
}

TEST_F(EmptyStoresPageTest, withoutAFileThatIsSaid)
{
    stand().tap(QStringLiteral("stores.file"));
    EXPECT_TRUE(stand().target(QStringLiteral("ask.back")));
    stand().tap(QStringLiteral("ask.back"));
    EXPECT_TRUE(stand().target(QStringLiteral("stores.receive")));
}

TEST_F(StoresPageTest, theGravestWarningIsInSightAndAllAreOneTapAway)
{
    // 9,300 doses of serotype 1 are asked for; the three ampoules that are allowed hold 6,000
    EXPECT_TRUE(notice().contains(QStringLiteral("3300 doses too few"))) << notice().toStdString();
    stand().tap(QStringLiteral("stores.warnings"));
    const auto* sheet = stand().frame().findChild<ui::FieldSheet*>(QStringLiteral("stores.sheet"));
    ASSERT_TRUE(sheet && sheet->isVisible());
    EXPECT_EQ(sheet->fields().size(), 5);  // too few, one expired, two apart, one near its expiry
}

TEST_F(StoresPageTest, whatDoesNotAddUpComesFirst)
{
    stand().tap(QStringLiteral("stores.sums"));
    const auto* view = stand().frame().findChild<ui::ReckoningView*>();
    ASSERT_TRUE(view && view->isVisible());
    const QString first = view->accessibleName().section(QLatin1Char('\n'), 0, 0);
    EXPECT_EQ(first, QStringLiteral("does not add up, serotype 3, lot K05-031, 2, 1, −1, 0"));
}

TEST_F(StoresPageTest, theWindowLeadsBackToTheBench)
{
    for (const Check& check : stand().bench().card->content().checks)
        stand().say(RecordCheck{check.id, true, {}});
    tapLot(kTileK07);
    stand().say(TakeOut{{{0, {"serotype 3"}, {}}}});
    EXPECT_EQ(stand().frame().current(),
              stand().frame().page(QString::fromLatin1(ui::Frame::kBench)));
    EXPECT_FALSE(stand().frame().showPage(QString::fromLatin1(ui::Frame::kStores)));
}

// --- how it looks -------------------------------------------------------------------------------

struct Sight {
    const char* name;
    std::vector<const char*> taps;
};

struct Look {
    Sight sight;
    Panel panel;
    const char* language;
};

std::vector<Look> looks()
{
    const std::vector<Sight> sights{
        {"lots", {}},
        {"lot", {kTileR22}},
        {"where", {kTileK07, "ask.count"}},
        {"why", {kTileR22, "ask.release", "letters.E", "letters.F", "letters.set"}},
        {"receive", {"stores.receive"}},
        {"volume", {"stores.receive", "ask.diluent"}},
        {"lot name", {"stores.receive", "ask.ampoule:serotype 3"}},
        {"doses", {"stores.receive", "ask.ampoule:serotype 3", "letters.K", "letters.set"}},
        {"expiry",
         {"stores.receive", "ask.ampoule:serotype 3", "letters.K", "letters.set", "pad.2",
          "pad.set"}},
        {"files", {"stores.file"}},
        {"delivery", {"stores.file", "ask.file:delivery.csv"}},
        {"warnings", {"stores.warnings"}},
        {"sums", {"stores.sums"}},
    };
    std::vector<Look> all;
    for (const Sight& sight : sights) {
        for (const char* language : {"en", "es"}) {
            all.push_back({sight, kTenInch, language});
            all.push_back({sight, kFifteenInch, language});
        }
    }
    return all;
}

std::string nameOfLook(const testing::TestParamInfo<Look>& test)
{
    std::string name = std::string(test.param.sight.name) + "_" + test.param.language + "_" +
                       test.param.panel.name;
    std::ranges::replace(name, ' ', '_');
    return name;
}

class StoresLook : public testing::TestWithParam<Look> {};

TEST_P(StoresLook, everyTargetIsLargeApartAndWhole)
{
    StoresStand pages(GetParam().panel, QString::fromLatin1(GetParam().language));
    fill(pages.stand());
    pages.deliveries().texts[QStringLiteral("delivery.csv")] = deliveryFile();
    pages.show();
    pages.stand().taps(GetParam().sight.taps);
    expectTargetsAsTheyMustBe(pages.stand().frame());
}

INSTANTIATE_TEST_SUITE_P(Stores, StoresLook, testing::ValuesIn(looks()), nameOfLook);

}  // namespace
}  // namespace bathside::test
