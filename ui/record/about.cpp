#include "ui/record/about.h"

#include <array>
#include <type_traits>
#include <utility>

#include "core/facts/points_at.h"

namespace bathside::ui {
namespace {

// Adds what a member names to what the fact is about; most members name nobody.
class Collector {
public:
    explicit Collector(About& about) : m_about(about) {}

    template <typename Member>
    void operator()(std::string_view name, const Member& member)
    {
        if constexpr (requires { member.has_value(); }) {
            if (member)
                (*this)(name, *member);
        } else if constexpr (std::is_same_v<Member, PersonId>) {
            m_about.persons.insert(member.text);
        } else if constexpr (std::is_same_v<Member, BagId>) {
            m_about.bags.insert(member.text);
        } else if constexpr (std::is_same_v<Member, LotId>) {
            m_about.lots.insert(member.text);
        } else if constexpr (std::is_same_v<Member, Subject>) {
            takeSubject(member);
        } else if constexpr (std::is_same_v<Member, int>) {
            takeNumber(name, member);
        }
    }

private:
    void takeSubject(const Subject& subject)
    {
        if (subject.kind == SubjectKind::Bag)
            m_about.bags.insert(subject.id);
        else if (subject.kind == SubjectKind::Ampoule)
            m_about.ampoule = ampouleOf(subject);
    }

    void takeNumber(std::string_view name, int number)
    {
        if (name == "pull")
            m_ref.pull = number;
        else if (name == "ampoule")
            m_ref.no = number;
        if (m_ref.pull > 0 && m_ref.no > 0)
            m_about.ampoule = m_ref;
    }

    About& m_about;
    AmpouleRef m_ref;
};

}  // namespace

Group groupOf(std::string_view kind)
{
    // The first beginning that fits.
    static constexpr std::array<std::pair<std::string_view, Group>, 34> kGroups{{
        {"ampoule.", Group::Ampoules},
        {"cane.", Group::Ampoules},
        {"pull.", Group::Ampoules},
        {"bag.", Group::Bags},
        {"diluent.", Group::Bags},
        {"line.", Group::Lines},
        {"dose.", Group::Lines},
        {"birds.", Group::Lines},
        {"reading.", Group::Bath},
        {"bath.", Group::Bath},
        {"probe.", Group::Bath},
        {"shift.", Group::Shift},
        {"duty.", Group::Shift},
        {"check.", Group::Shift},
        {"question.", Group::Shift},
        {"note.", Group::Shift},
        {"code.", Group::Shift},
        {"day.", Group::Shift},
        {"alarm.", Group::Alarms},
        {"sound.", Group::Alarms},
        {"deviation", Group::Deviations},
        {"rejudged", Group::Deviations},
        {"fact.", Group::Deviations},
        {"store.failed", Group::Station},
        {"store.recovered", Group::Station},
        {"store.", Group::Stores},
        {"lot.", Group::Stores},
        {"vessel.", Group::Stores},
        {"person.", Group::People},
        {"pin.", Group::People},
        {"record.", Group::People},
        {"card.", Group::People},
        {"review.", Group::Deviations},
        {"", Group::Station},
    }};
    for (const auto& [begin, group] : kGroups) {
        if (kind.starts_with(begin))
            return group;
    }
    return Group::Station;
}

namespace {

/// What it is about from now on.
void addCorrected(About& about, const FactCorrected& corrected)
{
    if (corrected.field == "bag")
        about.bags.insert(corrected.value);
    else if (corrected.field == "lot")
        about.lots.insert(corrected.value);
}

}  // namespace

About aboutOf(const Fact& fact)
{
    About about;
    std::visit(
        [&](const auto& one) {
            std::remove_cvref_t<decltype(one)>::members(one, Collector(about));
        },
        fact);
    const auto entries = pointsAt(fact);
    about.entries.insert(entries.begin(), entries.end());
    if (const auto* corrected = std::get_if<FactCorrected>(&fact))
        addCorrected(about, *corrected);
    about.undoes = std::holds_alternative<FactTakenBack>(fact);
    about.mends = about.undoes || std::holds_alternative<FactCorrected>(fact);
    return about;
}

}  // namespace bathside::ui
