#include "core/record/sheets.h"

#include <algorithm>
#include <array>
#include <utility>

#include "core/record/bag_content.h"
#include "core/record/deviations.h"

namespace bathside {
namespace {

using std::literals::operator""sv;

constexpr std::array kAmpouleColumns{TableColumn{"shift", kInstant},
                                     TableColumn{"offset", ""},
                                     TableColumn{"pull", ""},
                                     TableColumn{"ampoule", ""},
                                     TableColumn{"component", ""},
                                     TableColumn{"lot", ""},
                                     TableColumn{"bag", ""},
                                     TableColumn{"out", kInstant},
                                     TableColumn{"in_bath", kInstant},
                                     TableColumn{"opened", kInstant},
                                     TableColumn{"in_diluent", kInstant},
                                     TableColumn{"rinsed", kInstant},
                                     TableColumn{"in_bag", kInstant},
                                     TableColumn{"out_to_bath", "s"},
                                     TableColumn{"bath_to_diluent", "s"},
                                     TableColumn{"not_timed", ""},
                                     TableColumn{"uncertain", ""},
                                     TableColumn{"lost", kInstant},
                                     TableColumn{"lost_why", ""}};

constexpr std::array kBagColumns{
    TableColumn{"shift", kInstant},   TableColumn{"offset", ""},
    TableColumn{"bag", ""},           TableColumn{"volume", "mL"},
    TableColumn{"diluent_lot", ""},   TableColumn{"diluent_temperature", "°C"},
    TableColumn{"ampoules", ""},      TableColumn{"lots", ""},
    TableColumn{"started", kInstant}, TableColumn{"first_in_diluent", kInstant},
    TableColumn{"mixed", kInstant},   TableColumn{"hung", kInstant},
    TableColumn{"line", ""},          TableColumn{"down", kInstant},
    TableColumn{"age_at_down", "s"},  TableColumn{"uncertain", ""},
    TableColumn{"down_why", ""},      TableColumn{"left", "mL"},
    TableColumn{"held", kInstant},    TableColumn{"held_why", ""},
    TableColumn{"held_words", ""},    TableColumn{"released", kInstant},
    TableColumn{"released_by", ""},   TableColumn{"released_words", ""}};

constexpr std::array kDeviationColumns{
    TableColumn{"shift", kInstant}, TableColumn{"offset", ""}, TableColumn{"seq", ""},
    TableColumn{"at", kInstant},    TableColumn{"limit", ""},  TableColumn{"subject", ""},
    TableColumn{"bag", ""},         TableColumn{"over", ""},   TableColumn{"unit", ""},
    TableColumn{"rejudged", ""},    TableColumn{"stands", ""}, TableColumn{"reviewed", kInstant},
    TableColumn{"reviewer", ""},    TableColumn{"cause", ""},  TableColumn{"cause_words", ""},
    TableColumn{"action", ""},      TableColumn{"signed", ""}};

// --- what several sheets need ---

void instant(Table& table, const std::optional<Moment>& moment, std::chrono::seconds offset)
{
    if (moment)
        table.instant({moment->at.wall, offset});
    else
        table.none();
}

std::optional<Elapsed> between(const std::optional<Moment>& from, const std::optional<Moment>& to)
{
    return from && to ? std::optional(elapsed(from->at, to->at)) : std::nullopt;
}

void duration(Table& table, const std::optional<Elapsed>& time)
{
    if (time)
        table.scaled(std::chrono::floor<Millis>(time->time).count(), 3);
    else
        table.none();
}

bool isUncertain(const std::optional<Elapsed>& time) { return time && !time->certain; }

template <typename E>
void word(Table& table, const std::optional<E>& value)
{
    table.word(value ? nameOf(*value) : ""sv);
}

void shift(Table& table, const Bench& bench, std::chrono::seconds offset)
{
    instant(table, bench.shift ? std::optional(bench.shift->opened) : std::nullopt, offset);
    table.offset({{}, offset});
}

// --- ampoules ---

std::string notTimed(const Ampoule& ampoule)
{
    std::string names;
    for (std::size_t i = 0; i < kSteps; ++i) {
        if (!ampoule.steps[i] || ampoule.steps[i]->timed)
            continue;
        names.append(names.empty() ? "" : " ").append(nameOf(static_cast<Step>(i)));
    }
    return names;
}

void writeAmpoule(Table& table, const Bench& bench, const Ampoule& ampoule,
                  std::chrono::seconds offset)
{
    const auto toBath = between(ampoule.when(Step::Out), ampoule.when(Step::Bath));
    const auto toDiluent = between(ampoule.when(Step::Bath), ampoule.when(Step::Diluent));
    shift(table, bench, offset);
    table.whole(ampoule.ref.pull);
    table.whole(ampoule.ref.no);
    table.text(ampoule.component.text);
    table.text(ampoule.lot.text);
    table.text(ampoule.bag ? ampoule.bag->text : "");
    for (const auto& step : ampoule.steps)
        instant(table, step, offset);
    duration(table, toBath);
    duration(table, toDiluent);
    table.word(notTimed(ampoule));
    table.yesNo(isUncertain(toBath) || isUncertain(toDiluent));
    instant(table, ampoule.lost ? std::optional(ampoule.lost->moment) : std::nullopt, offset);
    word(table, ampoule.lost ? std::optional(ampoule.lost->why) : std::nullopt);
    table.endRow();
}

// --- bags ---

/// The last one, whether it stands or not.
void writeHold(Table& table, const Bag& bag, std::chrono::seconds offset)
{
    const auto hold = bag.holds.empty() ? std::nullopt : std::optional(bag.holds.back());
    const auto released = hold ? hold->released : std::nullopt;
    instant(table, hold ? std::optional(hold->moment) : std::nullopt, offset);
    word(table, hold ? std::optional(hold->why) : std::nullopt);
    table.text(hold ? hold->words : "");
    instant(table, released ? std::optional(released->moment) : std::nullopt, offset);
    table.text(released ? released->by.text : "");
    table.text(released ? released->words : "");
}

void writeBag(Table& table, const Bench& bench, const Bag& bag, std::chrono::seconds offset)
{
    const auto down = bag.down ? std::optional(bag.down->moment) : std::nullopt;
    const auto age = between(bag.firstDiluent, down);
    const BagContent content = contentOf(bench, bag.id);
    shift(table, bench, offset);
    table.text(bag.id.text);
    table.scaled(bag.volume.count, 3);
    table.text(bag.diluentLot.text);
    bag.temperature ? table.scaled(bag.temperature->count, 3) : table.none();
    table.whole(content.ampoules);
    table.text(content.text());
    for (const auto& moment : {std::optional(bag.started), bag.firstDiluent, bag.mixed, bag.hung})
        instant(table, moment, offset);
    table.text(bag.line ? bag.line->text : "");
    instant(table, down, offset);
    duration(table, age);
    table.yesNo(isUncertain(age));
    word(table, bag.down ? std::optional(bag.down->why) : std::nullopt);
    bag.down ? table.scaled(bag.down->left.count, 3) : table.none();
    writeHold(table, bag, offset);
    table.endRow();
}

// --- deviations ---

struct Amount {
    int decimals = 3;
    std::string_view unit;
};

// The limit's own unit in the trail (ms, m°C, birds) as people have it.
Amount amountOf(LimitName limit)
{
    switch (limit) {
        case LimitName::BathAtPull:
        case LimitName::Diluent:
        case LimitName::BathBetweenPulls:
            return {3, "°C"};
        case LimitName::Needle:
        case LimitName::DoseCheck:
            return {0, "birds"};
        case LimitName::Exposure:
        case LimitName::Thaw:
        case LimitName::InUse:
        case LimitName::Reading:
        case LimitName::Swirl:
        case LimitName::NextPull:
            break;
    }
    return {3, "s"};
}

void writeReview(Table& table, const Reviews& reviews, Seq of, std::chrono::seconds offset)
{
    const auto found = reviews.deviations.find(of);
    const bool isReviewed = found != reviews.deviations.end() && found->second.reviewed;
    const Reviewed reviewed = isReviewed ? *found->second.reviewed : Reviewed{};
    isReviewed ? table.instant({reviewed.at.wall, offset}) : table.none();
    table.text(reviewed.by.text);
    table.text(reviewed.cause);
    table.text(reviewed.words);
    table.text(reviewed.action);
    table.yesNo(reviewed.isSigned);
}

void writeDeviation(Table& table, const Bench& bench, const Deviation& row,
                    std::chrono::seconds offset)
{
    const Amount amount = amountOf(row.key.first);
    shift(table, bench, offset);
    table.whole(row.seq);
    table.instant({row.at, offset});
    table.word(nameOf(row.key.first));
    table.text(toText(row.key.second));
    table.text(row.bag ? row.bag->text : "");
    row.over ? table.scaled(*row.over, amount.decimals) : table.none();
    table.word(amount.unit);
    table.yesNo(row.rejudged);
    table.yesNo(row.over.has_value());
    writeReview(table, bench.reviews, row.seq, offset);
    table.endRow();
}

}  // namespace

Sheets::Sheets(CsvDialect dialect)
    : ampoules(dialect, kAmpouleColumns),
      bags(dialect, kBagColumns),
      deviations(dialect, kDeviationColumns)
{
}

SheetFold::SheetFold(const LocalDays& days, std::string zone, std::vector<CsvDialect> dialects,
                     const std::vector<Entry>& later)
    : m_days(days), m_zone(std::move(zone)), m_fold(later)
{
    for (const CsvDialect dialect : dialects)
        m_sheets.emplace_back(dialect);
}

void SheetFold::begin(const Event& event) { m_fold.begin(event); }

void SheetFold::take(const Event& event)
{
    if (const auto ended = m_fold.take(event))
        write(*ended);
    if (const auto* opened = std::get_if<ShiftOpened>(&event.fact))
        m_zone = opened->zone;
}

std::vector<Sheets> SheetFold::finish()
{
    if (const auto last = m_fold.finish())
        write(*last);
    return std::move(m_sheets);
}

LocalInstant SheetFold::local(WallTime at) const
{
    return {at, m_days.offset(m_zone, at).value_or(std::chrono::seconds::zero())};
}

void SheetFold::alsoInto(Book& book)
{
    Table& ampoules = book.add("ampoules", kAmpouleColumns);
    Table& bags = book.add("bags", kBagColumns);
    m_also = {&ampoules, &bags, &book.add("deviations", kDeviationColumns)};
}

// Each row has one offset: the one in force when its first fact was recorded.
void SheetFold::write(const State& shift)
{
    for (Sheets& sheets : m_sheets)
        write(shift, sheets.ampoules, sheets.bags, sheets.deviations);
    if (m_also.bags)
        write(shift, *m_also.ampoules, *m_also.bags, *m_also.deviations);
}

void SheetFold::write(const State& shift, Table& ampoules, Table& bags, Table& deviations)
{
    const Bench& bench = shift.bench;
    for (const Pull& pull : bench.pulls) {
        for (const Ampoule& ampoule : pull.ampoules)
            writeAmpoule(ampoules, bench, ampoule, local(ampoule.when(Step::Out)->at.wall).offset);
    }
    for (const Bag& bag : bench.bags)
        writeBag(bags, bench, bag, local(bag.started.at.wall).offset);
    for (const Deviation& row : deviationsOf(shift))
        writeDeviation(deviations, bench, row, local(row.at).offset);
}

}  // namespace bathside
