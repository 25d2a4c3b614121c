#include "ui/setup/ask_print.h"

#include <QCoreApplication>
#include <algorithm>

#include "ui/setup/ask_parts.h"
#include "ui/text/printing.h"

namespace bathside::ui {
namespace {

constexpr auto kMore = "more", kNone = "no-printer", kTest = "test-label", kPrinter = "printer:";
constexpr qsizetype kPrintersAPage = 5;  // beside: none, more, back

struct AskPrintText {
    Q_DECLARE_TR_FUNCTIONS(AskPrintText)
};

std::vector<Paper> papersFor(bool sheets)
{
    if (sheets)
        return {Paper::A4, Paper::Letter};
    return {Paper::Label, Paper::Roll, Paper::A4, Paper::Letter};
}

}  // namespace

void AskPrint::ask(const QString& title)
{
    const QStringList installed = m_parts.printing.printers();
    const QString standing = installed.isEmpty()
                                 ? AskPrintText::tr("No printer is installed: PDFs are saved.")
                                 : AskPrintText::tr("Labels and sheets");
    const QList<Choice> choices{
        {.id = QStringLiteral("label-printer"),
         .word = AskPrintText::tr("printer for labels …"),
         .line = printerText(For::Labels, installed)},
        {.id = QStringLiteral("label-paper"),
         .word = AskPrintText::tr("paper for labels …"),
         .line = paperText(now().labelPaper)},
        {.id = idOf(kTest), .word = AskPrintText::tr("test label"), .mark = Mark::Sheet},
        {.id = QStringLiteral("sheet-printer"),
         .word = AskPrintText::tr("printer for sheets …"),
         .line = printerText(For::Sheets, installed)},
        {.id = QStringLiteral("sheet-paper"),
         .word = AskPrintText::tr("paper for sheets …"),
         .line = paperText(now().sheetPaper)},
        back(AskPrintText::tr("back"))};
    m_parts.asker.choose(title.isEmpty() ? standing : title, choices,
                         [this](const QString& id, const AnswerTap&) { choose(id); });
}

void AskPrint::choose(const QString& id)
{
    if (id == QLatin1String(kBack))
        return m_parts.back();
    if (id == QLatin1String(kTest))
        return m_parts.printing.printTestLabel(m_parts.testLabel());
    const For what = id.startsWith(QLatin1String("label")) ? For::Labels : For::Sheets;
    if (id.endsWith(QLatin1String("printer")))
        return askPrinter(what);
    askPaper(what);
}

// One that is set stays in the list, also while it is not there.
void AskPrint::askPrinter(For what, int page)
{
    QStringList names = m_parts.printing.printers();
    const QString& set = printerFor(what);
    const bool isGone = !set.isEmpty() && !names.contains(set);
    if (isGone)
        names.prepend(set);
    QList<Choice> choices{{.id = idOf(kNone),
                           .word = AskPrintText::tr("no printer"),
                           .line = AskPrintText::tr("save PDFs"),
                           .mark = tickIf(set.isEmpty())}};
    for (const QString& name : names.mid(page * kPrintersAPage, kPrintersAPage))
        choices.append(
            {.id = idOf(kPrinter) + name,
             .word = name,
             .line = isGone && name == set ? AskPrintText::tr("not there now") : QString(),
             .mark = tickIf(name == set)});
    const qsizetype pages = (names.size() + kPrintersAPage - 1) / kPrintersAPage;
    if (pages > 1)
        choices.append({.id = idOf(kMore), .word = AskPrintText::tr("more …", "more printers")});
    choices.append(back(AskPrintText::tr("back")));
    const int next = pages > 1 ? (page + 1) % static_cast<int>(pages) : 0;
    m_parts.asker.choose(what == For::Labels ? AskPrintText::tr("Which printer for labels?")
                                             : AskPrintText::tr("Which printer for sheets?"),
                         choices, [this, what, next](const QString& id, const AnswerTap&) {
                             if (id == QLatin1String(kMore))
                                 return askPrinter(what, next);
                             if (id == QLatin1String(kNone))
                                 choosePrinter(what, {});
                             else if (id != QLatin1String(kBack))
                                 choosePrinter(what, id.mid(QLatin1String(kPrinter).size()));
                             ask();
                         });
}

void AskPrint::askPaper(For what)
{
    QList<Choice> choices;
    const std::vector<Paper> papers = papersFor(what == For::Sheets);
    for (std::size_t i = 0; i < papers.size(); ++i)
        choices.append({.id = QStringLiteral("paper:%1").arg(i),
                        .word = paperText(papers[i]),
                        .mark = tickIf(papers[i] == paperFor(what))});
    choices.append(back(AskPrintText::tr("back")));
    m_parts.asker.choose(what == For::Labels ? AskPrintText::tr("Which paper for labels?")
                                             : AskPrintText::tr("Which paper for sheets?"),
                         choices, [this, what, papers](const QString& id, const AnswerTap&) {
                             if (id != QLatin1String(kBack))
                                 choosePaper(what, papers.at(id.mid(6).toUInt()));
                             ask();
                         });
}

void AskPrint::choosePrinter(For what, const QString& name)
{
    Preference next = m_parts.preferences.now();
    (what == For::Labels ? next.print.labelPrinter : next.print.sheetPrinter) = name;
    m_parts.preferences.set(next);
}

void AskPrint::choosePaper(For what, Paper paper)
{
    Preference next = m_parts.preferences.now();
    (what == For::Labels ? next.print.labelPaper : next.print.sheetPaper) = paper;
    m_parts.preferences.set(next);
}

const QString& AskPrint::printerFor(For what) const
{
    return what == For::Labels ? now().labelPrinter : now().sheetPrinter;
}

Paper AskPrint::paperFor(For what) const
{
    return what == For::Labels ? now().labelPaper : now().sheetPaper;
}

QString AskPrint::printerText(For what, const QStringList& installed) const
{
    const QString& set = printerFor(what);
    if (set.isEmpty())
        return AskPrintText::tr("none: PDF");
    if (installed.contains(set))
        return set;
    //: %1 is a printer.
    return AskPrintText::tr("%1: not there now").arg(set);
}

BagLabel testLabel(WallTime now, const std::string& zone)
{
    constexpr int kAmpoules = 2;
    constexpr std::int64_t kDoses = 4000;
    BagLabel label;
    label.bag = {"TEST"};
    label.volume = {400'000};
    label.components = {{{"TEST"}, {{"TEST"}}, kAmpoules, kDoses}};
    label.doses = kDoses;
    label.mixed = now;
    label.useBy = now + std::chrono::hours(1);
    label.preparer = {"TEST"};
    label.zone = zone;
    label.rehearsal = true;  // which says that it is not for birds
    return label;
}

}  // namespace bathside::ui
