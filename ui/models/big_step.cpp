#include "ui/models/big_step.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/bench/next.h"
#include "ui/print/bag_label.h"
#include "ui/text/numbers.h"
#include "ui/text/refusals.h"
#include "ui/text/subjects.h"
#include "ui/text/words.h"

namespace bathside::ui {
namespace {

struct BigStepText {
    Q_DECLARE_TR_FUNCTIONS(BigStepText)
};

QString bagText(const std::optional<BagId>& bag)
{
    return bag ? subjectText(subjectOf(*bag)) : QString();
}

/// A pull that would not all be in time if it went in together says how far apart.
QString paceLine(const Bench& bench, int count)
{
    const Pace pace = bathside::pace(bench, count);
    if (count < 2 || pace.together >= count)
        return ampoulesText(count);
    const auto seconds = std::chrono::duration_cast<std::chrono::seconds>(pace.stagger).count();
    //: Under the big button before a pull; %1 is "3 ampoules".
    return BigStepText::tr("%1, one every %n second(s)", nullptr, static_cast<int>(seconds))
        .arg(ampoulesText(count));
}

BigStep takeOut(const Bench& bench, const PullDraft& draft, BigStep step)
{
    if (draft.empty()) {
        step.asks = BigStep::Asks::Ampoules;
        step.line = BigStepText::tr("which ampoules?");
        return step;
    }
    if (draft.firstWithoutLot()) {
        step.asks = BigStep::Asks::Lot;
        step.line = BigStepText::tr("which lot?");
        return step;
    }
    step.line = paceLine(bench, static_cast<int>(draft.ampoules().size()));
    step.intent = TakeOut{draft.ampoules()};
    return step;
}

/// The line that the plan has for a bag, where it is free.
std::optional<LineId> plannedLine(const StationModel& model, const std::optional<BagId>& bag)
{
    if (!model.day() || !bag)
        return std::nullopt;
    for (const LineToday& line : model.day()->today.lines) {
        if (std::ranges::find(line.mixedBags, *bag) != line.mixedBags.end() &&
            !model.bench().bagOn(line.planned.line))
            return line.planned.line;
    }
    return std::nullopt;
}

BigStep hang(const StationModel& model, const Next& next, BigStep step)
{
    const auto planned = plannedLine(model, next.bag);
    const auto line = planned ? planned : onlyFreeLine(model.bench());
    if (!line) {
        step.asks = BigStep::Asks::Line;
        return step;
    }
    //: Under the big button: which bag has been hung on which line.
    step.line = BigStepText::tr("%1, %2").arg(bagText(next.bag), subjectText(subjectOf(*line)));
    step.intent = HangBag{next.bag, *line};
    return step;
}

/// What the plan has next, and whether it is too early or too late for it.
QString plannedText(const NextBag& next, const Bench& bench, WallTime now)
{
    const auto minutes = [](Millis time) {
        return static_cast<int>(std::chrono::ceil<std::chrono::minutes>(time).count());
    };
    const QString bag =
        //: Under the big button: which bag comes next, e.g. "400 mL, line A".
        BigStepText::tr("%1, %2").arg(volumeText(next.volume), subjectText(subjectOf(next.line)));
    if (now < next.earliest)
        //: %1 is "400 mL, line A": begun now, it would be too old before it is empty.
        return BigStepText::tr("%1: too early by %n minute(s)", nullptr,
                               minutes(next.earliest - now))
            .arg(bag);
    if (bench.nextPull && now - *bench.nextPull >= std::chrono::minutes(1))
        return BigStepText::tr("%1: late by %n minute(s)", nullptr, minutes(now - *bench.nextPull))
            .arg(bag);
    return bag;
}

BigStep startBag(const StationModel& model, BigStep step)
{
    const auto& day = model.day();
    step.word = doneWord(NextDeed::StartBag, {});
    step.line = day && day->next ? plannedText(*day->next, model.bench(), model.now().wall)
                                 : idText(nextBagName(model.bench()));
    step.asks = BigStep::Asks::Bag;
    return step;
}

BigStep meant(const StationModel& model, const PullDraft& draft)
{
    const Bench& bench = model.bench();
    const Next next = bathside::next(bench);
    BigStep step{.word = doneWord(next.deed, next.step),
                 .line = doneLine(next),
                 .reason = {},
                 .intent = {},
                 .asks = BigStep::Asks::Nothing,
                 .bag = next.bag};
    switch (next.deed) {
        case NextDeed::OpenShift:
            step.asks = BigStep::Asks::Person;
            return step;
        case NextDeed::SetUp:
            step.asks = BigStep::Asks::SetUp;
            return step;
        case NextDeed::StartBag:
        case NextDeed::Wait:
            return startBag(model, step);
        case NextDeed::Inspect:
            step.intent = InspectBag{next.bag, true};
            return step;
        case NextDeed::DrawDiluent:
            step.intent = DrawDiluent{next.bag, bench.card->content().diluentDrawn};
            return step;
        case NextDeed::TakeOut:
            return takeOut(bench, draft, step);
        case NextDeed::MoveOn:
            step.intent = MoveOn{next.step, next.ampoules, {}};
            return step;
        case NextDeed::Mix:
            step.intent = MixBag{next.bag};
            return step;
        case NextDeed::Hang:
            return hang(model, next, step);
    }
    Q_UNREACHABLE();
}

std::optional<BigStep> label(const StationModel& model, BigStep step)
{
    if (!step.bag || model.isInCriticalWindow() || !bagLabel(model.state(), *step.bag))
        return std::nullopt;
    step.word = BigStepText::tr("PRINT LABEL");
    step.asks = BigStep::Asks::Label;
    return step;
}

}  // namespace

BigStep bigStep(const StationModel& model, const PullDraft& draft)
{
    BigStep step = meant(model, draft);
    if (step.intent) {
        if (const auto refusal = model.refusal(*step.intent))
            step.reason = refusalText(*refusal);
    }
    return step;
}

// Nobody has to have tapped RINSED: from *in diluent* the later step is the bag.
std::optional<BigStep> sideStep(const StationModel& model)
{
    const Next next = bathside::next(model.bench());
    BigStep step{.word = {},
                 .line = {},
                 .reason = {},
                 .intent = {},
                 .asks = BigStep::Asks::Nothing,
                 .bag = next.bag};
    if (next.deed == NextDeed::Inspect) {
        step.word = BigStepText::tr("NOT GOOD");
        step.intent = InspectBag{next.bag, false};
        return step;
    }
    if (next.deed == NextDeed::Hang)
        return label(model, step);
    if (next.deed != NextDeed::MoveOn || next.step == Step::Bagged)
        return std::nullopt;
    const Step later = next.step >= Step::Diluent
                           ? Step::Bagged
                           : static_cast<Step>(static_cast<int>(next.step) + 1);
    step.word = doneWord(NextDeed::MoveOn, later);
    step.intent = MoveOn{later, next.ampoules, {}};
    if (const auto refusal = model.refusal(*step.intent))
        step.reason = refusalText(*refusal);
    return step;
}

BagId nextBagName(const Bench& bench)
{
    if (bench.bags.empty())
        return {"B1"};
    std::string name = bench.bags.back().id.text;
    const auto digits = name.find_last_not_of("0123456789") + 1;  // npos + 1 is 0: all digits
    const std::string stem = name.substr(0, digits);
    const std::string number = name.substr(digits);
    constexpr std::size_t kLongest = 9;
    if (number.empty() || number.size() > kLongest)
        return {name + "-2"};
    BagId next{stem + std::to_string(std::stoul(number) + 1)};
    while (bench.bag(next))
        next = {stem + std::to_string(std::stoul(next.text.substr(digits)) + 1)};
    return next;
}

std::optional<LineId> onlyFreeLine(const Bench& bench)
{
    std::optional<LineId> free;
    for (const auto& [id, line] : bench.lines) {
        if (bench.bagOn(id))
            continue;
        if (free)
            return std::nullopt;
        free = id;
    }
    return free;
}

}  // namespace bathside::ui
