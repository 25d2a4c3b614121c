#include "ui/text/printing.h"

#include <QCoreApplication>
#include <QDir>

#include "ui/text/faults.h"

namespace bathside::ui {
namespace {

constexpr qsizetype kLongestPath = 50;  // what a line takes beside the words

struct PrintText {
    Q_DECLARE_TR_FUNCTIONS(PrintText)
};

PrintNews lost(const PrintOutcome& outcome)
{
    return {Role::Limit, PrintText::tr("NOT PRINTED"), faultText(*outcome.fault)};
}

PrintNews saved(const PrintOutcome& outcome)
{
    const QString path = shownPath(outcome.file);
    if (!outcome.fault)
        return {Role::Good, PrintText::tr("SAVED AS PDF", "what was to be printed"), path};
    const QString word = *outcome.fault == PrintFault::DoesNotFit
                             ? PrintText::tr("DOES NOT FIT", "on its paper")
                             : PrintText::tr("PRINTER REFUSED");
    //: %1 is a file.
    return {Role::HeadsUp, word, PrintText::tr("Saved as PDF: %1").arg(path)};
}

}  // namespace

QString PrintNews::sentence() const { return QStringLiteral("%1: %2").arg(word, text); }

PrintNews printNews(const PrintOutcome& outcome)
{
    if (outcome.isLost())
        return lost(outcome);
    if (!outcome.file.isEmpty())
        return saved(outcome);
    return {Role::Good, PrintText::tr("SENT TO PRINTER"), outcome.printer};
}

QString paperText(Paper paper)
{
    switch (paper) {
        case Paper::Label:
            return PrintText::tr("100 × 50 mm", "size of a label");
        case Paper::Roll:
            return PrintText::tr("62 mm roll", "of labels");
        case Paper::A4:
            return PrintText::tr("A4", "paper");
        case Paper::Letter:
            return PrintText::tr("Letter", "paper");
    }
    Q_UNREACHABLE();
}

QString shownPath(const QString& path)
{
    const QString home = QDir::homePath() + u'/';
    const QString shown =
        path.startsWith(home) ? QStringLiteral("~/") + path.mid(home.size()) : path;
    if (shown.size() <= kLongestPath)
        return shown;
    const QString end = shown.right(kLongestPath - 1);
    return u'…' + end.mid(qMax<qsizetype>(end.indexOf(u'/'), 0));
}

}  // namespace bathside::ui
