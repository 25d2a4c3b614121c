// The real process, killed with SIGKILL in each of the six critical steps and started again, has
// the same clocks and the same alarms.
//
// The child is this program with a trail and a step: it opens a session as the station does, on the
// real boot clock, taps as far as that step, waits until the record is durable, prints what stands
// ten minutes and two hours from then, and kills itself. The parent opens the same trail afresh.

#include <QCoreApplication>
#include <QProcess>
#include <QTemporaryDir>
#include <csignal>
#include <fstream>
#include <iostream>
#include <sstream>

#include <gtest/gtest.h>

#include "app/station/session.h"
#include "app/system/boot_clock.h"
#include "core/alarms/alarms.h"
#include "core/base/rfc3339.h"

namespace bathside::test {
namespace {

using namespace std::chrono_literals;

class Deaf final : public ui::Feedback {
public:
    void taken() override {}
    void refused() override {}
};

std::string defaultCard()
{
    std::ifstream file(BATHSIDE_DEFAULT_CARD);
    return {std::istreambuf_iterator<char>(file), {}};
}

std::unique_ptr<app::Session> openSession(const std::string& trail, const Clock& clock,
                                          ui::Feedback& feedback)
{
    const app::SessionSetting setting{.trail = trail,
                                      .spoolFolder = {},
                                      .card = {},
                                      .defaultCard = defaultCard(),
                                      .rehearsal = true,
                                      .clockSynchronised = true,
                                      .clockOffset = {}};
    auto opened = app::Session::open(setting, {.clock = clock,
                                               .feedback = feedback,
                                               .inputTime =
                                                   [&clock](std::uint64_t) {
                                                       return ui::InputTime{clock.now(), false};
                                                   },
                                               .ticking = ui::StationModel::Ticking::ByHand});
    if (!opened)
        std::cerr << opened.error().toStdString() << '\n';
    return opened ? std::move(*opened) : nullptr;
}

/// Every ampoule's clock and every alarm at that instant; what only the start itself changes left
/// out.
std::string standing(const Bench& bench, const Stamp& at)
{
    std::ostringstream text;
    for (const Pull& pull : bench.pulls) {
        for (const Ampoule& ampoule : pull.ampoules) {
            text << toText(subjectOf(ampoule.ref)) << ' ' << nameOf(ampoule.reached());
            if (const auto run = countdown(bench, ampoule, at))
                text << ' ' << nameOf(run->limit) << ' ' << run->run.count() << ' '
                     << run->left.count();
            text << '\n';
        }
    }
    for (const Alarm& alarm : alarms(bench, at).due) {
        if (alarm.subject.kind != SubjectKind::Station)
            text << alarm.id << ' ' << nameOf(alarm.level) << ' ' << alarm.since.count() << '\n';
    }
    return text.str();
}

std::string standingLater(const Bench& bench, const Stamp& now)
{
    return standing(bench, shifted(now, 8s)) + "--\n" + standing(bench, shifted(now, 10min)) +
           "--\n" + standing(bench, shifted(now, 2h));
}

int child(const std::string& trail, int step)
{
    const app::BootClock clock;
    Deaf deaf;
    const auto session = openSession(trail, clock, deaf);
    if (!session)
        return 1;
    Station& station = session->station();
    int place = 0;
    const auto say = [&](const Intent& intent) {
        const auto taken = station.handle(
            intent, TapInput{{"place " + std::to_string(++place)}, clock.now(), false, {}});
        if (!taken)
            std::cerr << "refused: " << nameOf(taken.error().code) << '\n';
    };
    say(OpenShift{"Europe/Amsterdam", {"AB"}});
    for (const Check& check : station.bench().card->content().checks)
        say(RecordCheck{check.id, true, {}});
    say(StartBag{{"B1"}, {400'000}, {"D1"}, MilliCelsius{22'000}});
    say(InspectBag{});
    say(DrawDiluent{});
    say(TakeOut{{{1, {"serotype 3"}, {"K1"}}, {2, {"serotype 1"}, {"R1"}}}});
    for (int next = 1; next <= step; ++next)
        say(MoveOn{static_cast<Step>(next), {}, {}});
    if (!session->store().flush(20s))
        return 1;
    const Stamp now = clock.now();
    std::cout << now.boot.count() << ' ' << toRfc3339(now.wall) << '\n'
              << standingLater(station.bench(), now) << std::flush;
    return std::raise(SIGKILL);
}

class Killed : public testing::TestWithParam<int> {};

TEST_P(Killed, hasTheSameClocksAndAlarmsAfterwards)
{
    const QTemporaryDir folder;
    const std::string trail = folder.filePath(QStringLiteral("trail.db")).toStdString();
    QProcess process;
    process.start(
        QCoreApplication::applicationFilePath(),
        {QStringLiteral("--child"), QString::fromStdString(trail), QString::number(GetParam())});
    ASSERT_TRUE(process.waitForFinished(60'000));
    ASSERT_EQ(process.exitStatus(), QProcess::CrashExit)
        << process.readAllStandardError().toStdString();
    std::istringstream said(process.readAllStandardOutput().toStdString());
    std::int64_t boot = 0;
    std::string wall, before;
    said >> boot >> wall >> std::ws;
    before.assign(std::istreambuf_iterator<char>(said), {});

    const app::BootClock clock;
    Deaf deaf;
    const auto session = openSession(trail, clock, deaf);
    ASSERT_TRUE(session);
    const Stamp then{
        .wall = *fromRfc3339(wall), .boot = BootTime(boot), .bootId = clock.now().bootId};

    EXPECT_EQ(standingLater(session->station().bench(), then), before);
    EXPECT_NE(before.find("ampoule:1/2"), std::string::npos);
}

INSTANTIATE_TEST_SUITE_P(Steps, Killed, testing::Range(0, 6), [](const auto& test) {
    return std::string(nameOf(static_cast<Step>(test.param)));
});

}  // namespace
}  // namespace bathside::test

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    if (argc == 4 && std::string_view(argv[1]) == "--child")
        return bathside::test::child(argv[2], std::atoi(argv[3]));
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
