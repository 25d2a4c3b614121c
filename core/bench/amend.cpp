#include "core/bench/amend.h"

#include <charconv>
#include <cmath>
#include <type_traits>

#include "core/base/day.h"
#include "core/base/rfc3339.h"

namespace bathside {
namespace {

using Amended = Result<std::optional<Event>, AmendFault>;

template <typename T, typename... Of>
constexpr bool isAnyOf = (std::is_same_v<T, Of> || ...);

template <typename T>
std::optional<T> number(const std::string& text)
{
    T value{};
    const auto end = text.data() + text.size();
    const auto read = std::from_chars(text.data(), end, value);
    if (read.ec != std::errc{} || read.ptr != end)
        return std::nullopt;
    return value;
}

/// Thousandths of a decimal as people write it: mL to µL, °C to m°C.
std::optional<std::int64_t> thousandths(const std::string& text)
{
    const auto value = number<double>(text);
    if (!value || std::abs(*value) > 1e9)
        return std::nullopt;
    return std::llround(*value * 1000);
}

Amended withTime(Event event, const std::string& value)
{
    const auto at = fromRfc3339(value);
    if (!at)
        return failure(AmendFault::BadValue);
    if (*at == event.at.wall)
        return failure(AmendFault::NothingChanges);
    event.at = shifted(event.at, *at - event.at.wall);
    std::visit(
        [](auto& fact) {
            if constexpr (requires { fact.timed; })
                fact.timed = true;
        },
        event.fact);
    return event;
}

/// What `read` makes of the value, put where `find` points in the fact; facts without it lack the
/// field.
template <typename Find, typename Read>
Amended withMember(Event event, Find find, Read read)
{
    auto outcome = std::visit(
        [&](auto& fact) -> Result<void, AmendFault> {
            auto* member = find(fact);
            if constexpr (std::is_same_v<decltype(member), std::nullptr_t*>) {
                return failure(AmendFault::NoSuchField);
            } else {
                const auto value = read(*member);
                if (!value)
                    return failure(AmendFault::BadValue);
                if (*value == *member)
                    return failure(AmendFault::NothingChanges);
                *member = *value;
                return {};
            }
        },
        event.fact);
    if (!outcome)
        return failure(outcome.error());
    return event;
}

constexpr std::nullptr_t* kAbsent = nullptr;

// One reader of values a type: how a correction's text becomes the member it replaces.
auto reader(const std::string& value)
{
    return [&value]<typename T>(const T&) -> std::optional<T> {
        if constexpr (std::is_same_v<T, std::int64_t> || std::is_same_v<T, int>) {
            const auto read = number<T>(value);
            return read && *read >= 0 ? read : std::nullopt;
        } else if constexpr (std::is_same_v<T, std::optional<std::chrono::sys_days>>) {
            const auto day = dayFrom(value);
            return day ? std::optional<T>(T{*day}) : std::nullopt;
        } else if constexpr (std::is_same_v<T, MicroLitres>) {
            const auto read = thousandths(value);
            return read && *read >= 0 ? std::optional<T>(T{*read}) : std::nullopt;
        } else if constexpr (std::is_same_v<T, std::optional<MilliCelsius>>) {
            const auto read = thousandths(value);
            return read ? std::optional<T>(T{MilliCelsius{*read}}) : std::nullopt;
        } else {
            return value.empty() ? std::nullopt : std::optional<T>(T{value});
        }
    };
}

#define BATHSIDE_MEMBER(expression)             \
    [](auto& fact) {                            \
        if constexpr (requires { expression; }) \
            return &(expression);               \
        else                                    \
            return kAbsent;                     \
    }

Amended withBroken(Event event, const std::string& value)
{
    const bool broken = value == "true";
    if (!broken && value != "false")
        return failure(AmendFault::BadValue);
    const bool lost = std::holds_alternative<AmpouleLost>(event.fact);
    if (lost && !broken)
        return std::optional<Event>();
    if (const auto* bagged = std::get_if<AmpouleBagged>(&event.fact); bagged && broken) {
        event.fact = AmpouleLost{bagged->ampoule, LossReason::Broken};
        return event;
    }
    if (lost) {
        auto& why = std::get<AmpouleLost>(event.fact).why;
        if (why == LossReason::Broken)
            return failure(AmendFault::NothingChanges);
        why = LossReason::Broken;
        return event;
    }
    return failure(std::holds_alternative<AmpouleBagged>(event.fact) ? AmendFault::NothingChanges
                                                                     : AmendFault::NoSuchField);
}

/// Whether it is about a lot in the stores.
bool isOfStock(const Fact& fact)
{
    return std::visit(
        [](const auto& one) {
            return requires { one.of.lot; };
        },
        fact);
}

}  // namespace

bool isMendable(const Event& event)
{
    if (event.person && event.person->proof == Proof::Proven)
        return false;
    return std::visit(
        []<typename F>(const F&) {
            return !isAnyOf<F, PersonListed, PinSet, PinRefused, RecordSigned, DeviationReviewed,
                            ReviewCarried, NoteCommented, CardApproved, DaySealed, SealWitnessed,
                            BackupMade, BaselineChosen, TrailContinued, BathCarried>;
        },
        event.fact);
}

Amended amended(const Event& event, const std::string& field, const std::string& value)
{
    if (!isMendable(event))
        return failure(AmendFault::NoSuchField);
    const auto read = reader(value);
    if (field == "at")
        return withTime(event, value);
    if (field == "broken")
        return withBroken(event, value);
    if (field == "ampoule")
        return withMember(event, BATHSIDE_MEMBER(fact.ampoule.no), read);
    if (field == "bag") {
        // a deviation's bag is a judgement, not a statement
        if (std::holds_alternative<DeviationFound>(event.fact) ||
            std::holds_alternative<Rejudged>(event.fact))
            return failure(AmendFault::NoSuchField);
        return withMember(event, BATHSIDE_MEMBER(fact.bag.text), read);
    }
    if (field == "lot" && std::holds_alternative<BagStarted>(event.fact))
        return withMember(event, BATHSIDE_MEMBER(fact.diluentLot.text), read);
    if (field == "lot" && isOfStock(event.fact))
        return withMember(event, BATHSIDE_MEMBER(fact.of.lot.text), read);
    if (field == "lot")
        return withMember(event, BATHSIDE_MEMBER(fact.lot.text), read);
    if (field == "place" && isOfStock(event.fact))
        return withMember(event, BATHSIDE_MEMBER(fact.place), read);
    if (field == "expires")
        return withMember(event, BATHSIDE_MEMBER(fact.expires), read);
    if (field == "count" && isOfStock(event.fact))
        return withMember(event, BATHSIDE_MEMBER(fact.count), read);
    if (field == "component")
        return withMember(event, BATHSIDE_MEMBER(fact.component.text), read);
    if (field == "line")
        return withMember(event, BATHSIDE_MEMBER(fact.line.text), read);
    if (field == "count")
        return withMember(event, BATHSIDE_MEMBER(fact.total), read);
    if (field == "volume_ml")
        return withMember(event, BATHSIDE_MEMBER(fact.volume), read);
    if (field == "left_ml")
        return withMember(event, BATHSIDE_MEMBER(fact.left), read);
    if (field == "temperature_c")
        return withMember(event, BATHSIDE_MEMBER(fact.temperature), read);
    return failure(AmendFault::NoSuchField);
}

}  // namespace bathside
