#include "ui/models/pin_desk.h"

#include <QCoreApplication>

#include "ui/text/subjects.h"
#include "ui/text/time.h"

namespace bathside::ui {
namespace {

struct PinText {
    Q_DECLARE_TR_FUNCTIONS(PinText)
};

QString waitText(Millis wait)
{
    const auto seconds = std::chrono::ceil<std::chrono::seconds>(wait);
    return PinText::tr("Too many wrong PINs. Try again in %1.").arg(durationText(seconds));
}

}  // namespace

Result<Proven, QString> proven(StationModel& model, const PinDesk& pins, const PersonId& person,
                               const QString& pin, std::uint64_t inputMs)
{
    const auto member = [&] { return model.bench().people.find(person); };
    if (!member())
        return failure(PinText::tr("%1 is not on the list of people.").arg(idText(person)));
    if (const Millis wait = waitBeforePin(*member(), model.now()); wait > Millis::zero())
        return failure(waitText(wait));
    if (pins.isRight(person, pin.toStdString()))
        return Proven(person);
    model.say(RefusePin{person}, inputMs, QStringLiteral("pin.refused"));
    const Millis wait = waitBeforePin(*member(), model.now());
    const QString wrong =
        PinText::tr("That is not the PIN of %1. It is on record that it was tried.")
            .arg(idText(person));
    return failure(wait > Millis::zero() ? wrong + u' ' + waitText(wait) : wrong);
}

std::vector<PersonId> signersFor(const Bench& bench, const PinDesk& pins, Act act)
{
    std::vector<PersonId> all;
    for (const auto& [id, member] : bench.people.members) {
        if (member.hasPin && may(bench.people, id, act) && pins.knows(id))
            all.push_back(id);
    }
    return all;
}

}  // namespace bathside::ui
