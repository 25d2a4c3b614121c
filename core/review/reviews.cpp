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
bool isCarried(const auto& onRecord) { return onRecord.at.bootId == BootId{}; }

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

/// Every hold of today's bag with that name, or the one that is pointed at.
void settle(Reviews& reviews, const BagId& bag, std::optional<Seq> of)
{
    std::erase_if(reviews.holds, [&](const auto& item) {
        const HoldOnRecord& hold = item.second;
        return of ? hold.seq == *of : !isCarried(hold) && hold.fact.bag == bag;
    });
}

void on(Reviews& reviews, const Event& event, const BagHeld& fact)
{
    settle(reviews, fact.bag, {});  // held twice: one case, for the last reason
    reviews.holds[event.seq] = {event.seq, event.at, fact};
}

void on(Reviews& reviews, const Event&, const BagReleased& fact)
{
    settle(reviews, fact.bag, fact.of);
}

void on(Reviews& reviews, const Event& event, const NoteCommented& fact)
{
    reviews.comments[fact.of].push_back(
        {.at = event.at,
         .by = event.person ? std::optional(event.person->id) : std::nullopt,
         .text = fact.text});
}

// {"open": [{"seq", "at_ms" (since 1970), "person"?, "deviation": payload}, …],
//  "held"?: [{"seq", "at_ms", "held": payload}, …]}

/// Its entry, its time and its fact under that key. Nothing where the document is not one of ours:
/// a record that was tampered with still folds.
template <typename OnRecord, typename F>
std::optional<OnRecord> carriedItem(const Json& item, const char* key)
{
    const auto whole = [&](const char* name) {
        return item.is_object() && item.contains(name) && item[name].is_number_integer();
    };
    if (!whole("seq") || !whole("at_ms") || !item.contains(key))
        return std::nullopt;
    const auto fact = factFrom(F::kKind, item[key].dump());
    const auto* found = fact ? std::get_if<F>(&*fact) : nullptr;
    if (!found)
        return std::nullopt;
    OnRecord kept;
    kept.seq = item["seq"].get<Seq>();
    kept.at.wall = WallTime(Millis(item["at_ms"].get<std::int64_t>()));
    kept.fact = *found;
    return kept;
}

const Json& listIn(const Json& document, const char* key)
{
    static const Json none = Json::array();
    const bool isThere = document.is_object() && document.contains(key) && document[key].is_array();
    return isThere ? document[key] : none;
}

void on(Reviews& reviews, const Event&, const ReviewCarried& fact)
{
    reviews.deviations.clear();
    reviews.holds.clear();
    const Json document = Json::parse(fact.document.text, nullptr, false);
    for (const Json& item : listIn(document, "open")) {
        auto kept = carriedItem<DeviationOnRecord, DeviationFound>(item, "deviation");
        if (!kept)
            continue;
        if (item.contains("person") && item["person"].is_string())
            kept->onDuty = PersonId{item["person"].get<std::string>()};
        reviews.deviations.insert_or_assign(kept->seq, std::move(*kept));
    }
    for (const Json& item : listIn(document, "held")) {
        if (auto kept = carriedItem<HoldOnRecord, BagHeld>(item, "held"))
            reviews.holds.insert_or_assign(kept->seq, std::move(*kept));
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
    const auto item = [](const auto& onRecord, const char* key) {
        return Json{{"seq", onRecord.seq},
                    {"at_ms", onRecord.at.wall.time_since_epoch().count()},
                    {key, Json::parse(payloadOf(onRecord.fact))}};
    };
    Json open = Json::array(), held = Json::array();
    for (const Seq seq : reviews.open()) {
        const DeviationOnRecord& deviation = reviews.deviations.at(seq);
        open.push_back(item(deviation, "deviation"));
        if (deviation.onDuty)
            open.back()["person"] = deviation.onDuty->text;
    }
    for (const auto& [seq, hold] : reviews.holds)
        held.push_back(item(hold, "held"));
    if (open.empty() && held.empty())
        return std::nullopt;
    Json document{{"open", std::move(open)}};
    if (!held.empty())
        document["held"] = std::move(held);
    return Document{canonicalised(document.dump()).value_or("{}")};
}

}  // namespace bathside
