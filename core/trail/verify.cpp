#include "core/trail/verify.h"

#include <algorithm>
#include <utility>

#include "core/facts/codec.h"
#include "core/trail/json_lines.h"
#include "core/trail/json_text.h"
#include "core/trail/whole_json.h"

namespace bathside {
namespace {

// A clock that is kept by the network is put right by less; our own choice.
constexpr Millis kUnevenClock{1000};

FlawKind kindOf(LineFault::Kind kind)
{
    switch (kind) {
        case LineFault::Kind::NotCanonical:
            return FlawKind::NotCanonical;
        case LineFault::Kind::BadTime:
            return FlawKind::BadTime;
        case LineFault::Kind::NotJson:
        case LineFault::Kind::NotAnEntry:
            break;
    }
    return FlawKind::Unreadable;
}

// The first column whose content the text form would not carry over as it is.
std::string_view uncanonical(const Entry& entry)
{
    if (!isPayload(entry.payload))
        return "payload";
    if (!isUtf8(entry.station.text))
        return "station";
    if (!isUtf8(entry.tap.text) || !isUtf8(entry.place.text))
        return "tap";
    if (!isUtf8(entry.kind) || !isUtf8(entry.card.text))
        return "kind";
    return entry.person && !isUtf8(entry.person->id.text) ? "person" : "";
}

}  // namespace

Verifier::Verifier(Expectation expected) : m_expected(std::move(expected)), m_seals(m_expected.key)
{
    std::sort(m_expected.witnesses.begin(), m_expected.witnesses.end(),
              [](const Head& a, const Head& b) { return a.seq < b.seq; });
    m_last = m_expected.before;
    if (m_last)
        m_result.head = *m_last;
}

void Verifier::takeLine(std::string_view text)
{
    const auto line = lineFrom(text);
    if (line)
        take(line->entry, line->previous);
    else
        takeUnreadable(line.error().seq, kindOf(line.error().kind), line.error().key);
}

void Verifier::takeUnreadable(Seq seq, FlawKind kind, std::string detail)
{
    ++m_result.count;
    const Seq expected = m_last ? m_last->seq + 1 : seq;
    if (seq > expected)
        blame(expected, FlawKind::Missing);
    else
        blame(expected, kind, std::move(detail));
}

void Verifier::take(const Entry& entry, const std::optional<Hash>& previous)
{
    ++m_result.count;
    if (m_result.flaw)
        lookBack(entry.seq);
    else if (starts(entry, previous) && isNext(entry))
        check(entry);
}

// Knows afterwards what the entry must follow: at the beginning, and where the manifest has a gap.
bool Verifier::starts(const Entry& entry, const std::optional<Hash>& previous)
{
    const auto& runs = m_expected.runs;
    if (m_run + 1 < runs.size() && m_last && m_last->seq == runs[m_run].last) {
        ++m_run;
        m_last.reset();
    }
    if (m_last && previous &&
        entry.seq == m_last->seq + 1)  // only the first line of a run says what it follows
        blame(m_last->seq + 1, FlawKind::NotCanonical, "previous");
    if (m_last)
        return !m_result.flaw;
    const Seq first = runs.empty() ? entry.seq : runs[m_run].first;
    if (first != 1 && !previous) {
        blame(runs.empty() ? first - 1 : first, FlawKind::Missing);
        return false;
    }
    if (first == 1 && previous)
        blame(1, FlawKind::NotCanonical, "previous");
    m_last = Head{first - 1, previous.value_or(Hash{})};
    meet(*m_last);
    return !m_result.flaw;
}

bool Verifier::isNext(const Entry& entry)
{
    const Seq expected = m_last->seq + 1;
    const bool listed = m_expected.runs.empty() || entry.seq <= m_expected.runs.back().last;
    if (entry.seq == expected && listed)
        return true;
    if (entry.seq == expected)
        blame(entry.seq, FlawKind::Unlisted);
    else if (entry.seq < expected) {
        const bool seen = m_result.first && entry.seq >= *m_result.first;
        blame(entry.seq, seen ? FlawKind::Duplicate : FlawKind::Reordered);
    } else {
        blame(expected, FlawKind::Missing);
    }
    return false;
}

void Verifier::check(const Entry& entry)
{
    m_text.clear();
    appendCanonicalText(m_text, entry);
    const std::string_view form = uncanonical(entry);
    const bool follows = chained(m_last->hash, m_text) == entry.hash;
    if (!follows && m_station && entry.station != *m_station)
        blame(entry.seq, FlawKind::ForeignStation, entry.station.text);
    else if (!form.empty())
        blame(entry.seq, FlawKind::NotCanonical, std::string(form));
    else if (!follows)
        blame(entry.seq, FlawKind::BadHash);
    else
        takeWord(entry);
    if (!m_result.flaw)
        accept(entry);
}

// An entry that says what it continues must say what it does continue.
void Verifier::takeWord(const Entry& entry)
{
    if (entry.kind != TrailContinued::kKind)
        return;
    const auto fact = factFrom(entry.kind, entry.payload);
    const auto* said = fact ? std::get_if<TrailContinued>(&*fact) : nullptr;
    if (!said || said->count != m_last->seq || said->head != toHex(m_last->hash))
        return blame(entry.seq, FlawKind::HeadMismatch, std::string(TrailContinued::kKind));
    if (!m_result.first)
        m_result.continues = ContinuedFrom{*m_last, said->file};
}

void Verifier::watchClock(const Entry& entry)
{
    bool isBack = false;
    if (entry.kind == StationStarted::kKind) {
        isBack = m_lastAt && entry.at + kUnevenClock < *m_lastAt;
    } else if (entry.kind == ClockStepped::kKind) {
        const auto fact = factFrom(entry.kind, entry.payload);
        const auto* step = fact ? std::get_if<ClockStepped>(&*fact) : nullptr;
        isBack = step && step->by < Millis(0);
    }
    if (isBack && m_result.setBacks++ == 0)
        m_result.firstSetBack = entry.seq;
    m_lastAt = entry.at;
}

void Verifier::accept(const Entry& entry)
{
    m_last = Head{entry.seq, entry.hash};
    m_station = entry.station;
    meet(*m_last);
    if (m_result.flaw)
        return;
    watchClock(entry);
    if (!m_result.first)
        m_result.first = entry.seq;
    m_result.head = *m_last;
    const auto flaw = m_seals.take(entry);
    m_result.seals = m_seals.seals();
    if (flaw && !m_result.badSeal)
        m_result.badSeal = BadSeal{entry.seq, *flaw};
}

// Compares with the witness of that seq, if there is one.
void Verifier::meet(const Head& head)
{
    const auto& witnesses = m_expected.witnesses;
    for (; m_witness < witnesses.size() && witnesses[m_witness].seq <= head.seq; ++m_witness) {
        if (witnesses[m_witness].seq == head.seq && witnesses[m_witness].hash != head.hash)
            blame(head.seq, FlawKind::HeadMismatch);
    }
}

// After the first flaw only one thing is still of interest: whether what was missing turns up
// later.
void Verifier::lookBack(Seq seq)
{
    Flaw& flaw = *m_result.flaw;
    if (flaw.kind == FlawKind::Missing && flaw.seq == seq)
        flaw.kind = FlawKind::Reordered;
}

Verification Verifier::finish()
{
    const Seq last = m_last ? m_last->seq : 0;
    const auto& runs = m_expected.runs;
    const auto& witnesses = m_expected.witnesses;
    const bool listedMore = !runs.empty() && (!m_last || last < runs.back().last);
    const bool witnessedMore = !witnesses.empty() && witnesses.back().seq > last;
    if (!m_result.flaw && (listedMore || witnessedMore)) {
        const bool atGap = listedMore && m_last && last == runs[m_run].last;
        const bool atStart = listedMore && !m_last;
        blame(atGap     ? runs[m_run + 1].first
              : atStart ? runs.front().first
                        : last + 1,
              FlawKind::Truncated);
    }
    if (m_expected.station && m_station && *m_station != *m_expected.station)
        blame(last, FlawKind::ForeignStation, m_station->text);
    return m_result;
}

void Verifier::blame(Seq seq, FlawKind kind, std::string detail)
{
    if (!m_result.flaw)
        m_result.flaw = Flaw{seq, kind, m_result.count, std::move(detail)};
}

}  // namespace bathside
