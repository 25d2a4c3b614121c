// Which ampoule was it? What was scanned within a critical window is told apart after it.

#include <algorithm>

#include "core/bench/lots.h"
#include "core/bench/next.h"
#include "core/scan/said.h"

namespace bathside {
namespace {

Seq firstOut(const Pull& pull)
{
    Seq first = 0;
    for (const Ampoule& ampoule : pull.ampoules) {
        const Seq out = ampoule.when(Step::Out)->seq;
        first = first == 0 ? out : std::min(first, out);
    }
    return first;
}

/// The pull in whose window it was scanned, once that pull is over; null: none.
const Pull* pullOf(const Bench& bench, const Event& scan)
{
    const Pull* last = nullptr;
    for (const Pull& pull : bench.pulls) {
        if (!pull.ampoules.empty() && firstOut(pull) < scan.seq)
            last = &pull;
    }
    if (!last || !last->closed || !bench.card)
        return nullptr;
    const Elapsed since = elapsed(last->closed->at, scan.at);
    const bool isWithin = scan.seq < last->closed->seq ||
                          (since.certain && since.time < bench.card->content().windowTail);
    return isWithin ? last : nullptr;
}

std::optional<ScannedCode> codeOf(const Event& event)
{
    const auto* scanned = std::get_if<CodeScanned>(&event.fact);
    if (!scanned)
        return std::nullopt;
    const auto day = std::chrono::floor<std::chrono::days>(event.at.wall);
    const auto code = scannedCodeFrom(scanned->text, std::chrono::year_month_day(day).year());
    return code ? std::optional(*code) : std::nullopt;
}

/// Components that have such a lot by the stores; nothing at all where it is known for something
/// else only, a bag of diluent.
std::optional<std::vector<ComponentId>> componentsOf(const std::vector<Stock>& known)
{
    std::vector<ComponentId> found;
    for (const Stock& of : known) {
        if (of.kind == StockKind::Ampoule)
            found.push_back({of.item});
    }
    return found.empty() && !known.empty() ? std::nullopt : std::optional(found);
}

bool isOneOf(const std::vector<ComponentId>& of, const ComponentId& component)
{
    return std::ranges::find(of, component) != of.end();
}

/// Those of the pull that it can have been on.
std::vector<const Ampoule*> candidates(const Pull& pull, const std::vector<ComponentId>& of)
{
    std::vector<const Ampoule*> all, like;
    for (const Ampoule& ampoule : pull.ampoules) {
        all.push_back(&ampoule);
        if (isOneOf(of, ampoule.component))
            like.push_back(&ampoule);
    }
    return like.empty() ? all : like;
}

std::optional<Question> questionOf(const Bench& bench, const Event& event)
{
    const auto code = codeOf(event);
    const auto lot = code ? lotOn(*code, bench.stores) : std::nullopt;
    const Pull* pull = lot ? pullOf(bench, event) : nullptr;
    const auto of = pull ? componentsOf(stockOf(*code, bench.stores)) : std::nullopt;
    if (!of)
        return std::nullopt;
    const auto ampoules = candidates(*pull, *of);
    const bool isOnRecord = std::ranges::all_of(ampoules, [&](const Ampoule* each) {
        return each->lot == *lot && (of->empty() || isOneOf(*of, each->component));
    });
    if (isOnRecord)
        return std::nullopt;
    Question question{.id = "which ampoule " + toText(subjectOfPull(pull->no)) +
                            " scan:" + std::to_string(event.seq),
                      .kind = QuestionKind::WhichAmpoule,
                      .subject = subjectOfPull(pull->no),
                      .choices = {},
                      .lot = *lot,
                      .of = of->size() == 1 ? std::optional(of->front()) : std::nullopt};
    for (const Ampoule* each : ampoules)
        question.choices.push_back(std::to_string(each->ref.no));
    question.choices.emplace_back(kNoneOfThem);
    return question;
}

}  // namespace

std::vector<Question> questions(const State& state)
{
    std::vector<Question> open = questions(state.bench);
    for (const auto& event : state.journal) {
        auto question = questionOf(state.bench, *event);
        if (question && !state.bench.answers.contains(question->id))
            open.push_back(std::move(*question));
    }
    return open;
}

}  // namespace bathside
