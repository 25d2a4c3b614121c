#include "core/people/people.h"

namespace bathside {
namespace {

void on(People& people, const Event&, const PersonListed& fact)
{
    Member& member = people.members[fact.person];
    member.id = fact.person;
    member.name = fact.name;
    member.role = fact.role;
    member.departed = fact.departed;
}

void on(People& people, const Event&, const PinSet& fact)
{
    const auto found = people.members.find(fact.person);
    if (found == people.members.end())
        return;
    found->second.hasPin = true;
    found->second.refused = 0;
    found->second.lastRefused.reset();
}

void on(People& people, const Event& event, const PinRefused& fact)
{
    const auto found = people.members.find(fact.person);
    if (found == people.members.end())
        return;
    ++found->second.refused;
    found->second.lastRefused = event.at;
}

/// Who signs has given the right PIN.
void on(People& people, const Event& event, const RecordSigned&)
{
    const auto found = event.person ? people.members.find(event.person->id) : people.members.end();
    if (found == people.members.end())
        return;
    found->second.refused = 0;
    found->second.lastRefused.reset();
}

void on(People&, const Event&, const auto&) {}

}  // namespace

const Member* People::find(const PersonId& id) const
{
    const auto found = members.find(id);
    return found == members.end() ? nullptr : &found->second;
}

bool may(Role role, Act act)
{
    switch (act) {
        case Act::WorkAtBench:
            return role != Role::Auditor;
        case Act::Judge:
        case Act::Approve:
            return role == Role::ShiftLead;
        case Act::Sign:
            return true;
    }
    return false;
}

bool may(const People& people, const PersonId& person, Act act)
{
    if (!people.areListed())
        return true;
    const Member* member = people.find(person);
    return member && !member->departed && may(member->role, act);
}

void evolve(People& people, const Event& event)
{
    std::visit([&](const auto& fact) { on(people, event, fact); }, event.fact);
}

}  // namespace bathside
