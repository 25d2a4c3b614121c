#include "ui/review/signing.h"

#include <QCoreApplication>

#include "ui/text/review.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"

namespace bathside::ui {
namespace {

struct SignText {
    Q_DECLARE_TR_FUNCTIONS(SignText)
};

}  // namespace

void askPinOf(Signing& signing, const PersonId& person, const QString& meaning, Signed done)
{
    const People& people = signing.model.bench().people;
    const QString note = SignText::tr("Signed %1: %2", "time, meaning")
                             .arg(localMinuteText(signing.model.now().wall, signing.zone), meaning);
    signing.asker.secret(SignText::tr("PIN of %1").arg(personText(people, person)), note,
                         [&signing, person, meaning, done = std::move(done)](const QString& pin,
                                                                             const AnswerTap& tap) {
                             const auto shown =
                                 proven(signing.model, signing.pins, person, pin, tap.inputMs);
                             if (shown)
                                 return done(*shown, tap);
                             askPinOf(signing, person, meaning, done);
                             signing.tell(shown.error());
                         });
}

void askSignature(Signing& signing, Act act, const QString& meaning, Signed done)
{
    const auto all = signersFor(signing.model.bench(), signing.pins, act);
    if (all.empty()) {
        signing.asker.close();
        return signing.tell(
            SignText::tr("No shift lead with a PIN is listed. List one: set-up, people."));
    }
    if (all.size() == 1)
        return askPinOf(signing, all.front(), meaning, std::move(done));
    QList<Choice> choices;
    for (const PersonId& person : all) {
        const Member* member = signing.model.bench().people.find(person);
        choices.append({.id = QStringLiteral("signer:") + idText(person),
                        .word = idText(person),
                        .line = fromCore(member->name)});
    }
    signing.asker.choose(
        SignText::tr("Who signs?"), choices,
        [&signing, meaning, done = std::move(done)](const QString& id, const AnswerTap&) {
            askPinOf(signing, {id.mid(7).toStdString()}, meaning, done);
        });
}

}  // namespace bathside::ui
