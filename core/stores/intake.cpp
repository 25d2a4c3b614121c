#include "core/stores/intake.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <map>

#include "core/base/day.h"
#include "core/stores/csv_reader.h"
#include "core/trail/json_text.h"

namespace bathside {
namespace {

constexpr std::size_t kLongestName = 120;
constexpr std::size_t kShown = 40;
constexpr std::int64_t kMostPieces = 1'000'000;
constexpr std::int64_t kMostPfu = 1'000'000'000;
constexpr std::int64_t kMostMicroLitres = 10'000'000;

constexpr std::array<std::string_view, 12> kColumns{"kind",      "item",     "lot",     "doses",
                                                    "volume_ml", "count",    "expires", "titre_pfu",
                                                    "vessel",    "canister", "cane",    "delivery"};

std::string shortened(std::string_view text)
{
    std::size_t end = std::min(text.size(), kShown);
    while (end < text.size() && end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80)
        --end;
    return std::string(text.substr(0, end)) + (end < text.size() ? "…" : "");
}

std::string trimmed(std::string_view text)
{
    const auto first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos)
        return {};
    return std::string(text.substr(first, text.find_last_not_of(" \t") - first + 1));
}

std::optional<std::int64_t> wholeFrom(std::string_view text)
{
    std::int64_t value = 0;
    const auto read = std::from_chars(text.data(), text.data() + text.size(), value);
    const bool isWhole = read.ec == std::errc{} && read.ptr == text.data() + text.size();
    return isWhole ? std::optional(value) : std::nullopt;
}

/// Millilitres with at most three decimals, after a point or a comma, as µL.
std::optional<MicroLitres> microLitresFrom(std::string_view text)
{
    const auto sign = text.find_first_of(".,");
    const std::string_view whole = text.substr(0, sign);
    std::string decimals(sign == std::string_view::npos ? "" : text.substr(sign + 1));
    const bool endsInSign = sign != std::string_view::npos && decimals.empty();
    if (decimals.size() > 3 || endsInSign)
        return std::nullopt;
    decimals.resize(3, '0');
    const auto millilitres = wholeFrom(whole);
    const auto rest = wholeFrom(decimals);
    const bool fits = millilitres && rest && *millilitres >= 0 && *rest >= 0 &&
                      *millilitres <= kMostMicroLitres / 1000;
    return fits ? std::optional(MicroLitres{*millilitres * 1000 + *rest}) : std::nullopt;
}

bool isWithin(const std::optional<std::int64_t>& value, std::int64_t most)
{
    return !value || (*value >= 1 && *value <= most);
}

std::optional<ReceiptFault> faultOfNames(const StoreReceived& received)
{
    const bool isDiluent = received.of.kind == StockKind::Diluent;
    const bool isConsumable = received.of.kind == StockKind::Consumable;
    if (!isDiluent && received.of.item.empty())
        return ReceiptFault{"item", IntakeExpects::Something};
    if (isDiluent && !received.of.item.empty())
        return ReceiptFault{"item", IntakeExpects::Nothing};
    if (!isConsumable && received.of.lot.empty())
        return ReceiptFault{"lot", IntakeExpects::Something};
    const std::array<std::pair<const char*, std::string_view>, 4> names{
        {{"item", received.of.item},
         {"lot", received.of.lot.text},
         {"vessel", received.place},
         {"delivery", received.delivery ? std::string_view(*received.delivery) : ""}}};
    for (const auto& [column, text] : names) {
        if (!isPlainName(text))
            return ReceiptFault{column, IntakeExpects::PlainText};
    }
    return std::nullopt;
}

std::optional<ReceiptFault> faultOfNumbers(const StoreReceived& received)
{
    const StockKind kind = received.of.kind;
    if (received.count < 1 || received.count > kMostPieces)
        return ReceiptFault{"count", IntakeExpects::WholeNumber};
    if (kind != StockKind::Ampoule && received.doses)
        return ReceiptFault{"doses", IntakeExpects::Nothing};
    if (kind == StockKind::Ampoule && !received.doses)
        return ReceiptFault{"doses", IntakeExpects::Something};
    if (!isWithin(received.doses, kMostPieces))
        return ReceiptFault{"doses", IntakeExpects::WholeNumber};
    if (kind != StockKind::Ampoule && received.titre)
        return ReceiptFault{"titre_pfu", IntakeExpects::Nothing};
    if (!isWithin(received.titre, kMostPfu))
        return ReceiptFault{"titre_pfu", IntakeExpects::WholeNumber};
    const auto& volume = received.of.volume;
    if (kind != StockKind::Diluent && volume)
        return ReceiptFault{"volume_ml", IntakeExpects::Nothing};
    if (kind == StockKind::Diluent && !volume)
        return ReceiptFault{"volume_ml", IntakeExpects::Something};
    if (volume && (volume->count < 1 || volume->count > kMostMicroLitres))
        return ReceiptFault{"volume_ml", IntakeExpects::Millilitres};
    if (kind != StockKind::Consumable && !received.expires)
        return ReceiptFault{"expires", IntakeExpects::Something};
    return std::nullopt;
}

std::optional<ReceiptFault> faultOfLot(const StoreReceived& received, const Stores& stores)
{
    const StockLot* known = stores.lot(received.of);
    if (!known)
        return std::nullopt;
    if (known->doses != received.doses)
        return ReceiptFault{"doses", IntakeExpects::AsBefore};
    if (known->expires != received.expires)
        return ReceiptFault{"expires", IntakeExpects::AsBefore};
    if (known->titre && received.titre && known->titre != received.titre)
        return ReceiptFault{"titre_pfu", IntakeExpects::AsBefore};
    return std::nullopt;
}

bool isReceived(const StoreReceived& received, const Stores& stores)
{
    const StockLot* lot = stores.lot(received.of);
    const Receipt receipt{received.place, received.count, received.delivery.value_or("")};
    return lot && std::ranges::find(lot->receipts, receipt) != lot->receipts.end();
}

// Reads the table with the stores growing beside it, so that a file is held against itself, too.
class Reading {
public:
    Reading(const Stores& stores, const std::vector<ComponentId>& components)
        : m_stores(stores), m_components(components)
    {
    }

