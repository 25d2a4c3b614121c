#include "ui/text/plan_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>
#include <cmath>

#include "ui/text/numbers.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"

namespace bathside::ui {
namespace {

using namespace plan;

struct PlanText {
    Q_DECLARE_TR_FUNCTIONS(Plan)
};

int many(Count count) { return static_cast<int>(count); }

QString birdsText(Count birds) { return PlanText::tr("%Ln bird(s)", nullptr, many(birds)); }

QString rounded(double rate) { return countText(std::llround(rate), QLocale()); }

/// Of a bag that is there: of those mixed for the line, the one that old.
BagId nameOf(const DayToday& today, std::size_t line, const PlannedBag& bag)
{
    const LineToday& there = today.lines[line];
    if (bag.made == PlannedBag::Made::Open)
        return there.openBag.value_or(BagId{});
    const DayTime born = bag.turn.lastBird - bag.ageAtLast;
    const auto& mixed = today.input.lines[line].mixedBags;
    const auto found = std::ranges::find(mixed, born, &MadeBag::firstInDiluent);
    return found == mixed.end() ? BagId{}
                                : there.mixedBags[static_cast<std::size_t>(found - mixed.begin())];
}

struct ReasonWords {
    const DayInput& input;

    QString operator()(const AmpoulesMissing& why) const
    {
        const QString component = fromCore(input.recipe[why.component].name);
        if (!why.missing)
            return PlanText::tr("There are no ampoules of %1 for %2.", "component, birds")
                .arg(component, birdsText(why.birds));
        return PlanText::tr("Not enough ampoules of %1 for %2: %Ln missing.", "component, birds",
                            many(*why.missing))
            .arg(component, birdsText(why.birds));
    }
    QString operator()(const BagsMissing& why) const
    {
        if (!why.volume)
            return PlanText::tr("There are no diluent bags.");
        return PlanText::tr("Not enough diluent bags: %Ln more of %1 would do.", nullptr,
                            many(why.missing))
            .arg(volumeText(*why.volume));
    }
    QString operator()(const StoresNotEnough&) const
    {
        return PlanText::tr(
            "What is left in the stores is not enough: more than one thing is short.");
    }
    QString operator()(const PrimingTakesAll& why) const
    {
        return PlanText::tr("Priming takes more than any bag holds: a bag of %1 would do.")
            .arg(volumeText(why.leastVolume));
    }
    QString operator()(const ResidualTakesAll& why) const
    {
        return PlanText::tr("What stays in a bag leaves no dose in any: a bag of %1 would do.")
            .arg(volumeText(why.leastVolume));
    }
    QString operator()(const LimitTooShort& why) const
    {
        return PlanText::tr(
                   "At this rate not one bird is done before a bag's time is up: %1 more, or as "
                   "much less of hang time, dilute time and bench slack, would do.")
            .arg(durationText(why.missing));
    }
    QString operator()(const BreakInTheWay& why) const
    {
        if (!why.idleNeeded)
            return PlanText::tr("No bag lasts through the break that it would hang in.");
        return PlanText::tr(
                   "No bag lasts through the break that it would hang in: it can be done if the "
                   "line may stand idle for %1.")
            .arg(ageText(*why.idleNeeded));
    }
    QString operator()(const Undecided& why) const
    {
        return PlanText::tr(
            "Too large to be planned exactly: no plan opens fewer than %Ln dose(s).", nullptr,
            many(why.atLeast.doses));
    }
    QString operator()(const Unexplained&) const
    {
        return PlanText::tr(
            "It cannot be done; what is missing is too large a question to be answered exactly.");
    }
};

struct WarningWords {
    const DayPlan& day;
    const PlanClock& clock;

    QString operator()(const RunsThroughBreak& warning) const
    {
        return PlanText::tr("Bag %1 runs through the break at %2.")
            .arg(bagText(day, warning.bag), clock.text(warning.pause.from));
    }
    QString operator()(const IdlesToSpare& warning) const
    {
        return PlanText::tr("Line %1 stands idle for %2 before bag %3, to spare a bag.")
            .arg(fromCore(day.today.input.lines[warning.bag.line].name), ageText(warning.idle),
                 bagText(day, warning.bag));
    }
    QString operator()(const NoSpareLeft& warning) const
    {
        const plan::Component& component = day.today.input.recipe[warning.component];
        return PlanText::tr("No spare ampoule is left of lot %1 (%2).", "lot, component")
            .arg(fromCore(component.lots[warning.lot].name), fromCore(component.name));
    }
    QString operator()(const SmallMargin& warning) const
    {
        return PlanText::tr("Bag %1 has a margin of only %2.")
            .arg(bagText(day, warning.bag), marginText(warning.margin));
    }
};

struct RemarkWords {
    const PlanClock& clock;

