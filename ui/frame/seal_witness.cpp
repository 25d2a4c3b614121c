#include "ui/frame/seal_witness.h"

#include <QLocale>

#include "ui/text/faults.h"
#include "ui/text/numbers.h"

namespace bathside::ui {
namespace {

using Found = WitnessAnswer::Found;

constexpr auto kPlace = "scan-seal";

}  // namespace

SealWitness::SealWitness(StationModel& model, RecordSource& source, Frame& frame)
    : QObject(&frame), m_model(model), m_source(source), m_frame(frame)
{
    connect(&frame, &Frame::sealScanned, this, &SealWitness::ask);
    connect(&source, &RecordSource::witnessed, this, &SealWitness::take);
}

void SealWitness::ask(const SealCode& code, const TapStamp& stamp)
{
    if (m_model.isInCriticalWindow())
        return sayLater();
    m_asked = stamp;
    m_source.witness(code);
}

/// What was found is written down wherever the record has an answer; in a critical window that has
/// begun since, it is said to be scanned again.
void SealWitness::take(const WitnessAnswer& answer)
{
    if (!m_asked)
        return;
    const TapStamp stamp = *m_asked;
    m_asked.reset();
    if (m_model.isInCriticalWindow())
        return sayLater();
    const bool isKnown = !answer.trouble && answer.found != Found::Before;
    if (isKnown)
        m_model.say(NoteWitness{{.count = answer.code.count,
                                 .head = answer.code.head,
                                 .agrees = answer.found == Found::Agrees}},
                    stamp.inputMs, QString::fromLatin1(kPlace));
    say(answer);
}

void SealWitness::say(const WitnessAnswer& answer)
{
    const QString count = countText(answer.code.count, QLocale());
    const QString scanned = tr("Scanned: day sheet of %1 entries").arg(count);
    if (answer.trouble)
        return m_frame.notice(
            {.title = tr("NOT CHECKED"),
             .scanned = scanned,
             .why = tr("The record could not be read. %1").arg(faultText(*answer.trouble)),
             .role = Role::Limit});
    switch (answer.found) {
        case Found::Agrees:
            return m_frame.notice(
                {.title = tr("RECORD AGREES"),
                 .scanned = scanned,
                 .why = tr("The first %1 entries are still those that were printed.").arg(count),
                 .role = Role::Good});
        case Found::Differs:
            return m_frame.notice(
                {.title = tr("RECORD DIFFERS"),
                 .scanned = scanned,
                 .why = tr("The record was changed after printing, or the sheet is of another "
                           "station or of a rehearsal. Keep both; call the shift lead.")});
        case Found::NotReached:
            return m_frame.notice(
                {.title = tr("RECORD IS SHORTER"),
                 .scanned = scanned,
                 .why =
                     tr("The record has fewer entries: some are gone, or the sheet is of another "
                        "station or of a rehearsal. Keep both; call the shift lead.")});
        case Found::Before:
            return m_frame.notice(
                {.title = tr("NOT CHECKED"),
                 .scanned = scanned,
                 .why = tr("The sheet is older than the file in use: check it against the file "
                           "before this one."),
                 .role = Role::HeadsUp});
    }
    Q_UNREACHABLE();
}

void SealWitness::sayLater()
{
    m_frame.notice({.title = tr("LATER"),
                    .scanned = tr("Scanned: day sheet"),
                    .why = tr("Ampoules are open. Scan it again when all are in a bag."),
                    .role = Role::HeadsUp});
}

}  // namespace bathside::ui
