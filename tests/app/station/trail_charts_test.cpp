// Points of charts from a real trail, counted and timed by hand from what was said: a statement a
// second.

#include "app/station/trail_charts.h"

#include <QEventLoop>
#include <QTimer>
#include <fstream>
#include <sstream>

#include <gtest/gtest.h>

#include "core/base/rfc3339.h"
#include "core/base/simulated_clock.h"
#include "tests/support/temp_folder.h"

namespace bathside::app {
namespace {

using namespace std::chrono_literals;
using Date = std::chrono::year_month_day;

class Quiet final : public ui::Feedback {
public:
    void taken() override {}
    void refused() override {}
};

std::string defaultCard()
{
    std::ifstream in(BATHSIDE_DEFAULT_CARD, std::ios::binary);
    std::ostringstream text;
    text << in.rdbuf();
    return text.str();
}

class TrailChartsTest : public testing::Test {
protected:
    void SetUp() override
    {
        auto session = Session::open(
            {.trail = m_folder / "trail.db",
             .spoolFolder = m_folder.path(),
             .card = {},
             .defaultCard = defaultCard(),
             .rehearsal = false,
             .clockSynchronised = true,
             .clockOffset = {}},
            {.clock = m_clock,
             .feedback = m_feedback,
             .inputTime = [this](std::uint64_t) { return ui::InputTime{.at = m_clock.now()}; },
             .ticking = ui::StationModel::Ticking::ByHand});
        ASSERT_TRUE(session) << session.error().toStdString();
        m_session = std::move(*session);
        m_charts = std::make_unique<TrailCharts>(*m_session);
    }

    [[nodiscard]] const Bench& bench() { return m_session->station().bench(); }

    void say(const Intent& intent)
    {
        m_clock.runTo(m_clock.now().boot + 1s);
        ASSERT_TRUE(m_session->model().say(intent, 0, QStringLiteral("test"))) << nameOf(intent);
    }

    void openShift()
    {
        say(OpenShift{"Europe/Madrid", {"MK"}});
        for (const Check& check : bench().card->content().checks)
            say(RecordCheck{check.id, true, {}});
    }

