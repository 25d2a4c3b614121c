#include "core/review/reviews.h"

#include <algorithm>

#include <nlohmann/json.hpp>

#include "core/facts/codec.h"
#include "core/trail/canonical.h"

namespace bathside {
namespace {

using Json = nlohmann::json;

void on(Reviews& reviews, const Event&, const ShiftOpened&)
{
    reviews.comments.clear();
    std::erase_if(reviews.deviations, [](const auto& item) { return !item.second.isOpen(); });
}

void on(Reviews& reviews, const Event& event, const DeviationFound& fact)
{
    reviews.deviations[event.seq] = {
        .seq = event.seq,
        .at = event.at,
        .fact = fact,
        .isKept = false,
        .onDuty = event.person ? std::optional(event.person->id) : std::nullopt,
        .reviewed = std::nullopt};
}

/// The last one of that limit and subject; one that a correction found is written as a rejudgement.
void on(Reviews& reviews, const Event& event, const Rejudged& fact)
{
    const auto known =
        std::find_if(reviews.deviations.rbegin(), reviews.deviations.rend(), [&](const auto& item) {
            return item.second.fact.limit == fact.limit && item.second.fact.subject == fact.subject;
        });
    if (known == reviews.deviations.rend()) {
        if (fact.over)
            on(reviews, event,
               DeviationFound{fact.limit, fact.subject, fact.bag, *fact.over, fact.from});
        return;
    }
    known->second.isKept = !fact.over;
    if (fact.over)
        known->second.fact.over = *fact.over;
}

void on(Reviews& reviews, const Event& event, const DeviationReviewed& fact)
{
    const auto found = reviews.deviations.find(fact.of);
    if (found == reviews.deviations.end())
        return;
    found->second.reviewed = {.cause = fact.cause,
                              .words = fact.words,
                              .action = fact.action,
                              .by = event.person ? event.person->id : PersonId{},
                              .at = event.at,
                              .isSigned = false};
}

void on(Reviews& reviews, const Event&, const RecordSigned& fact)
{
    for (const Seq seq : fact.of) {
        const auto found = reviews.deviations.find(seq);
        if (found != reviews.deviations.end() && found->second.reviewed)
            found->second.reviewed->isSigned = true;
    }
}

void on(Reviews& reviews, const Event&, const NoteCommented& fact)
{
    reviews.comments[fact.of].push_back(fact.text);
}

// {"open": [{"seq", "at" (ms since 1970), "person"?, "deviation": payload}, …]}
void on(Reviews& reviews, const Event&, const ReviewCarried& fact)
{
    reviews.deviations.clear();
    const Json document = Json::parse(fact.document.text, nullptr, false);
    if (!document.is_object() || !document.contains("open"))
        return;
    for (const Json& item : document["open"]) {
        const auto deviation =
            factFrom(DeviationFound::kKind, item.value("deviation", Json{}).dump());
        const auto* found = deviation ? std::get_if<DeviationFound>(&*deviation) : nullptr;
        const Seq seq = item.value("seq", Seq{});
        if (!found || seq <= 0)
            continue;
        DeviationOnRecord& kept = reviews.deviations[seq];
        kept.seq = seq;
        kept.at.wall = WallTime(Millis(item.value("at_ms", std::int64_t{})));
        kept.fact = *found;
        if (item.contains("person"))
            kept.onDuty = PersonId{item.value("person", std::string())};
    }
}

void on(Reviews&, const Event&, const auto&) {}

}  // namespace

std::vector<Seq> Reviews::open() const
{
    std::vector<Seq> seqs;
    for (const auto& [seq, deviation] : deviations) {
        if (deviation.isOpen())
            seqs.push_back(seq);
    }
    return seqs;
}

void evolve(Reviews& reviews, const Event& event)
{
    std::visit([&](const auto& fact) { on(reviews, event, fact); }, event.fact);
}

std::optional<Document> carriedFrom(const Reviews& reviews)
{
    Json open = Json::array();
    for (const Seq seq : reviews.open()) {
        const DeviationOnRecord& deviation = reviews.deviations.at(seq);
        Json item{{"seq", seq},
                  {"at_ms", deviation.at.wall.time_since_epoch().count()},
                  {"deviation", Json::parse(payloadOf(deviation.fact))}};
        if (deviation.onDuty)
            item["person"] = deviation.onDuty->text;
        open.push_back(std::move(item));
    }
    if (open.empty())
        return std::nullopt;
    return Document{canonicalised(Json{{"open", std::move(open)}}.dump()).value_or("{}")};
}

}  // namespace bathside
