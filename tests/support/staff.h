#pragma once

// People for tests: LS leads the shift, AB and MK prepare, QA audits; LS and QA have a PIN.

#include "tests/support/shift.h"

namespace bathside::test {

[[nodiscard]] inline ListPerson listed(const char* id, const char* name, Role role,
                                       std::optional<PersonId> by = PersonId{"LS"})
{
    return {.as = {.person = {id}, .name = name, .role = role, .departed = false},
            .by = std::move(by)};
}

[[nodiscard]] inline ListPerson departed(const char* id, const char* name, Role role)
{
    ListPerson list = listed(id, name, role);
    list.as.departed = true;
    return list;
}

/// Lists the lead, who sets a PIN, and by the lead everybody else.
inline void staff(BenchShift& shift)
{
    shift.say(listed("LS", "Lena Sanz", Role::ShiftLead, std::nullopt));
    shift.say(SetPin{{"LS"}});
    shift.say(listed("AB", "Ana Brun", Role::Vaccinator));
    shift.say(listed("MK", "Mira Kolar", Role::Vaccinator));
    shift.say(listed("QA", "Quim Abad", Role::Auditor));
    shift.say(SetPin{{"QA"}, PersonId{"LS"}});
}

[[nodiscard]] inline ReviewDeviation reviewOf(Seq of, const char* by = "LS")
{
    return {.by = {by},
            .as = {.of = of, .cause = "hands not ready", .words = {}, .action = "shown again"}};
}

}  // namespace bathside::test
