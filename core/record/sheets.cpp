#include "core/record/sheets.h"

#include <algorithm>
#include <array>
#include <utility>

#include "core/record/bag_content.h"
#include "core/record/deviations.h"

namespace bathside {
namespace {

using std::literals::operator""sv;

constexpr std::array kAmpouleColumns{CsvColumn{"shift", kInstant},
                                     CsvColumn{"offset", ""},
                                     CsvColumn{"pull", ""},
                                     CsvColumn{"ampoule", ""},
                                     CsvColumn{"component", ""},
                                     CsvColumn{"lot", ""},
                                     CsvColumn{"bag", ""},
                                     CsvColumn{"out", kInstant},
                                     CsvColumn{"in_bath", kInstant},
                                     CsvColumn{"opened", kInstant},
                                     CsvColumn{"in_diluent", kInstant},
                                     CsvColumn{"rinsed", kInstant},
                                     CsvColumn{"in_bag", kInstant},
                                     CsvColumn{"out_to_bath", "s"},
                                     CsvColumn{"bath_to_diluent", "s"},
                                     CsvColumn{"not_timed", ""},
                                     CsvColumn{"uncertain", ""},
                                     CsvColumn{"lost", kInstant},
                                     CsvColumn{"lost_why", ""}};

constexpr std::array kBagColumns{
    CsvColumn{"shift", kInstant},   CsvColumn{"offset", ""},
    CsvColumn{"bag", ""},           CsvColumn{"volume", "mL"},
    CsvColumn{"diluent_lot", ""},   CsvColumn{"diluent_temperature", "°C"},
    CsvColumn{"ampoules", ""},      CsvColumn{"lots", ""},
    CsvColumn{"started", kInstant}, CsvColumn{"first_in_diluent", kInstant},
    CsvColumn{"mixed", kInstant},   CsvColumn{"hung", kInstant},
    CsvColumn{"line", ""},          CsvColumn{"down", kInstant},
    CsvColumn{"age_at_down", "s"},  CsvColumn{"uncertain", ""},
    CsvColumn{"down_why", ""},      CsvColumn{"left", "mL"},
    CsvColumn{"held", kInstant},    CsvColumn{"held_why", ""},
    CsvColumn{"held_words", ""}};

constexpr std::array kDeviationColumns{
    CsvColumn{"shift", kInstant}, CsvColumn{"offset", ""}, CsvColumn{"seq", ""},
    CsvColumn{"at", kInstant},    CsvColumn{"limit", ""},  CsvColumn{"subject", ""},
    CsvColumn{"bag", ""},         CsvColumn{"over", ""},   CsvColumn{"unit", ""},
    CsvColumn{"rejudged", ""},    CsvColumn{"stands", ""}};

// --- what several sheets need ---

void instant(CsvWriter& csv, const std::optional<Moment>& moment, std::chrono::seconds offset)
{
    if (moment)
        csv.instant({moment->at.wall, offset});
    else
        csv.none();
}

std::optional<Elapsed> between(const std::optional<Moment>& from, const std::optional<Moment>& to)
{
    return from && to ? std::optional(elapsed(from->at, to->at)) : std::nullopt;
}

void duration(CsvWriter& csv, const std::optional<Elapsed>& time)
{
    if (time)
        csv.scaled(std::chrono::floor<Millis>(time->time).count(), 3);
    else
        csv.none();
}

bool isUncertain(const std::optional<Elapsed>& time) { return time && !time->certain; }

template <typename E>
void word(CsvWriter& csv, const std::optional<E>& value)
{
    csv.word(value ? nameOf(*value) : ""sv);
}

void shift(CsvWriter& csv, const Bench& bench, std::chrono::seconds offset)
{
    instant(csv, bench.shift ? std::optional(bench.shift->opened) : std::nullopt, offset);
    csv.offset({{}, offset});
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

void writeAmpoule(CsvWriter& csv, const Bench& bench, const Ampoule& ampoule,
                  std::chrono::seconds offset)
{
    const auto toBath = between(ampoule.when(Step::Out), ampoule.when(Step::Bath));
    const auto toDiluent = between(ampoule.when(Step::Bath), ampoule.when(Step::Diluent));
    shift(csv, bench, offset);
    csv.whole(ampoule.ref.pull);
    csv.whole(ampoule.ref.no);
    csv.text(ampoule.component.text);
    csv.text(ampoule.lot.text);
    csv.text(ampoule.bag ? ampoule.bag->text : "");
    for (const auto& step : ampoule.steps)
        instant(csv, step, offset);
    duration(csv, toBath);
    duration(csv, toDiluent);
    csv.word(notTimed(ampoule));
    csv.yesNo(isUncertain(toBath) || isUncertain(toDiluent));
    instant(csv, ampoule.lost ? std::optional(ampoule.lost->moment) : std::nullopt, offset);
    word(csv, ampoule.lost ? std::optional(ampoule.lost->why) : std::nullopt);
    csv.endRow();
}

// --- bags ---

void writeBag(CsvWriter& csv, const Bench& bench, const Bag& bag, std::chrono::seconds offset)
{
    const auto down = bag.down ? std::optional(bag.down->moment) : std::nullopt;
    const auto age = between(bag.firstDiluent, down);
    const BagContent content = contentOf(bench, bag.id);
    shift(csv, bench, offset);
    csv.text(bag.id.text);
    csv.scaled(bag.volume.count, 3);
    csv.text(bag.diluentLot.text);
    bag.temperature ? csv.scaled(bag.temperature->count, 3) : csv.none();
    csv.whole(content.ampoules);
    csv.text(content.text());
    for (const auto& moment : {std::optional(bag.started), bag.firstDiluent, bag.mixed, bag.hung})
        instant(csv, moment, offset);
    csv.text(bag.line ? bag.line->text : "");
    instant(csv, down, offset);
    duration(csv, age);
    csv.yesNo(isUncertain(age));
    word(csv, bag.down ? std::optional(bag.down->why) : std::nullopt);
    bag.down ? csv.scaled(bag.down->left.count, 3) : csv.none();
    instant(csv, bag.held ? std::optional(bag.held->moment) : std::nullopt, offset);
    word(csv, bag.held ? std::optional(bag.held->why) : std::nullopt);
    csv.text(bag.held ? bag.held->words : "");
    csv.endRow();
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

void writeDeviation(CsvWriter& csv, const Bench& bench, const Deviation& row,
                    std::chrono::seconds offset)
{
    const Amount amount = amountOf(row.key.first);
    shift(csv, bench, offset);
    csv.whole(row.seq);
    csv.instant({row.at, offset});
    csv.word(nameOf(row.key.first));
    csv.text(toText(row.key.second));
    csv.text(row.bag ? row.bag->text : "");
    row.over ? csv.scaled(*row.over, amount.decimals) : csv.none();
    csv.word(amount.unit);
    csv.yesNo(row.rejudged);
    csv.yesNo(row.over.has_value());
    csv.endRow();
}

}  // namespace

Sheets::Sheets(CsvDialect dialect)
    : ampoules(dialect, kAmpouleColumns),
      bags(dialect, kBagColumns),
      deviations(dialect, kDeviationColumns)
{
}

SheetFold::SheetFold(const LocalDays& days, std::string zone, std::vector<CsvDialect> dialects)
    : m_days(days), m_zone(std::move(zone))
{
    for (const CsvDialect dialect : dialects)
        m_sheets.emplace_back(dialect);
}

void SheetFold::begin(const Event& event) { m_state = evolve(std::move(m_state), event); }

void SheetFold::take(const Event& event)
{
    if (const auto* opened = std::get_if<ShiftOpened>(&event.fact)) {
        writeShift();
        m_zone = opened->zone;
    }
    m_state = evolve(std::move(m_state), event);
}

std::vector<Sheets> SheetFold::finish()
{
    writeShift();
    return std::move(m_sheets);
}

LocalInstant SheetFold::local(WallTime at) const
{
    return {at, m_days.offset(m_zone, at).value_or(std::chrono::seconds::zero())};
}

// Each row has one offset: the one in force when its first fact was recorded.
void SheetFold::writeShift()
{
    const Bench& bench = m_state.bench;
    const auto deviations = deviationsOf(m_state);
    for (Sheets& sheets : m_sheets) {
        for (const Pull& pull : bench.pulls) {
            for (const Ampoule& ampoule : pull.ampoules)
                writeAmpoule(sheets.ampoules, bench, ampoule,
                             local(ampoule.when(Step::Out)->at.wall).offset);
        }
        for (const Bag& bag : bench.bags)
            writeBag(sheets.bags, bench, bag, local(bag.started.at.wall).offset);
        for (const Deviation& row : deviations)
            writeDeviation(sheets.deviations, bench, row, local(row.at).offset);
    }
}

}  // namespace bathside