    QString operator()(const LineWaits& remark) const
    {
        return PlanText::tr("Line %1 waits for a bag from %2 until %3.")
            .arg(idText(remark.line), clock.text(remark.from), clock.text(remark.until));
    }
    QString operator()(const LineStands& remark) const
    {
        return PlanText::tr("Line %1 has stood still since %2. The plan takes it to go on now.")
            .arg(idText(remark.line), clock.text(remark.since));
    }
    QString operator()(const PullLate& remark) const
    {
        return PlanText::tr("Too late: the pull for line %1 was due %2 ago.")
            .arg(idText(remark.line), ageText(remark.by));
    }
};

}  // namespace

QString bagText(const DayPlan& day, const BagPlace& place)
{
    const auto& bags = day.plan.lines[place.line]->bags;
    const PlannedBag& bag = bags[place.bag];
    if (bag.made != PlannedBag::Made::New)
        return idText(nameOf(day.today, place.line, bag));
    const auto number =
        1 +
        std::count_if(bags.begin(), bags.begin() + static_cast<std::ptrdiff_t>(place.bag),
                      [](const PlannedBag& each) { return each.made == PlannedBag::Made::New; });
    return QStringLiteral("%1-%2")
        .arg(fromCore(day.today.input.lines[place.line].name))
        .arg(number);
}

QString marginText(Millis margin) { return ageText(margin); }

QString reasonText(const DayInput& input, const Reason& reason)
{
    return std::visit(ReasonWords{input}, reason);
}

QString warningText(const DayPlan& day, const Warning& warning, const PlanClock& clock)
{
    return std::visit(WarningWords{day, clock}, warning);
}

QString remarkText(const DayRemark& remark, const PlanClock& clock)
{
    return std::visit(RemarkWords{clock}, remark);
}

QString benchText(const DayPlan& day)
{
    const BenchPlan& bench = day.plan.bench;
    const int preparers = static_cast<int>(bench.preparersNeeded);
    if (!bench.cannotMeet)
        return PlanText::tr("The bench makes every bag in time; %n preparer(s) would do.", nullptr,
                            preparers);
    const QString bag = bagText(day, *bench.cannotMeet);
    if (!bench.slackNeeded)
        return PlanText::tr("Bag %1 cannot be made in time; %n preparer(s) would do.", nullptr,
                            preparers)
            .arg(bag);
    return PlanText::tr(
               "Bag %1 cannot be made in time; %n preparer(s), or a bench slack of %2, would do.",
               nullptr, preparers)
        .arg(bag, ageText(*bench.slackNeeded));
}

QString nextText(const NextBag& next, const PlanClock& clock, DayTime now)
{
    const QString what = PlanText::tr("%1 for line %2", "a bag's volume; which line")
                             .arg(volumeText(next.volume), idText(next.line));
    const QString start = clock.text(next.start), earliest = clock.text(next.earliest);
    if (now < clock.elapsed(next.earliest))
        return PlanText::tr("Pull at %1: %2. Too early before %3: it would pass its limit.")
            .arg(start, what, earliest);
    return PlanText::tr("Pull at %1: %2. It is not too early any more.").arg(start, what);
}

QString rateText(const LineToday& line)
{
    const QString planned = countText(line.planned.birdsPerHour, QLocale());
    if (!line.flow.measured)
        return PlanText::tr("%1 birds an hour, as planned; not measured yet.").arg(planned);
    const auto& measured = *line.flow.measured;
    return PlanText::tr(
               "%1 birds an hour measured, %2 to %3 with 95 % confidence; planned were %4.")
        .arg(countText(line.flow.ratePerHour, QLocale()), rounded(measured.interval.low),
             rounded(measured.interval.high), planned);
}

QString forecastText(const BagForecast& forecast, const PlanClock& clock)
{
    const QString bag = idText(forecast.bag), empty = clock.text(forecast.empty),
                  limit = clock.text(forecast.limit);
    if (forecast.wasted > 0)
        return PlanText::tr(
                   "Bag %1 would be empty at %2, past its limit at %3: %Ln dose(s) will be lost.",
                   nullptr, many(forecast.wasted))
            .arg(bag, empty, limit);
    if (forecast.latest && *forecast.latest == forecast.earliest)
        return PlanText::tr("Bag %1 is empty at %2; its limit is %3.").arg(bag, empty, limit);
    const QString latest = forecast.latest ? clock.text(*forecast.latest) : QStringLiteral("…");
    return PlanText::tr("Bag %1 is empty at %2, between %3 and %4; its limit is %5.")
        .arg(bag, empty, clock.text(forecast.earliest), latest, limit);
}

}  // namespace bathside::ui
