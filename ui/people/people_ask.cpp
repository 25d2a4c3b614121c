// What is asked on the people page: a new person, a role, a PIN, a leaving.

#include "ui/people/people_page.h"
#include "ui/text/review.h"
#include "ui/text/subjects.h"
#include "ui/text/words.h"

namespace bathside::ui {
namespace {

constexpr int kLongestInitials = 4, kLongestName = 40;

Choice back()
{
    return {.id = QStringLiteral("back"),
            .word = PeoplePage::tr("back"),
            .role = Role::Quiet,
            .mark = Mark::Back};
}

Choice choiceOf(bathside::Role role)
{
    return {.id = fromCore(std::string(nameOf(role))), .word = wordOf(role)};
}

}  // namespace

void PeoplePage::askPerson(const PersonId& person)
{
    const Member* member = m_model.bench().people.find(person);
    if (!member)
        return;
    QList<Choice> choices;
    if (!member->departed)
        choices.append({.id = QStringLiteral("pin"),
                        .word = member->hasPin ? tr("new PIN …") : tr("set a PIN …")});
    choices.append(
        {.id = QStringLiteral("role"), .word = tr("another role …"), .line = wordOf(member->role)});
    choices.append({.id = QStringLiteral("left"),
                    .word = member->departed ? tr("is back …") : tr("works here no more …")});
    choices.append(back());
    m_ask->choose(personText(m_model.bench().people, person), choices,
                  [this, as = PersonListed{person, member->name, member->role, member->departed}](
                      const QString& id, const AnswerTap& tap) {
                      if (id == QLatin1String("pin"))
                          return askPin(as.person);
                      if (id == QLatin1String("role"))
                          return askRole(as.person, as.name);
                      if (id != QLatin1String("left"))
                          return m_ask->close();
                      PersonListed other = as;
                      other.departed = !as.departed;
                      list(other, tap);
                  },
                  {});
}

void PeoplePage::askAdd()
{
    const QString title = m_model.bench().people.areListed() ? tr("Initials of the person")
                                                             : tr("Initials of the shift lead");
    m_ask->text({.title = title, .shortest = 1, .longest = kLongestInitials, .suggested = {}},
                [this](const QString& initials, const AnswerTap&) {
                    const PersonId person{initials.toStdString()};
                    if (!m_model.bench().people.find(person))
                        return askName(person);
                    m_ask->close();
                    tell(tr("%1 is on the list already.").arg(initials));
                });
}

void PeoplePage::askName(const PersonId& person)
{
    m_ask->text({.title = tr("Name of %1").arg(idText(person)),
                 .shortest = 2,
                 .longest = kLongestName,
                 .suggested = {},
                 .signs = TextQuestion::Signs::Any},
                [this, person](const QString& name, const AnswerTap&) {
                    askRole(person, name.toStdString());
                });
}

void PeoplePage::askRole(const PersonId& person, const std::string& name)
{
    QList<Choice> choices{choiceOf(bathside::Role::ShiftLead)};
    if (m_model.bench().people.areListed()) {
        choices.append(choiceOf(bathside::Role::Vaccinator));
        choices.append(choiceOf(bathside::Role::Auditor));
    } else {
        choices.front().line = tr("the first on the list is one");
    }
    choices.append(back());
    m_ask->choose(tr("%1: which role?").arg(idText(person)), choices,
                  [this, person, name](const QString& id, const AnswerTap& tap) {
                      const auto role = named<bathside::Role>(id.toStdString());
                      if (!role)
                          return m_ask->close();
                      list({.person = person, .name = name, .role = *role, .departed = false}, tap);
                  },
                  {});
}

/// The first one by nobody, who then sets a PIN; every other by a shift lead's signature.
void PeoplePage::list(const PersonListed& as, const AnswerTap& tap)
{
    if (!m_model.bench().people.areListed()) {
        if (m_model.say(ListPerson{as, {}}, tap.inputMs, QStringLiteral("people.listed")))
            askNewPin(as.person, {});
        return;
    }
    const QString what =
        as.departed
            ? tr("%1 works here no more.").arg(fromCore(as.name))
            : tr("%1 is listed as %2.", "name, role").arg(fromCore(as.name), wordOf(as.role));
    askSignature(m_signing, Act::Approve, what,
                 [this, as, what](const Proven& by, const AnswerTap& signedTap) {
                     const ListPerson meant{as, by.person()};
                     const bool taken =
                         m_model.say(meant, signedTap.inputMs, QStringLiteral("people.listed"));
                     m_ask->close();
                     if (taken)
                         tell(what);
                 });
}

// --- a PIN ---------------------------------------------------------------------------------------

void PeoplePage::askPin(const PersonId& person)
{
    const Member* member = m_model.bench().people.find(person);
    if (!member)
        return;
    if (!member->hasPin || !m_parts.pins.knows(person))
        return askLeadForPin(person);
    const QList<Choice> choices{{.id = QStringLiteral("known"), .word = tr("I know the old one …")},
                                {.id = QStringLiteral("forgotten"),
                                 .word = tr("forgotten …"),
                                 .line = tr("a shift lead signs")},
                                back()};
    m_ask->choose(tr("A new PIN for %1").arg(idText(person)), choices,
                  [this, person](const QString& id, const AnswerTap&) {
                      if (id == QLatin1String("forgotten"))
                          return askLeadForPin(person);
                      if (id != QLatin1String("known"))
                          return m_ask->close();
                      askPinOf(m_signing, person, tr("The old PIN."),
                               [this, person](const Proven&, const AnswerTap&) {
                                   askNewPin(person, person);
                               });
                  },
                  {});
}

/// Where nobody can sign (yet, or the file of PINs is lost) a shift lead begins again.
void PeoplePage::askLeadForPin(const PersonId& person)
{
    const Bench& bench = m_model.bench();
    const bool canBegin = signersFor(bench, m_parts.pins, Act::Approve).empty() &&
                          may(bench.people, person, Act::Approve);
    if (canBegin)
        return askNewPin(person, {});
    askSignature(
        m_signing, Act::Approve, tr("%1 sets a new PIN.").arg(idText(person)),
        [this, person](const Proven& by, const AnswerTap&) { askNewPin(person, by.person()); });
}

void PeoplePage::askNewPin(const PersonId& person, std::optional<PersonId> by)
{
    m_ask->secret(tr("New PIN of %1").arg(idText(person)),
                  tr("4 to 8 digits, not all the same and not in a row. Nobody else may see it."),
                  [this, person, by](const QString& pin, const AnswerTap&) {
                      const auto fault = faultOf(pin.toStdString());
                      if (!fault)
                          return askAgain(person, by, pin);
                      askNewPin(person, by);
                      tell(pinFaultText(*fault));
                  });
}

void PeoplePage::askAgain(const PersonId& person, std::optional<PersonId> by, const QString& first)
{
    m_ask->secret(tr("New PIN of %1, once more").arg(idText(person)),
                  tr("The same digits again, so that no slip of the finger locks you out."),
                  [this, person, by, first](const QString& pin, const AnswerTap& tap) {
                      if (pin == first)
                          return keepPin(person, by, pin, tap);
                      askNewPin(person, by);
                      tell(tr("The two were not the same. Type a new PIN again."));
                  });
}

/// Written first, then noted: a note without a PIN would lock its owner out.
void PeoplePage::keepPin(const PersonId& person, const std::optional<PersonId>& by,
                         const QString& pin, const AnswerTap& tap)
{
    m_ask->close();
    const SetPin meant{person, by};
    if (const auto no = m_model.refusal(meant))
        return m_model.refuse(*no);
    if (!m_parts.pins.keep(person, pin.toStdString()))
        return tell(
            tr("The PIN could not be written beside the record. The one before still "
               "holds; see whether the disk is full."));
    m_model.say(meant, tap.inputMs, QStringLiteral("people.pin"));
    if (by && *by != person)
        m_model.say(Sign{*by, Meaning::Approved, {}, "new PIN of " + person.text}, tap.inputMs,
                    QStringLiteral("people.pin-signed"));
    tell(tr("%1 has a new PIN.").arg(idText(person)));
}

}  // namespace bathside::ui
