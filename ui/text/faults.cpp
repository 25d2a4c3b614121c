#include "ui/text/faults.h"

#include <QCoreApplication>

#include "ui/text/subjects.h"

namespace bathside::ui {
namespace {

struct FaultText {
    Q_DECLARE_TR_FUNCTIONS(Fault)
};

}  // namespace

QString faultText(StoreFault fault)
{
    switch (fault) {
        case StoreFault::NoSpace:
            return FaultText::tr("The disk is full. Free some space; what waits is then written.");
        case StoreFault::ReadOnly:
            return FaultText::tr(
                "The folder of the record is read-only. Choose one that can be written.");
        case StoreFault::NotPermitted:
            return FaultText::tr(
                "Writing the record is not permitted. Ask who looks after this computer.");
        case StoreFault::InUse:
            return FaultText::tr("Another program holds the record. Close it first.");
        case StoreFault::Damaged:
            return FaultText::tr(
                "The record is damaged. It is kept as it is; tell the shift lead.");
        case StoreFault::Foreign:
            return FaultText::tr(
                "That file is no record of this program. It was left alone; choose another.");
        case StoreFault::Newer:
            return FaultText::tr("The record was written by a later version. Use that version.");
        case StoreFault::WriteFailed:
            return FaultText::tr(
                "A write to the record failed. What happened is kept and written later.");
        case StoreFault::Unconfirmed:
            return FaultText::tr(
                "Whether the last write is safe is not known. Work goes on in a second file.");
        case StoreFault::NotLocal:
            return FaultText::tr(
                "The record lies on a network drive, which is not safe. Move it to this computer.");
        case StoreFault::Unsafe:
            return FaultText::tr(
                "The record cannot be kept safely on this disk. Move it to another disk of this "
                "computer.");
        case StoreFault::OutOfStep:
            return FaultText::tr("The record and the screen disagree. Restart the station.");
    }
    Q_UNREACHABLE();
}

QString faultText(const StoreTrouble& trouble)
{
    const QString sentence = faultText(trouble.fault);
    if (trouble.errorNumber == 0)
        return sentence;
    return FaultText::tr("%1 (System error %2.)", "a whole sentence; a number")
        .arg(sentence)
        .arg(trouble.errorNumber);
}

QString cardFaultText(const CardFault& fault)
{
    if (fault.key.empty())
        return FaultText::tr("The procedure card cannot be used: expected %1, found %2.")
            .arg(fromCore(fault.expected), fromCore(fault.found));
    return FaultText::tr("The procedure card cannot be used: at \"%1\", expected %2, found %3.")
        .arg(fromCore(fault.key), fromCore(fault.expected), fromCore(fault.found));
}

QString probeFaultText(const ProbeFault& fault)
{
    if (fault.key.empty())
        return FaultText::tr("The thermometer's description cannot be used: expected %1, found %2.")
            .arg(fromCore(fault.expected), fromCore(fault.found));
    return FaultText::tr(
               "The thermometer's description cannot be used: at \"%1\", expected %2, found %3.")
        .arg(fromCore(fault.key), fromCore(fault.expected), fromCore(fault.found));
}

QString recordText(const RecordState& record)
{
    const auto waiting = static_cast<int>(record.waiting);
    switch (record.health) {
        case RecordState::Health::Recorded:
            return {};
        case RecordState::Health::Behind:
            return FaultText::tr("%n event(s) wait to be recorded. Go on working.", "", waiting);
        case RecordState::Health::NotConfirmed:
            return FaultText::tr(
                "Not confirmed in the record, kept in a second file. Go on working; tell the shift "
                "lead.");
        case RecordState::Health::NotRecorded:
            return FaultText::tr(
                "%n event(s) are not recorded. Go on working; leave the station on; call the shift "
                "lead.",
                "", waiting);
    }
    Q_UNREACHABLE();
}

namespace {

QString scanFaultText(ScanFaultKind kind)
{
    switch (kind) {
        case ScanFaultKind::Empty:
            return FaultText::tr("The scan is empty. Scan again.");
        case ScanFaultKind::TooMuch:
            return FaultText::tr("The scan is longer than any code. Scan one code alone.");
        case ScanFaultKind::UnknownIdentifier:
            return FaultText::tr("This code has a part that is not known here. Read the label.");
        case ScanFaultKind::TooShort:
            return FaultText::tr("A part of this code is too short. Scan again.");
        case ScanFaultKind::TooLong:
            return FaultText::tr(
                "A part of this code is too long: does the scanner send separators (FNC1)?");
        case ScanFaultKind::NotADigit:
            return FaultText::tr("This code has a sign where a digit belongs. Scan again.");
        case ScanFaultKind::SignNotAllowed:
            return FaultText::tr("This code has a sign that GS1 does not allow. Scan again.");
        case ScanFaultKind::CheckDigit:
            return FaultText::tr("The code's check digit is wrong. Scan again.");
        case ScanFaultKind::NoSuchMonth:
        case ScanFaultKind::NoSuchDay:
        case ScanFaultKind::NoSuchTime:
            return FaultText::tr("The code's date is none. Read the label.");
        case ScanFaultKind::Contradiction:
            return FaultText::tr("This code says two things at once. Read the label.");
        case ScanFaultKind::NotOurForm:
        case ScanFaultKind::CheckCharacter:
            return FaultText::tr(
                "The label's code was misread. Scan again; if it stays so, set the scanner to this "
                "keyboard's layout.");
    }
    Q_UNREACHABLE();
}

}  // namespace

QString faultText(const ScanFault& fault)
{
    const QString text = scanFaultText(fault.kind);
    if (fault.ai.empty())
        return text;
    return FaultText::tr("(%1): %2", "a GS1 identifier and what is wrong with it")
        .arg(fromCore(fault.ai), text);
}

QString faultText(PrintFault fault)
{
    switch (fault) {
        case PrintFault::DoesNotFit:
            return FaultText::tr(
                "There is more to print than this paper takes. Choose a larger one.");
        case PrintFault::PrinterRefused:
            return FaultText::tr(
                "The printer did not take it. Is it there, switched on, and does it have this "
                "paper?");
        case PrintFault::CannotWrite:
            return FaultText::tr("The file could not be written. Choose another folder.");
    }
    Q_UNREACHABLE();
}

}  // namespace bathside::ui
