// Rows of `decide`: who is who, signatures, the review.

#include <algorithm>

#include "core/bench/decide_rows.h"
#include "core/stores/intake.h"

namespace bathside::rows {
namespace {

constexpr std::size_t kLongest = 80;  // of initials and names, in bytes

/// Why that person may not sign: unknown, left, or without a PIN to prove it by.
std::optional<Refusal> unproven(const Bench& bench, const PersonId& person)
{
    if (person.empty())
        return Refusal{RefusalCode::NoPerson, {}, {}};
    const Member* member = bench.people.find(person);
    if (!member || member->departed)
        return Refusal{RefusalCode::NoSuchPerson, {}, person.text};
    if (!member->hasPin)
        return Refusal{RefusalCode::NoPin, {}, person.text};
    return std::nullopt;
}

std::optional<Refusal> unprovenFor(const Bench& bench, const PersonId& person, Act act)
{
    if (auto no = unproven(bench, person))
        return no;
    return unentitled(bench, person, act);
}

/// A new PIN is set by whoever knows the old one, or by a shift lead. Where there is none to prove
/// it by, a lead begins; that is claimed, as the trail says.
std::optional<Refusal> unprovenPin(const Bench& bench, const SetPin& meant)
{
    if (!meant.by)
        return unentitled(bench, meant.person, Act::Approve);
    return *meant.by == meant.person ? unproven(bench, *meant.by)
                                     : unprovenFor(bench, *meant.by, Act::Approve);
}

/// Who can sign as a shift lead.
bool isLead(const Member& member)
{
    return member.role == Role::ShiftLead && !member.departed && member.hasPin;
}

std::ptrdiff_t leads(const People& people)
{
    return std::ranges::count_if(people.members,
                                 [](const auto& item) { return isLead(item.second); });
}

/// A site without a shift lead who can sign could list nobody any more.
bool takesLastLead(const People& people, const PersonListed& as)
{
    const Member* before = people.find(as.person);
    const bool staysLead = as.role == Role::ShiftLead && !as.departed;
    return before && isLead(*before) && !staysLead && leads(people) == 1;
}

/// Nobody signs what has not been written.
bool areOnRecord(const Bench& bench, const std::vector<Seq>& seqs)
{
    return std::ranges::all_of(seqs, [&](Seq seq) { return seq > 0 && seq <= bench.lastSeq; });
}

/// Of an earlier shift only the seq is known here: that it is a note is for whoever shows it.
bool mayBeNote(const Context& now, Seq seq)
{
    const Event* event = eventAt(now.state, seq);
    if (event)
        return std::holds_alternative<NoteMade>(event->fact);
    const auto& shift = now.bench.shift;
    return areOnRecord(now.bench, {seq}) && shift && seq < shift->opened.seq;
}

bool saysTheSame(const DeviationOnRecord& known, const ReviewDeviation& meant)
{
    return known.reviewed && known.reviewed->by == meant.by &&
           known.reviewed->cause == meant.as.cause && known.reviewed->words == meant.as.words &&
           known.reviewed->action == meant.as.action;
}

}  // namespace

std::optional<Refusal> unentitled(const Bench& bench, const PersonId& person, Act act)
{
    if (may(bench.people, person, act))
        return std::nullopt;
    const Member* member = bench.people.find(person);
    const bool isKnown = member && !member->departed;
    return Refusal{isKnown ? RefusalCode::NotAllowed : RefusalCode::NoSuchPerson, {}, person.text};
}

std::optional<Refusal> unprovenJudge(const Bench& bench, const PersonId& person)
{
    return bench.people.areListed() ? unprovenFor(bench, person, Act::Judge) : std::nullopt;
}

Decision on(const Context& now, const ListPerson& meant)
{
    const PersonListed& as = meant.as;
    if (as.person.empty() || as.name.empty())
        return refuse(RefusalCode::NoPerson);
    if (as.person.text.size() > kLongest || as.name.size() > kLongest)
        return refuse(RefusalCode::OutOfRange, {}, std::to_string(kLongest));
    const People& people = now.bench.people;
    if (!people.areListed()) {
        const bool isFirstLead = as.role == Role::ShiftLead && !as.departed;
        return isFirstLead ? facts(as) : Decision(refuse(RefusalCode::NotAllowed));
    }
    if (const auto no = unprovenFor(now.bench, meant.by.value_or(PersonId{}), Act::Approve))
        return failure(*no);
    if (takesLastLead(people, as))
        return refuse(RefusalCode::NotAllowed, {}, as.person.text);
    const Member* before = people.find(as.person);
    if (before && before->name == as.name && before->role == as.role &&
        before->departed == as.departed)
        return refuse(RefusalCode::NothingChanges);
    return facts(as);
}

Decision on(const Context& now, const SetPin& meant)
{
    const Member* member = now.bench.people.find(meant.person);
    if (!member || member->departed)
        return refuse(RefusalCode::NoSuchPerson, {}, meant.person.text);
    if (const auto no = unprovenPin(now.bench, meant))
        return failure(*no);
    return facts(PinSet{meant.person});
}

Decision on(const Context& now, const RefusePin& meant)
{
    if (!now.bench.people.find(meant.person))
        return refuse(RefusalCode::NoSuchPerson, {}, meant.person.text);
    return facts(PinRefused{meant.person});
}

Decision on(const Context& now, const Sign& meant)
{
    if (const auto no = unprovenFor(now.bench, meant.person, Act::Sign))
        return failure(*no);
    const bool judges = meant.meaning == Meaning::Reviewed || meant.meaning == Meaning::Approved;
    if (judges) {
        if (const auto no = unentitled(now.bench, meant.person, Act::Judge))
            return failure(*no);
    }
    if (!areOnRecord(now.bench, meant.of))
        return refuse(RefusalCode::OutOfRange, {}, std::to_string(now.bench.lastSeq));
    return facts(RecordSigned{meant.meaning, meant.of, meant.words});
}

Decision on(const Context& now, const ReviewDeviation& meant)
{
    const auto& all = now.bench.reviews.deviations;
    const auto known = all.find(meant.as.of);
    if (known == all.end() || known->second.isKept)
        return refuse(RefusalCode::NoSuchDeviation);
    if (const auto no = unprovenFor(now.bench, meant.by, Act::Judge))
        return failure(*no);
    if (meant.as.cause.empty())
        return refuse(RefusalCode::ReasonMissing);
    if (saysTheSame(known->second, meant))
        return refuse(RefusalCode::NothingChanges);
    const auto& bag = known->second.fact.bag;
    return facts(
        meant.as,
        RecordSigned{Meaning::Reviewed, {meant.as.of}, bag ? "bag " + bag->text : std::string()});
}

Decision on(const Context& now, const CommentNote& meant)
{
    if (!mayBeNote(now, meant.as.of))
        return refuse(RefusalCode::NoSuchNote);
    if (const auto no = unprovenFor(now.bench, meant.by, Act::Judge))
        return failure(*no);
    if (meant.as.text.empty())
        return refuse(RefusalCode::ReasonMissing);
    return facts(meant.as);
}

Decision on(const Context& now, const ApproveCard& meant)
{
    if (!now.bench.cards.contains(meant.card))
        return refuse(RefusalCode::NoCard);
    if (const auto no = unprovenFor(now.bench, meant.by, Act::Approve))
        return failure(*no);
    if (now.bench.approved.contains(meant.card))
        return refuse(RefusalCode::NothingChanges);
    return facts(CardApproved{meant.card}, RecordSigned{Meaning::Approved, {}, {}});
}

Decision on(const Context& now, const ChooseBaseline& meant)
{
    const BaselineChosen& chosen = meant.as;
    if (!isPlainName(chosen.chart))
        return refuse(RefusalCode::BadValue, {}, "chart");
    if (chosen.isWithdrawal() && !now.bench.baselines.contains(chosen.chart))
        return refuse(RefusalCode::NothingChanges);
    if (!chosen.isWithdrawal() &&
        (chosen.from < 1 || chosen.to < chosen.from || chosen.to > now.bench.lastSeq))
        return refuse(RefusalCode::OutOfRange, {}, "baseline");
    if (const auto no = unprovenFor(now.bench, meant.by, Act::Approve))
        return failure(*no);
    return facts(chosen, RecordSigned{Meaning::Approved, {}, {}});
}

Decision on(const Context&, const NoteSealed& meant) { return facts(meant.seal); }

Decision on(const Context&, const NoteWitness& meant) { return facts(meant.seen); }

Decision on(const Context&, const NoteBackup& meant) { return facts(meant.made); }

Decision on(const Context&, const NoteContinued& meant) { return facts(meant.from); }

}  // namespace bathside::rows
