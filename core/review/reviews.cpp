#include "core/review/reviews.h"

#include <algorithm>

#include <nlohmann/json.hpp>

#include "core/facts/codec.h"
#include "core/trail/canonical.h"

namespace bathside {
namespace {

using Json = nlohmann::json;

/// What is still open is written right after it, as `review.carried`.
void on(Reviews& reviews, const Event&, const ShiftOpened&) { reviews = {}; }

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

/// Written in a shift before: its ampoules and bags are not those of today with the same names.
bool isCarried(const DeviationOnRecord& deviation) { return deviation.at.bootId == BootId{}; }

/// The last one of that limit and subject; one that a correction found is written as a rejudgement.
/// What was reviewed has to be looked at again when it comes out otherwise.
void on(Reviews& reviews, const Event& event, const Rejudged& fact)
{
    const auto known =
        std::find_if(reviews.deviations.rbegin(), reviews.deviations.rend(), [&](const auto& item) {
            const DeviationOnRecord& one = item.second;
            return !isCarried(one) && one.fact.limit == fact.limit &&
                   one.fact.subject == fact.subject;
        });
    if (known == reviews.deviations.rend()) {
        if (fact.over)
            on(reviews, event,
               DeviationFound{fact.limit, fact.subject, fact.bag, *fact.over, fact.from});
        return;
    }
    DeviationOnRecord& deviation = known->second;
    const bool isOtherwise = deviation.isKept || fact.over != deviation.fact.over;
    deviation.isKept = !fact.over;
    if (fact.over) {
        deviation.fact.over = *fact.over;
        deviation.fact.bag = fact.bag;
    }
    if (isOtherwise && fact.over)
        deviation.reviewed.reset();
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

void on(Reviews& reviews, const Event& event, const RecordSigned& fact)
{
    if (fact.meaning != Meaning::Reviewed || !event.person)
        return;
    for (const Seq seq : fact.of) {
        const auto found = reviews.deviations.find(seq);
        const bool isTheirs = found != reviews.deviations.end() && found->second.reviewed &&
                              found->second.reviewed->by == event.person->id;
        if (isTheirs)
            found->second.reviewed->isSigned = true;
    }
}

void on(Reviews& reviews, const Event&, const NoteCommented& fact)
{
    reviews.comments[fact.of].push_back(fact.text);
}

/// Nothing where the document is not one of ours: a record that was tampered with still folds.
std::optional<DeviationOnRecord> carriedItem(const Json& item)
{
    const auto whole = [&](const char* key) {
        return item.is_object() && item.contains(key) && item[key].is_number_integer();
    };
    if (!whole("seq") || !whole("at_ms") || !item.contains("deviation"))
        return std::nullopt;
    const auto fact = factFrom(DeviationFound::kKind, item["deviation"].dump());
    const auto* found = fact ? std::get_if<DeviationFound>(&*fact) : nullptr;
    if (!found)
        return std::nullopt;
    DeviationOnRecord kept;
    kept.seq = item["seq"].get<Seq>();
    kept.at.wall = WallTime(Millis(item["at_ms"].get<std::int64_t>()));
    kept.fact = *found;
    if (item.contains("person") && item["person"].is_string())
        kept.onDuty = PersonId{item["person"].get<std::string>()};
    return kept;
}

// {"open": [{"seq", "at_ms" (since 1970), "person"?, "deviation": payload}, …]}
void on(Reviews& reviews, const Event&, const ReviewCarried& fact)
{
    reviews.deviations.clear();
    const Json document = Json::parse(fact.document.text, nullptr, false);
    if (!document.is_object() || !document.contains("open") || !document["open"].is_array())
        return;
    for (const Json& item : document["open"]) {
        if (auto kept = carriedItem(item))
            reviews.deviations.insert_or_assign(kept->seq, std::move(*kept));
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
