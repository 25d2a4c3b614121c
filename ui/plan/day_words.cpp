#include "ui/plan/day_words.h"

#include <QCoreApplication>
#include <algorithm>

#include "ui/text/plan_words.h"
#include "ui/text/subjects.h"

namespace bathside::ui {
namespace {

struct DayText {
    Q_DECLARE_TR_FUNCTIONS(DayPlan)
};

QString lineName(const LineId& line) { return subjectText(subjectOf(line)); }

void addReasons(Sheet& sheet, const DayPlan& day)
{
    const plan::DayInput& input = day.today.input;
    for (std::size_t line = 0; line < day.plan.lines.size(); ++line) {
        if (day.plan.lines[line])
            continue;
        for (const plan::Reason& reason : day.plan.lines[line].error())
            sheet.fields.append({DayText::tr("cannot be done: %1", "a line")
                                     .arg(lineName(day.today.lines[line].planned.line)),
                                 reasonText(input, reason)});
    }
    if (day.plan.bench.cannotMeet)
        sheet.fields.append({DayText::tr("the bench"), benchText(day)});
}

void addForecasts(Sheet& sheet, const DayPlan& day, const PlanClock& clock)
{
    for (const BagForecast& forecast : day.forecasts)
        sheet.fields.append({lineName(forecast.line), forecastText(forecast, clock)});
}

QString titleOf(const DayPlan& day)
{
    if (!day.plan.isFeasible())
        return DayText::tr("Not everything can be done");
    const int troubles = troublesOf(day);
    if (troubles == 0)
        return DayText::tr("Everything can be done");
    return DayText::tr("Everything can be done; %n thing(s) to look at", nullptr, troubles);
}

}  // namespace

int troublesOf(const DayPlan& day)
{
    const auto failed =
        std::ranges::count_if(day.plan.lines, [](const auto& line) { return !line.has_value(); });
    const auto wasted = std::ranges::count_if(
        day.forecasts, [](const BagForecast& forecast) { return forecast.wasted > 0; });
    return static_cast<int>(failed + wasted + (day.plan.bench.cannotMeet ? 1 : 0)) +
           static_cast<int>(day.remarks.size() + day.plan.warnings.size());
}

Sheet sheetOf(const DayPlan& day, const PlanClock& clock)
{
    const Role role = !day.plan.isFeasible() ? Role::Limit
                      : troublesOf(day) > 0  ? Role::HeadsUp
                                             : Role::Good;
    Sheet sheet{role, titleOf(day), {}};
    addReasons(sheet, day);
    for (const DayRemark& remark : day.remarks)
        sheet.fields.append({DayText::tr("now"), remarkText(remark, clock)});
    if (day.next)
        sheet.fields.append(
            {DayText::tr("next pull"), nextText(*day.next, clock, *day.today.input.now)});
    addForecasts(sheet, day, clock);
    for (const plan::Warning& warning : day.plan.warnings)
        sheet.fields.append({DayText::tr("look"), warningText(day, warning, clock)});
    for (const LineToday& line : day.today.lines)
        sheet.fields.append({lineName(line.planned.line), rateText(line)});
    if (!day.plan.bench.cannotMeet)
        sheet.fields.append({DayText::tr("the bench"), benchText(day)});
    return sheet;
}

}  // namespace bathside::ui
