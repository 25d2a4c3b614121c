#include "ui/stores/intake_sheet.h"

#include <QCoreApplication>
#include <QLocale>

#include "ui/text/numbers.h"
#include "ui/text/stores.h"

namespace bathside::ui {
namespace {

struct IntakeText {
    Q_DECLARE_TR_FUNCTIONS(IntakeText)
};

QString lineText(int line) { return IntakeText::tr("line %1").arg(line); }

QString receivedText(const StoreReceived& received)
{
    return IntakeText::tr("%1 of %2, at %3", "how many, what, place")
        .arg(countText(received.count, QLocale()), stockText(received.of),
             placeWords(received.place));
}

int many(std::size_t count) { return static_cast<int>(count); }

QString titleOf(const Intake& intake, IntakeStage stage)
{
    QStringList parts{
        stage == IntakeStage::Taken
            ? IntakeText::tr("%n line(s) received", nullptr, many(intake.taken.size()))
            : IntakeText::tr("%n line(s) can be taken", nullptr, many(intake.taken.size()))};
    if (!intake.faults.empty())
        parts.append(IntakeText::tr("%n wrong", "lines of a file", many(intake.faults.size())));
    if (!intake.doubled.empty())
        parts.append(
            IntakeText::tr("%n received before", "lines of a file", many(intake.doubled.size())));
    return parts.join(QStringLiteral(" · "));
}

QString titleOf(StoreWarningKind kind)
{
    switch (kind) {
        case StoreWarningKind::TooLittle:
            return IntakeText::tr("too little");
        case StoreWarningKind::Expired:
            return IntakeText::tr("expired");
        case StoreWarningKind::Quarantined:
            return IntakeText::tr("in quarantine");
        case StoreWarningKind::NearExpiry:
            return IntakeText::tr("near expiry");
    }
    Q_UNREACHABLE();
}

}  // namespace

Sheet sheetOf(const Intake& intake, IntakeStage stage)
{
    const bool clean = intake.faults.empty() && intake.doubled.empty();
    Sheet sheet{clean ? Role::Good : Role::HeadsUp, titleOf(intake, stage), {}};
    for (const IntakeFault& fault : intake.faults)
        sheet.fields.append({IntakeText::tr("wrong"), faultText(fault)});
    for (const IntakeLine& line : intake.doubled)
        sheet.fields.append(
            {lineText(line.line),
             IntakeText::tr("received before, not taken: %1").arg(receivedText(line.received))});
    for (const IntakeLine& line : intake.taken)
        sheet.fields.append({lineText(line.line), receivedText(line.received)});
    return sheet;
}

Sheet sheetOf(const std::vector<StoreWarning>& warnings)
{
    if (warnings.empty())
        return {
            Role::Good, IntakeText::tr("Nothing is short, apart, expired or near its expiry."), {}};
    Sheet sheet{
        Role::HeadsUp, IntakeText::tr("%n warning(s)", "of the stores", many(warnings.size())), {}};
    for (const StoreWarning& warning : warnings)
        sheet.fields.append({titleOf(warning.kind), warningText(warning)});
    return sheet;
}

}  // namespace bathside::ui
