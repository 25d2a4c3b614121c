#include "tests/ui/plan/plan_stand.h"

#include <QApplication>

#include "ui/plan/plan_page.h"

namespace bathside::test {
namespace {

using namespace std::chrono_literals;

constexpr auto kZone = "Europe/Amsterdam";

LinePlanned line(const char* name, std::int64_t birds, std::int64_t rate, Millis start)
{
    return {.line = {name}, .birds = birds, .birdsPerHour = rate, .start = start, .breaks = {}};
}

void makeUp(Stand& stand, const char* bag)
{
    stand.say(StartBag{{bag}, MicroLitres{400'000}, {"D-0417"}, MilliCelsius{22'500}});
    stand.say(InspectBag{});
    stand.say(DrawDiluent{{}, MicroLitres{5'000}});
    stand.say(TakeOut{{{0, {"serotype 3"}, {"K07-112"}}, {0, {"serotype 1"}, {"R22-019"}}}});
    stand.pass(4s);
    stand.say(MoveOn{Step::Bath, {}, {}});
    stand.pass(70s);
    for (const Step step : {Step::Opened, Step::Diluent, Step::Rinsed, Step::Bagged})
        stand.say(MoveOn{step, {}, {}});
    stand.pass(11s);
    stand.say(MixBag{});
}

}  // namespace

PlanStand::PlanStand(const Panel& panel, const QString& language) : m_pages(panel, language)
{
    Stand& stand = m_pages.stand();
    stand.planBy(m_days);
    stand.frame().addPage(QString::fromLatin1(ui::Frame::kPlan),
                          new ui::PlanPage({.model = stand.model(),
                                            .language = stand.language(),
                                            .printing = stand.papers(),
                                            .zone = kZone}));
    stand.say(OpenShift{kZone, {"MK"}, std::chrono::sys_days(std::chrono::year(2026) / 3 / 5)});
}

const DayPlan* PlanStand::day()
{
    const auto& day = stand().model().day();
    return day ? &*day : nullptr;
}

void PlanStand::show()
{
    m_pages.show(ui::Frame::kPlan);
    stand().pass(1s);
    QApplication::processEvents();
}

void planTwoLines(Stand& stand)
{
    LinePlanned a = line("A", 6000, 3000, 8h);
    a.breaks = {{9h + 30min, 9h + 50min}};
    stand.say(PlanLine{a});
    stand.say(PlanLine{line("B", 4200, 2600, 8h + 20min)});
}

void planTooManyLines(Stand& stand)
{
    planTwoLines(stand);
    for (const char* name : {"C", "D"})
        stand.say(PlanLine{line(name, 3000, 2000, 8h + 20min)});
}

void planALineForEveryLetter(Stand& stand)
{
    for (char name = 'A'; name <= 'Z'; ++name)
        stand.say(PlanLine{line(std::string(1, name).c_str(), 6000, 3000, 8h)});
}

void runForAnHour(Stand& stand)
{
    for (const Check& check : stand.bench().card->content().checks)
        stand.say(RecordCheck{check.id, true, {}});
    stand.say(TakeReading{{"hand"}, MilliCelsius{28'100}});
    stand.pass(38min);
    makeUp(stand, "B1");
    stand.pass(5min);
    stand.say(HangBag{BagId{"B1"}, LineId{"A"}});
    makeUp(stand, "B2");
    for (const std::int64_t birds : {400, 820, 1190}) {
        stand.pass(8min);
        stand.say(CountBirds{LineId{"A"}, birds});
    }
}

}  // namespace bathside::test
