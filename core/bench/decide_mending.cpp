// Rows of `decide`: take back, corrections, and what is asked afterwards.

#include <algorithm>

#include "core/bench/amend.h"
#include "core/bench/decide_rows.h"
#include "core/bench/next.h"

namespace bathside::rows {
namespace {

/// What a proven lead decided of a bag or a lot: no tap goes back to what was before it.
bool isDecision(const Event& event)
{
    const bool isOne = std::holds_alternative<BagReleased>(event.fact) ||
                       std::holds_alternative<LotReleased>(event.fact) ||
                       std::holds_alternative<LotAllowed>(event.fact);
    return isOne && event.person && event.person->proof == Proof::Proven;
}

/// A person's statement that can be taken back with one tap: not the shift's frame, not a mending.
bool isUndoable(const Event& event)
{
    return !event.place.empty() && isMendable(event) &&
           std::visit(
               []<typename F>(const F&) {
                   constexpr bool isFrame =
                       std::is_same_v<F, ShiftOpened> || std::is_same_v<F, ShiftClosed> ||
                       std::is_same_v<F, DutyTaken> || std::is_same_v<F, NoteMade> ||
                       std::is_same_v<F, CodeScanned> || std::is_same_v<F, TapRefused> ||
                       std::is_same_v<F, StoreCarried>;
                   constexpr bool isMending =
                       std::is_same_v<F, FactCorrected> || std::is_same_v<F, FactTakenBack> ||
                       std::is_same_v<F, QuestionAnswered> || std::is_same_v<F, AlarmHeard> ||
                       std::is_same_v<F, Rejudged>;
                   return !isFrame && !isMending;
               },
               event.fact);
}

RefusalCode refusalFor(AmendFault fault)
{
    switch (fault) {
        case AmendFault::NoSuchField:
            return RefusalCode::NoSuchField;
        case AmendFault::BadValue:
            return RefusalCode::BadValue;
        case AmendFault::NothingChanges:
            return RefusalCode::NothingChanges;
    }
    std::unreachable();
}

/// A corrected ampoule or bag must be one that there is.
std::optional<Refusal> unknownTarget(const Context& now, const Event& event, const Correct& meant)
{
    if (meant.field == "bag" && !std::holds_alternative<BagStarted>(event.fact)) {
        const BagId bag{meant.value};
        return now.bench.bag(bag)
                   ? std::nullopt
                   : std::optional(Refusal{RefusalCode::NoSuchBag, subjectOf(bag), {}});
    }
    return std::nullopt;
}

// The record says that `said` broke; it was `truth`. From there on each is written for the other.
std::vector<Fact> swapped(const Context& now, AmpouleRef said, AmpouleRef truth,
                          const std::string& why)
{
    const Ampoule* lost = now.bench.ampoule(said);
    std::vector<Fact> corrections;
    for (const auto& event : now.state.journal) {
        std::visit(
            [&](const auto& fact) {
                if constexpr (requires { fact.ampoule.no; }) {
                    const bool later = event->seq >= lost->lost->moment.seq &&
                                       !std::is_same_v<std::decay_t<decltype(fact)>, AmpouleOut>;
                    if (later && (fact.ampoule == said || fact.ampoule == truth)) {
                        const int other = fact.ampoule == said ? truth.no : said.no;
                        corrections.emplace_back(
                            FactCorrected{event->seq, "ampoule", std::to_string(other), why});
                    }
                }
            },
            event->fact);
    }
    return corrections;
}

/// The ampoule was of the lot that was scanned: what the record has otherwise is corrected.
std::vector<Fact> identified(const Context& now, const Question& asked, int no)
{
    const Ampoule* ampoule = now.bench.ampoule({std::stoi(asked.subject.id), no});
    const Seq out = ampoule->when(Step::Out)->seq;
    std::vector<Fact> corrections;
    if (asked.of && *asked.of != ampoule->component)
        corrections.emplace_back(FactCorrected{out, "component", asked.of->text, asked.id});
    if (asked.lot != ampoule->lot)
        corrections.emplace_back(FactCorrected{out, "lot", asked.lot.text, asked.id});
    return corrections;
}

}  // namespace

Decision on(const Context& now, const TakeBack& meant)
{
    const auto& journal = now.state.journal;
    const auto last = std::find_if(journal.rbegin(), journal.rend(), [](const auto& event) {
        return isUndoable(*event) || isDecision(*event);
    });
    if (last == journal.rend() || isDecision(**last))
        return refuse(RefusalCode::NothingToTakeBack);
    const Elapsed since = elapsed((*last)->at, now.tap.at);
    const bool soon = since.certain && now.bench.card && since.time < now.card().takeBackFree;
    if (!soon && !inCriticalWindow(now.bench, now.tap.at) && meant.why.empty())
        return refuse(RefusalCode::ReasonMissing);
    FactTakenBack said{.seqs = {},
                       .why = meant.why.empty() ? std::nullopt : std::optional(meant.why)};
    for (const auto& event : journal) {
        if (event->tap == (*last)->tap && isMendable(*event))
            said.seqs.push_back(event->seq);
    }
    return facts(said);
}

Decision on(const Context& now, const Correct& meant)
{
    if (meant.why.empty())
        return refuse(RefusalCode::ReasonMissing);
    std::vector<Fact> said;
    std::optional<Refusal> why;
    for (const Seq seq : meant.of) {
        const Event* event = eventAt(now.state, seq);
        if (!event) {
            why = Refusal{RefusalCode::NotInThisShift, {}, std::to_string(seq)};
            continue;
        }
        const auto corrected = amended(*event, meant.field, meant.value);
        if (!corrected) {
            // of one tap's facts some have the field and some do not: the former say what is wrong
            if (!why || corrected.error() != AmendFault::NoSuchField)
                why = Refusal{refusalFor(corrected.error()), {}, meant.field};
            continue;
        }
        if (const auto unknown = unknownTarget(now, *event, meant))
            return failure(*unknown);
        said.emplace_back(FactCorrected{seq, meant.field, meant.value, meant.why});
    }
    if (said.empty())
        return failure(why.value_or(Refusal{RefusalCode::NotInThisShift, {}, {}}));
    return said;
}

Decision on(const Context& now, const Answer& meant)
{
    const auto open = questions(now.state);
    // by its id, or by the beginning of it while only one question begins so
    const auto begins = [&](const Question& question) {
        return question.id.starts_with(meant.question);
    };
    auto asked = std::ranges::find(open, meant.question, &Question::id);
    if (asked == open.end() && std::ranges::count_if(open, begins) == 1)
        asked = std::ranges::find_if(open, begins);
    if (asked == open.end())
        return refuse(RefusalCode::NoSuchQuestion, {}, meant.question);
    if (std::ranges::find(asked->choices, meant.choice) == asked->choices.end())
        return refuse(RefusalCode::NoSuchChoice, asked->subject, meant.choice);

    std::vector<Fact> said{QuestionAnswered{asked->id, meant.choice}};
    const AmpouleRef named = ampouleOf(asked->subject);
    if (asked->kind == QuestionKind::WhichBroke && meant.choice != std::to_string(named.no)) {
        const AmpouleRef truth{named.pull, std::stoi(meant.choice)};
        for (Fact& correction : swapped(now, named, truth, asked->id))
            said.push_back(std::move(correction));
        said.emplace_back(
            QuestionAnswered{"which broke " + toText(subjectOf(truth)), meant.choice});
    }
    if (asked->kind == QuestionKind::WhichAmpoule && meant.choice != kNoneOfThem)
        std::ranges::move(identified(now, *asked, std::stoi(meant.choice)),
                          std::back_inserter(said));
    if (asked->kind == QuestionKind::WaterChanged && meant.choice == "yes")
        said.emplace_back(BathChanged{asked->id});
    return said;
}

}  // namespace bathside::rows