    /// One ampoule, so many seconds out of the cryogen, then 60 in the bath.
    void pull(const std::string& bag, std::chrono::seconds outside)
    {
        say(StartBag{{bag}, MicroLitres{400'000}, {"D-0417"}, MilliCelsius{22'500}});
        say(InspectBag{BagId{bag}, true});
        say(DrawDiluent{BagId{bag}, MicroLitres{5'000}});
        say(TakeOut{{{0, {"serotype 3"}, {"K07-112"}}}});
        m_clock.runTo(m_clock.now().boot + outside - 1s);
        say(MoveOn{Step::Bath, {}, {}});
        m_clock.runTo(m_clock.now().boot + 58s);
        for (const Step step : {Step::Opened, Step::Diluent, Step::Bagged})
            say(MoveOn{step, {}, {}});
        m_clock.runTo(m_clock.now().boot + 12s);
        say(MixBag{BagId{bag}});
    }

    void closeShift()
    {
        for (const Bag& bag : std::vector<Bag>(bench().bags))
            say(TakeBagDown{bag.id, DownReason::Finished, {}});
        say(CloseShift{});
    }

    ui::PointsAnswer points(Date first, Date last, std::vector<SeqRange> baselines = {})
    {
        EXPECT_TRUE(m_session->store().flush(60s));
        std::optional<ui::PointsAnswer> answer;
        QEventLoop loop;
        QTimer::singleShot(60s, &loop, &QEventLoop::quit);
        QObject::connect(m_charts.get(), &ui::ChartSource::pointsRead, &loop,
                         [&](const ui::PointsAnswer& given) {
                             answer = given;
                             loop.quit();
                         });
        m_charts->readPoints({first, last, std::move(baselines), 7});
        loop.exec();
        EXPECT_TRUE(answer);
        return answer.value_or(ui::PointsAnswer{});
    }

    std::vector<Entry> shiftOf(Seq seq)
    {
        EXPECT_TRUE(m_session->store().flush(60s));
        std::vector<Entry> all;
        bool isDone = false;
        QEventLoop loop;
        QTimer::singleShot(60s, &loop, &QEventLoop::quit);
        QObject::connect(m_charts.get(), &ui::ChartSource::entriesRead, &loop,
                         [&](Seq, const std::vector<Entry>& entries) {
                             all.insert(all.end(), entries.begin(), entries.end());
                         });
        QObject::connect(m_charts.get(), &ui::ChartSource::shiftRead, &loop,
                         [&](Seq of, const ui::AroundShift& around) {
                             EXPECT_EQ(of, seq);
                             EXPECT_FALSE(around.trouble);
                             m_around = around;
                             isDone = true;
                             loop.quit();
                         });
        m_charts->readShift(seq);
        loop.exec();
        EXPECT_TRUE(isDone);
        return all;
    }

    static std::vector<double> shown(const ui::PointsAnswer& answer)
    {
        const Trend trend =
            trendOf(answer.points, {.series = ChartSeries::OutToBath}, {}, kUsualRules);
        return valuesOf(trend);
    }

    static constexpr Date kFirst{2026y / 3 / 5}, kLater{2026y / 4 / 14};

    test::TempFolder m_folder;
    SimulatedClock m_clock{*fromRfc3339("2026-03-05T08:00:00.000+01:00")};
    Quiet m_feedback;
    std::unique_ptr<Session> m_session;
    std::unique_ptr<TrailCharts> m_charts;
    ui::AroundShift m_around;  // of the last shift read
};

TEST_F(TrailChartsTest, readsTheDaysThatAreWantedAndNoOthers)
{
    openShift();
    pull("B1", 4s);
    pull("B2", 6s);
    closeShift();
    m_clock.runTo(m_clock.now().boot + 24h * 40);
    openShift();
    pull("B1", 5s);

    const auto answer = points(kFirst, kFirst);
    EXPECT_EQ(answer.ask, 7);
    EXPECT_FALSE(answer.trouble);
    EXPECT_EQ(shown(answer), (std::vector{4.0, 6.0}));
    EXPECT_EQ(shown(points(kLater, kLater)), (std::vector{5.0}));
    EXPECT_EQ(shown(points(kFirst, kLater)), (std::vector{4.0, 6.0, 5.0}));
    EXPECT_TRUE(shown(points(Date{2026y / 3 / 6}, Date{2026y / 4 / 13})).empty());
}

// By the card that was adopted long before the days that are read.
TEST_F(TrailChartsTest, aPointKnowsItsCardsLimitAndItsBench)
{
    openShift();
    closeShift();
    m_clock.runTo(m_clock.now().boot + 24h * 40);
    openShift();
    pull("B1", 5s);
    const auto answer = points(kLater, kLater);
    ASSERT_FALSE(answer.points.all.empty());
    const ChartPoint& point = answer.points.all.front();
    EXPECT_EQ(point.upper, std::optional(10.0));
    EXPECT_FALSE(point.bench.empty());
    EXPECT_EQ(point.person, PersonId{"MK"});
}

TEST_F(TrailChartsTest, aBaselineOfOtherDaysIsReadBesides)
{
    openShift();
    pull("B1", 4s);
    const Seq first = bench().lastSeq;
    closeShift();
    m_clock.runTo(m_clock.now().boot + 24h * 40);
    openShift();
    pull("B1", 5s);
    const auto answer = points(kLater, kLater, {{first, first}});
    EXPECT_EQ(shown(answer), (std::vector{5.0}));
    std::vector<double> all;
    for (const ChartPoint& point : answer.points.all) {
        if (point.series == ChartSeries::OutToBath)
            all.push_back(point.value.value_or(0));
    }
    EXPECT_EQ(all, (std::vector{4.0, 5.0}));
}

TEST_F(TrailChartsTest, givesTheShiftOfAPoint)
{
    openShift();
    pull("B1", 4s);
    const Seq seq = bench().lastSeq;
    const auto entries = shiftOf(seq);
    ASSERT_FALSE(entries.empty());
    EXPECT_EQ(entries.front().kind, ShiftOpened::kKind);
    EXPECT_EQ(entries.back().seq, seq);
    EXPECT_TRUE(std::ranges::any_of(m_around.context, [](const Entry& entry) {
        return entry.kind == CardAdopted::kKind;
    })) << "the card it is judged by";
    EXPECT_TRUE(m_around.later.empty());
    closeShift();
    m_clock.runTo(m_clock.now().boot + 24h);
    openShift();
}

}  // namespace
}  // namespace bathside::app
