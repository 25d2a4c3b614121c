#include "ui/review/signing.h"

#include <QCoreApplication>
#include <algorithm>

#include "core/scan/said.h"
#include "core/scan/scanned_code.h"
#include "ui/text/review.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"

namespace bathside::ui {
namespace {

struct SignText {
    Q_DECLARE_TR_FUNCTIONS(SignText)
};

const QString kSigner = QStringLiteral("signer:");

std::optional<PersonId> personOn(const QString& text, const Stamp& now)
{
    const auto today = std::chrono::floor<std::chrono::days>(now.wall);
    const auto code =
        scannedCodeFrom(text.toStdString(), std::chrono::year_month_day(today).year());
    return code ? personSaid(*code) : std::nullopt;
}

}  // namespace

bool asksWhoSigns(const Signing& signing)
{
    return std::ranges::any_of(signing.asker.offered(),
                               [](const QString& id) { return id.startsWith(kSigner); });
}

bool takesPerson(Signing& signing, const QString& text, const TapStamp& stamp)
{
    const auto person = personOn(text, signing.model.now());
    if (!person)
        return false;
    const QString signer = kSigner + idText(*person);
    if (signing.asker.offered().contains(signer)) {
        signing.asker.pick(signer, stamp.inputMs);
        return true;
    }
    signing.model.refuse(
        {asksWhoSigns(signing) ? RefusalCode::NotAllowed : RefusalCode::NobodyAsked,
         {},
         person->text});
    return true;
}

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
        choices.append({.id = kSigner + idText(person),
                        .word = idText(person),
                        .line = fromCore(member->name)});
    }
    signing.asker.choose(
        SignText::tr("Who signs?"), choices,
        [&signing, meaning, done = std::move(done)](const QString& id, const AnswerTap&) {
            askPinOf(signing, {id.mid(kSigner.size()).toStdString()}, meaning, done);
        });
}

}  // namespace bathside::ui