    Intake read(const CsvTable& table) &&
    {
        if (table.rows.empty())
            return refused({1, {}, {}, IntakeExpects::HeadLine});
        if (auto fault = readHead(table.rows.front()))
            return refused(std::move(*fault));
        for (auto row = table.rows.begin() + 1; row != table.rows.end(); ++row)
            take(*row);
        return std::move(m_intake);
    }

private:
    Intake refused(IntakeFault fault)
    {
        m_intake.faults.push_back(std::move(fault));
        return std::move(m_intake);
    }

    std::optional<IntakeFault> readHead(const CsvRow& head)
    {
        for (std::size_t i = 0; i < head.cells.size(); ++i) {
            const std::string name = trimmed(head.cells[i]);
            if (std::ranges::find(kColumns, name) == kColumns.end())
                return IntakeFault{head.line, shortened(name), shortened(name),
                                   IntakeExpects::KnownColumn};
            if (!m_places.emplace(name, i).second)
                return IntakeFault{head.line, name, name, IntakeExpects::ColumnOnce};
        }
        for (const char* needed : {"kind", "count"}) {
            if (!m_places.contains(needed))
                return IntakeFault{head.line, needed, {}, IntakeExpects::NeededColumn};
        }
        return std::nullopt;
    }

    [[nodiscard]] std::string cell(std::string_view column) const
    {
        const auto place = m_places.find(column);
        const bool isThere = place != m_places.end() && place->second < m_row->cells.size();
        return isThere ? trimmed(m_row->cells[place->second]) : std::string();
    }

