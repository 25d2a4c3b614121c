#include "app/cli/plan_words.h"

#include <array>
#include <cmath>
#include <cstdio>
#include <variant>

#include "core/plan/day_time.h"

namespace bathside::cli {
namespace {

using namespace plan;

std::string decimal(double value)
{
    std::array<char, 40> text{};
    const int length = std::snprintf(text.data(), text.size(), "%.10g", value);
    return {text.data(), static_cast<std::size_t>(length)};
}

std::string millilitres(MicroLitres volume)
{
    return decimal(static_cast<double>(volume.count) / 1000) + " mL";
}

/// Cut off, so that a margin is never shown larger than it is.
std::string minutes(Millis time)
{
    return decimal(std::floor(static_cast<double>(time.count()) / 600) / 100) + " min";
}

/// Whole seconds are enough for people.
std::string clockTime(DayTime at)
{
    return dayTimeText(std::chrono::floor<std::chrono::seconds>(at))
        .substr(0, at < Millis(0) ? 9 : 8);
}

std::string counted(Count count, const std::string& one, const std::string& many)
{
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

std::string placeText(const DayInput& input, const BagPlace& place)
{
    return "Bag " + std::to_string(place.bag + 1) + " of line " + input.lines[place.line].name;
}

struct ReasonWords {
    const DayInput& input;

    std::string operator()(const AmpoulesMissing& why) const
    {
        const std::string begin = "Not enough ampoules of " + input.recipe[why.component].name +
                                  " for " + counted(why.birds, "bird", "birds");
        if (!why.missing)
            return begin + ".";
        return begin + ": " + std::to_string(*why.missing) + " missing.";
    }
    std::string operator()(const BagsMissing& why) const
    {
        if (!why.volume)
            return "Not enough diluent bags.";
        return "Not enough diluent bags: " + std::to_string(why.missing) + " more of " +
               millilitres(*why.volume) + " would do.";
    }
    std::string operator()(const StoresNotEnough&) const
    {
        return "What is left in stores is not enough: more than one thing is short.";
    }
    std::string operator()(const PrimingTakesAll& why) const
    {
        return "Priming takes more than any bag holds: a bag of " + millilitres(why.leastVolume) +
               " would do.";
    }
    std::string operator()(const ResidualTakesAll& why) const
    {
        return "What stays in a bag leaves no dose in any of them: a bag of " +
               millilitres(why.leastVolume) + " would do.";
    }
    std::string operator()(const LimitTooShort& why) const
    {
        return "The limit is too short for any bag at this rate: with " +
               decimal(static_cast<double>(why.missing.count()) / 1000) +
               " s more, or so much less of hang time, dilute time and bench slack, one bird "
               "could be done.";
    }
    std::string operator()(const BreakInTheWay& why) const
    {
        const std::string begin = "No bag lasts through the break that it would hang in";
        if (!why.idleNeeded)
            return begin + ".";
        return begin + ": if the line may stand idle for " + minutes(*why.idleNeeded) +
               ", it can be done.";
    }
    std::string operator()(const Undecided& why) const
    {
        return "Too large to be planned exactly: no plan opens fewer than " +
               counted(why.atLeast.doses, "dose", "doses") + ".";
    }
    std::string operator()(const Unexplained&) const
    {
        return "It cannot be done; what is missing is too large a question to be answered exactly.";
    }
};

struct WarningWords {
    const DayInput& input;

    std::string operator()(const RunsThroughBreak& warning) const
    {
        return placeText(input, warning.bag) + " runs through the break at " +
               clockTime(warning.pause.from) + ".";
    }
    std::string operator()(const IdlesToSpare& warning) const
    {
        return "Line " + input.lines[warning.bag.line].name + " stands idle for " +
               minutes(warning.idle) + " before bag " + std::to_string(warning.bag.bag + 1) +
               ", to spare a bag.";
    }
    std::string operator()(const NoSpareLeft& warning) const
    {
        const Component& component = input.recipe[warning.component];
        return "No spare ampoule is left of lot " + component.lots[warning.lot].name + " (" +
               component.name + ").";
    }
    std::string operator()(const SmallMargin& warning) const
    {
        return placeText(input, warning.bag) + " has a margin of only " + minutes(warning.margin) +
               ".";
    }
};

std::string drawsText(const DayInput& input, const PlannedBag& bag)
{
    std::string text;
    for (const Draw& draw : bag.draws) {
        const Component& component = input.recipe[draw.component];
        text += ", " + std::to_string(draw.ampoules) + " × " + component.lots[draw.lot].name +
                " (" + component.name + ")";
    }
    return text;
}

std::string bagText(const DayInput& input, std::size_t number, const PlannedBag& bag)
{
    std::string text = "  " + std::to_string(number) + ". " + millilitres(bag.volume);
    if (bag.made == PlannedBag::Made::New)
        text += drawsText(input, bag) + "; pull at " + clockTime(bag.pullStart) + ", mixed by " +
                clockTime(bag.mixedBy);
    else
        text += bag.made == PlannedBag::Made::Open ? ", open" : ", mixed already";
    return text + "; " + counted(bag.turn.birds, "bird", "birds") + " from " +
           clockTime(bag.turn.firstBird) + " to " + clockTime(bag.turn.lastBird) + "; margin " +
           minutes(bag.margin) + ", " + counted(bag.doses - bag.turn.birds, "dose", "doses") +
           " left\n";
}

std::string lineText(const DayInput& input, const Line& line, const LinePlan& plan)
{
    const Cost& cost = plan.worth.cost;
    std::string text = "Line " + line.name + ": " + counted(cost.bags, "new bag", "new bags") +
                       ", " + counted(cost.doses, "dose", "doses") + " opened, " +
                       millilitres({cost.volume}) + " of diluent, last bird at " +
                       clockTime(plan.worth.lastBird) + "\n";
    for (std::size_t bag = 0; bag < plan.bags.size(); ++bag)
        text += bagText(input, bag + 1, plan.bags[bag]);
    return text;
}

std::string why(const DayInput& input, const std::vector<Reason>& reasons)
{
    std::string text;
    for (const Reason& reason : reasons)
        text += (text.empty() ? "" : " ") + sentenceOf(input, reason);
    return text;
}

std::string benchText(const DayInput& input, const BenchPlan& bench)
{
    if (!bench.cannotMeet)
        return "Bench: every bag can be made in time; " +
               counted(static_cast<Count>(bench.preparersNeeded), "preparer", "preparers") +
               " would do.\n";
    std::string text =
        "Bench: " + placeText(input, *bench.cannotMeet) + " cannot be made in time; " +
        counted(static_cast<Count>(bench.preparersNeeded), "preparer", "preparers") + " would do";
    if (bench.slackNeeded)
        text += ", or a bench slack of " + minutes(*bench.slackNeeded);
    return text + ".\n";
}

std::string totalsText(const DayInput& input, const Totals& totals)
{
    std::string text = "In all: " + counted(totals.birds, "bird", "birds") + ", " +
                       counted(totals.dosesOpened, "dose", "doses") + " opened, " +
                       std::to_string(totals.dosesDiscarded) + " of them discarded";
    for (const SizeUse& use : totals.sizes)
        text += "; " + counted(use.bags, "bag", "bags") + " of " + millilitres(use.volume);
    for (const LotUse& use : totals.ampoules) {
        const Component& component = input.recipe[use.component];
        text += "; " + counted(use.ampoules, "ampoule", "ampoules") + " of " +
                component.lots[use.lot].name + " (" + component.name + ")";
    }
    return text + ".\n";
}

}  // namespace

std::string sentenceOf(const DayInput& input, const Reason& reason)
{
    return std::visit(ReasonWords{input}, reason);
}

std::string sentenceOf(const DayInput& input, const Warning& warning)
{
    return std::visit(WarningWords{input}, warning);
}

PlanWords englishWords(const DayInput& input)
{
    return {[&input](const std::vector<Reason>& reasons) { return why(input, reasons); },
            [&input](const Warning& warning) { return sentenceOf(input, warning); }};
}

std::string forPeople(const DayInput& input, const Plan& plan)
{
    std::string text;
    for (std::size_t line = 0; line < plan.lines.size(); ++line)
        text += plan.lines[line] ? lineText(input, input.lines[line], *plan.lines[line])
                                 : "Line " + input.lines[line].name + " cannot be done. " +
                                       why(input, plan.lines[line].error()) + "\n";
    text += benchText(input, plan.bench) + totalsText(input, plan.totals);
    for (const Warning& warning : plan.warnings)
        text += sentenceOf(input, warning) + "\n";
    return text;
}

}  // namespace bathside::cli
