#include "ui/text/copies.h"

#include <QCoreApplication>

#include "ui/text/faults.h"

namespace bathside::ui {
namespace {

struct CopyText {
    Q_DECLARE_TR_FUNCTIONS(CopyText)
};

using Doing = CopyNews::Doing;
using Wrong = CopyNews::Wrong;

QString lastText(const CopyNews& news, const Stamp& now)
{
    if (!news.madeAt)
        return news.isLate ? CopyText::tr("There is no copy of the record yet. Make one now.")
                           : CopyText::tr("There is no copy of the record yet.");
    const QString ago = agoText(elapsed(*news.madeAt, now).time);
    return news.isLate
               ? CopyText::tr("The last copy was made %1: older than is set. Make one now.",
                              "3 h ago")
                     .arg(ago)
               : CopyText::tr("The last copy was made %1 and found sound.", "3 h ago").arg(ago);
}

QString wrongText(const CopyNews& news)
{
    switch (news.wrong) {
        case Wrong::Nothing:
            return {};
        case Wrong::NotThere:
            return CopyText::tr(
                "Not copied: the stick for copies is not in. Put it in, or choose another place.");
        case Wrong::NotWritten:
            return CopyText::tr("Not copied. %1", "followed by a sentence")
                .arg(copyFaultText(*news.last.trouble));
        case Wrong::NotSound:
            return copyCheckText(news.last.check);
    }
    Q_UNREACHABLE();
}

}  // namespace

QString agoText(Micros age)
{
    using namespace std::chrono;
    constexpr hours kInHours{48};
    if (age < 1h)
        return CopyText::tr("%n min ago", nullptr,
                            static_cast<int>(duration_cast<minutes>(age).count()));
    if (age < kInHours)
        return CopyText::tr("%n h ago", nullptr,
                            static_cast<int>(duration_cast<hours>(age).count()));
    return CopyText::tr("%n day(s) ago", nullptr,
                        static_cast<int>(duration_cast<days>(age).count()));
}

QString copyFaultText(const StoreTrouble& trouble)
{
    switch (trouble.fault) {
        case StoreFault::NoSpace:
            return CopyText::tr(
                "There is no room for it. Take another stick, or move older copies elsewhere.");
        case StoreFault::ReadOnly:
            return CopyText::tr("That place is read-only. Unlock the stick, or choose another.");
        case StoreFault::NotPermitted:
            return CopyText::tr("Writing there is not permitted. Choose another place.");
        case StoreFault::WriteFailed:
        case StoreFault::Unconfirmed:
            return CopyText::tr("Writing failed. Is the stick in and whole? Choose another place.");
        case StoreFault::Damaged:
            return CopyText::tr(
                "The record is damaged. Keep every older copy; tell the shift lead.");
        default:
            return faultText(trouble);
    }
}

QString copyCheckText(const VerifyAnswer& check)
{
    if (check.chain.flaw)
        return CopyText::
            tr("The copy was written, and the record in it is NOT sound at entry %1. Keep every "
               "older copy; tell the shift lead.")
                .arg(check.chain.flaw->seq);
    if (check.chain.badSeal)
        return CopyText::tr(
                   "The copy was written, and the seal at entry %1 is not this station's. Keep "
                   "every older copy; tell the shift lead.")
            .arg(check.chain.badSeal->seq);
    return CopyText::tr(
        "The copy was written, but reading it back failed. Take another stick and copy again.");
}

QString copyText(const CopyNews& news, const Stamp& now)
{
    if (news.doing == Doing::Copying)
        return CopyText::tr("The record is being copied and read back …");
    if (news.doing == Doing::Waiting)
        return CopyText::tr("The copy is made as soon as the pull is done.");
    if (news.wrong != Wrong::Nothing)
        return wrongText(news);
    const QString last = lastText(news, now);
    return news.last.renamed.isEmpty() ? last : last + u' ' + renamedText(news.last.renamed);
}

QString renamedText(const QStringList& names)
{
    return CopyText::tr("The damaged part before it lies there as %1: another file has its name.",
                        "a file, or some")
        .arg(names.join(QStringLiteral(", ")));
}

QString copyLine(const CopyNews& news, const Stamp& now)
{
    if (news.doing == Doing::Copying)
        return CopyText::tr("copying …");
    if (news.doing == Doing::Waiting)
        return CopyText::tr("after the pull");
    if (news.wrong != Wrong::Nothing)
        return CopyText::tr("the last one failed");
    return news.madeAt ? agoText(elapsed(*news.madeAt, now).time) : CopyText::tr("none yet");
}

Role roleOf(const CopyNews& news)
{
    if (news.wrong == Wrong::NotSound)
        return Role::Limit;
    return news.isLate || news.wrong != Wrong::Nothing ? Role::HeadsUp : Role::Neutral;
}

}  // namespace bathside::ui