    void blame(std::string_view column, IntakeExpects expected)
    {
        if (!m_blamed)
            m_intake.faults.push_back(
                {m_row->line, std::string(column), shortened(cell(column)), expected});
        m_blamed = true;
    }

    template <typename T, typename Read>
    std::optional<T> value(std::string_view column, IntakeExpects expected, Read reader)
    {
        const std::string text = cell(column);
        const std::optional<T> found = text.empty() ? std::nullopt : reader(text);
        if (!text.empty() && !found)
            blame(column, expected);
        return found;
    }

    std::optional<std::int64_t> whole(std::string_view column)
    {
        return value<std::int64_t>(column, IntakeExpects::WholeNumber, wholeFrom);
    }

    StoreReceived receivedFromRow()
    {
        StoreReceived received;
        const auto kind = named<StockKind>(cell("kind"));
        if (!kind)
            blame("kind", IntakeExpects::KindWord);
        received.of = {.kind = kind.value_or(StockKind::Ampoule),
                       .item = cell("item"),
                       .lot = {cell("lot")},
                       .volume = {}};
        received.of.volume =
            value<MicroLitres>("volume_ml", IntakeExpects::Millilitres, microLitresFrom);
        received.place = placeText(cell("vessel"), cell("canister"), cell("cane"));
        received.count = whole("count").value_or(0);
        received.doses = whole("doses");
        received.expires = value<std::chrono::sys_days>("expires", IntakeExpects::Day, dayFrom);
        received.titre = whole("titre_pfu");
        if (const std::string delivery = cell("delivery"); !delivery.empty())
            received.delivery = delivery;
        return received;
    }

    [[nodiscard]] bool isKnownComponent(const Stock& of) const
    {
        return of.kind != StockKind::Ampoule || m_components.empty() ||
               std::ranges::find(m_components, of.item, &ComponentId::text) != m_components.end();
    }

    void take(const CsvRow& row)
    {
        m_row = &row;
        m_blamed = false;
        if (row.cells.size() > m_places.size())
            blame({}, IntakeExpects::AsManyCells);
        const StoreReceived received = receivedFromRow();
        if (const auto fault = faultOf(received, m_stores))
            blame(fault->column, fault->expected);
        if (!isKnownComponent(received.of))
            blame("item", IntakeExpects::KnownComponent);
        if (m_blamed)
            return;
        if (isReceived(received, m_stores))
            return m_intake.doubled.push_back({row.line, received});
        Event event;
        event.fact = received;
        evolve(m_stores, event);
        m_intake.taken.push_back({row.line, received});
    }

    Stores m_stores;
    const std::vector<ComponentId>& m_components;
    std::map<std::string, std::size_t, std::less<>> m_places;
    const CsvRow* m_row = nullptr;
    bool m_blamed = false;
    Intake m_intake;
};

}  // namespace

bool isPlainName(std::string_view text)
{
    const auto isControl = [](char c) { return (c >= 0 && c < 0x20) || c == 0x7F; };
    return text.size() <= kLongestName && isUtf8(text) && std::ranges::none_of(text, isControl);
}

std::optional<ReceiptFault> faultOf(const StoreReceived& received, const Stores& stores)
{
    if (auto fault = faultOfNames(received))
        return fault;
    if (auto fault = faultOfNumbers(received))
        return fault;
    return faultOfLot(received, stores);
}

Intake intakeFrom(std::string_view csv, const Stores& stores,
                  const std::vector<ComponentId>& components)
{
    const auto table = csvFrom(csv);
    if (table)
        return Reading(stores, components).read(*table);
    const auto expected = table.error().kind == CsvFault::Kind::NotUtf8
                              ? IntakeExpects::Utf8
                              : IntakeExpects::ClosedQuote;
    return Intake{{}, {}, {{table.error().line, {}, {}, expected}}};
}

}  // namespace bathside
