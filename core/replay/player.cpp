#include "core/replay/player.h"

#include <algorithm>

#include "core/bench/amend.h"
#include "core/bench/delivery.h"

namespace bathside {
namespace {

constexpr auto kRunOn = std::chrono::minutes(10);

/// Ids of a replay: numbered, so that the same script gives the same trail.
std::function<TapId()> numberedTaps()
{
    return
        [count = std::int64_t{0}]() mutable { return TapId{"replay-" + std::to_string(++count)}; };
}

int ampouleNumber(const Fact& fact)
{
    return std::visit(
        [](const auto& one) {
            if constexpr (requires { one.ampoule.no; })
                return one.ampoule.no;
            else
                return 0;
        },
        fact);
}

}  // namespace

Player::Player(const std::vector<ScriptEntry>& entries, std::string cardDocument,
               Recorder& recorder, std::string version)
    : m_entries(entries),
      m_version(std::move(version)),
      m_clock(entries.front().at),
      m_station(State{}, m_clock, recorder, numberedTaps())
{
    start(true);
    (void)m_station.note(AdoptCard{std::move(cardDocument)});
}

void Player::start(bool synchronised)
{
    (void)m_station.note(StartStation{.version = m_version,
                                      .head = {},
                                      .rehearsal = true,
                                      .synchronised = synchronised,
                                      .offset = {}});
}

std::optional<PlayFault> Player::play()
{
    for (const ScriptEntry& entry : m_entries) {
        if (auto fault = play(entry))
            return fault;
    }
    runTo(m_clock.now().wall + kRunOn);
    (void)m_station.note(StopStation{});
    return std::nullopt;
}

void Player::runTo(WallTime wall)
{
    const auto target = m_clock.now().boot + (wall - m_clock.now().wall);
    while (const auto next = m_station.nextChange()) {
        if (*next > target)
            break;
        m_clock.runTo(*next);
        m_station.tick();
    }
    m_clock.runTo(wall);
}

std::optional<PlayFault> Player::play(const ScriptEntry& entry)
{
    if (entry.at < m_clock.now().wall)
        return PlayFault{entry.line, entry.verb, PlayFault::Kind::GoesBack, {}};
    if (const auto* restart = std::get_if<RestartEntry>(&entry.statement)) {
        m_clock.restart(entry.at);
        start(restart->synchronised);
        return std::nullopt;
    }
    runTo(entry.at);
    if (const auto* open = std::get_if<OpenShiftEntry>(&entry.statement))
        return openShift(entry, *open);
    if (const auto* correction = std::get_if<CorrectEntry>(&entry.statement))
        return correct(entry, *correction);
    if (const auto* delivery = std::get_if<DeliveryEntry>(&entry.statement))
        return deliver(entry, *delivery);
    if (const auto* signing = std::get_if<SignEntry>(&entry.statement))
        return sign(entry, *signing);
    if (const auto* reviewing = std::get_if<ReviewEntry>(&entry.statement))
        return review(entry, *reviewing);
    if (const auto* commenting = std::get_if<CommentEntry>(&entry.statement))
        return comment(entry, *commenting);
    if (const auto* approval = std::get_if<ApproveEntry>(&entry.statement))
        return approve(entry, *approval);
    return say(entry, std::get<Intent>(entry.statement), entry.place);
}

std::optional<PlayFault> Player::say(const ScriptEntry& entry, const Intent& intent,
                                     const PlaceId& place)
{
    const auto taken = m_station.handle(
        intent, TapInput{.place = place, .at = m_clock.now(), .byReceipt = false, .id = {}});
    if (taken && entry.refused)
        return PlayFault{entry.line, entry.verb, PlayFault::Kind::NotRefused, {}};
    if (!taken && !entry.refused)
        return PlayFault{entry.line, entry.verb, PlayFault::Kind::Refused, taken.error()};
    if (taken && !entry.id.empty())
        m_taken[entry.id] = *taken;
    return std::nullopt;
}

std::optional<PlayFault> Player::openShift(const ScriptEntry& entry, const OpenShiftEntry& open)
{
    if (auto fault = say(entry, open.shift, entry.place))
        return fault;
    const auto& card = m_station.bench().card;
    if (!open.allChecks || !card || entry.refused)
        return std::nullopt;
    for (const Check& check : card->content().checks) {
        const PlaceId place{"script check " + check.id.text};
        if (auto fault = say(entry, RecordCheck{check.id, true, {}}, place))
            return fault;
    }
    return std::nullopt;
}

std::optional<PlayFault> Player::deliver(const ScriptEntry& entry, const DeliveryEntry& delivery)
{
    return say(entry, deliveryOf(intakeFor(m_station.bench(), delivery.csv)), entry.place);
}

std::optional<PlayFault> Player::correct(const ScriptEntry& entry, const CorrectEntry& correction)
{
    const auto taken = m_taken.find(correction.of);
    if (taken == m_taken.end())
        return PlayFault{entry.line, entry.verb, PlayFault::Kind::UnknownEntry, {}};
    const auto seqs = seqsToCorrect(m_station.state(), taken->second, correction.ampoule,
                                    correction.field, correction.value);
    return say(entry, Correct{seqs, correction.field, correction.value, correction.why},
               entry.place);
}

std::vector<Seq> seqsToCorrect(const State& state, const Taken& taken, int ampoule,
                               const std::string& field, const std::string& value)
{
    std::vector<Seq> seqs;
    for (Seq seq = taken.first; seq <= taken.last && seq > 0; ++seq) {
        const Event* event = eventAt(state, seq);
        if (!event || (ampoule != 0 && ampouleNumber(event->fact) != ampoule))
            continue;
        const auto corrected = amended(*event, field, value);
        const bool hasField = corrected || corrected.error() != AmendFault::NoSuchField;
        if (hasField)
            seqs.push_back(seq);
    }
    if (seqs.empty())
        seqs.push_back(taken.first);  // so that the refusal says what is wrong with it
    return seqs;
}

}  // namespace bathside
