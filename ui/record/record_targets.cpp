// What the targets of the record page ask and do.

#include <QLocale>

#include "ui/controls/choice_grid.h"
#include "ui/frame/frame.h"
#include "ui/record/day_view.h"
#include "ui/record/entry_text.h"
#include "ui/record/record_page.h"
#include "ui/text/printing.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"

namespace bathside::ui {
namespace {

constexpr auto kPaper = "paper";  // among the places of an export

QString groupId(Group group) { return QStringLiteral("group:%1").arg(static_cast<int>(group)); }

/// For a target: what the group is above all.
QString shortWord(Group group)
{
    if (group == Group::Shift)
        return RecordPage::tr("shift");
    return group == Group::Deviations ? RecordPage::tr("deviations") : wordOf(group);
}

}  // namespace

void RecordPage::goToBench()
{
    close();
    emit asksFor(QString::fromLatin1(Frame::kBench));
}

void RecordPage::pressFilter()
{
    const About named = m_day.named();
    QList<Choice> choices;
    for (const Group group :
         {Group::All, Group::Ampoules, Group::Bags, Group::Lines, Group::Bath, Group::Shift,
          Group::Alarms, Group::Deviations, Group::Stores, Group::People, Group::Station})
        choices.append({.id = groupId(group),
                        .word = shortWord(group),
                        .mark = m_wish.group == group ? Mark::Tick : Mark::None});
    choices.append({.id = QStringLiteral("person"), .word = tr("one person …")});
    choices.append({.id = QStringLiteral("bag"), .word = tr("one bag …")});
    choices.append({.id = QStringLiteral("lot"), .word = tr("one lot …")});
    choices.append({.id = QStringLiteral("day"), .word = tr("other days …")});
    choose(tr("What shall be shown?"), choices, [this, named](const QString& id) {
        if (id == QLatin1String("person"))
            return askIds(&DayWish::person, named.persons, 0);
        if (id == QLatin1String("bag"))
            return askIds(&DayWish::bag, named.bags, 0);
        if (id == QLatin1String("lot"))
            return askIds(&DayWish::lot, named.lots, 0);
        if (id == QLatin1String("day"))
            return askDays();
        DayWish next = m_wish;
        next.group = static_cast<Group>(id.mid(6).toInt());
        wish(next);
    });
}

void RecordPage::pressClear() { wish({}); }

/// So many at a time as have room; the last choice brings the next ones.
void RecordPage::askIds(std::string DayWish::*which, const std::set<std::string>& ids, int from)
{
    constexpr int kAtATime = 8;
    const auto count = static_cast<int>(ids.size());
    QList<Choice> choices{{.id = QStringLiteral("any"), .word = tr("any")}};
    int at = 0;
    for (const std::string& id : ids) {
        if (at >= from && at < from + kAtATime)
            choices.append({.id = QStringLiteral("id:") + fromCore(id), .word = fromCore(id)});
        ++at;
    }
    choices.append({.id = QStringLiteral("typed"), .word = tr("by typing …")});
    if (count > kAtATime)
        choices.append({.id = QStringLiteral("more"), .word = tr("more …"), .mark = Mark::Arrow});
    choose(tr("Which one?"), choices, [this, which, ids, from, count](const QString& id) {
        if (id == QLatin1String("more"))
            return askIds(which, ids, from + kAtATime < count ? from + kAtATime : 0);
        if (id == QLatin1String("typed"))
            return askTyped(which);
        DayWish next = m_wish;
        next.*which = id == QLatin1String("any") ? std::string() : id.mid(3).toStdString();
        wish(next);
    });
}

/// For what the entries shown do not name; the days in question may.
void RecordPage::askTyped(std::string DayWish::*which)
{
    constexpr int kLongest = 40;
    put(Over::Question);
    m_ask->text({.title = which == &DayWish::person ? tr("Which person? The initials")
                          : which == &DayWish::bag  ? tr("Which bag? Its name")
                                                    : tr("Which lot? As on its label"),
                 .shortest = 1,
                 .longest = kLongest,
                 .suggested = fromCore(m_wish.*which),
                 .signs = TextQuestion::Signs::Any},
                [this, which](const QString& text, const AnswerTap&) {
                    DayWish next = m_wish;
                    next.*which = text.toStdString();
                    wish(next);
                });
}

void RecordPage::pressVerify()
{
    if (m_verifying)
        return;
    m_verifying = true;
    renderBar();
    m_source.verify();
}

void RecordPage::pressExport()
{
    if (m_exporting)
        return;
    QList<Choice> more;
    if (m_printing && m_days.first == m_days.last)
        more.append({.id = QString::fromLatin1(kPaper),
                     .word = tr("print the day sheet"),
                     .line = tr("without a printer: a PDF in this computer's documents")});
    const QString title = tr("Export %1 to where?").arg(daysText(m_days));
    askPlace(title, more, [this](const QString& folder) {
        if (folder == QLatin1String(kPaper)) {
            close();
            return m_source.askSheet(m_days.first);
        }
        m_exporting = true;
        close();
        const QString sign = QLocale().decimalPoint();
        m_source.exportDays(m_days, folder, sign == QLatin1String(",") ? ',' : '.');
    });
}

void RecordPage::pressCopy()
{
    if (m_copying)
        return;
    if (m_model.bench().openPull() || m_model.isInCriticalWindow())
        return show(
            {Role::HeadsUp, tr("Not copied: a pull is open. Copy the record between pulls."), {}});
    askPlace(tr("Copy the whole record to where?"), {}, [this](const QString& folder) {
        m_copying = true;
        close();
        m_source.copyTrail(folder);
    });
}

void RecordPage::printBy(Printing& printing)
{
    m_printing = &printing;
    connect(&printing, &Printing::ended, this, &RecordPage::tellPrinted);
}

void RecordPage::printDay(const SheetAnswer& answer)
{
    if (m_printing && answer.sheet)
        return m_printing->printDay(*answer.sheet);
    show(sheetOf(answer));
}

void RecordPage::tellPrinted(const PrintOutcome& outcome)
{
    if (outcome.of != PrintOutcome::Of::DaySheet || !isVisible())
        return;
    const PrintNews news = printNews(outcome);
    show({news.role, tr("The day sheet: %1").arg(news.sentence()), {}});
}

void RecordPage::askPlace(const QString& title, const QList<Choice>& more, const Chosen& chosen)
{
    QList<Choice> choices;
    for (const RecordPlace& place : m_source.places())
        choices.append({.id = place.folder, .word = placeText(place), .line = place.folder});
    if (choices.size() == 1)
        choices.first().line += u' ' + tr("(no stick was found)");
    choose(title, choices + more, chosen);
}

void RecordPage::pageUp()
{
    if (!m_list->showsFirst() || !turnStretch(-1))
        m_list->page(-1);
}

void RecordPage::pageDown()
{
    if (!m_list->showsLast() || !turnStretch(1))
        m_list->page(1);
}

void RecordPage::rowUp()
{
    if (m_list->currentIndex().row() > 0 || !turnStretch(-1))
        m_list->step(-1);
}

void RecordPage::rowDown()
{
    if (m_list->currentIndex().row() + 1 < m_filter.rowCount() || !turnStretch(1))
        m_list->step(1);
}

void RecordPage::pressExact()
{
    if (const DayRow* row = picked())
        show(sheetOf(*row, m_day.zone()), row->entry.seq);
}

void RecordPage::pressLinked()
{
    const DayRow* row = picked();
    if (!row || row->links.empty())
        return;
    if (row->links.size() == 1)
        return goTo(*row->links.begin());
    constexpr qsizetype kMost = 12;
    QList<Choice> choices;
    for (const Seq seq : row->links) {
        if (choices.size() < kMost)
            choices.append({.id = QString::number(seq),
                            .word = tr("entry %1").arg(seq),
                            .line = bondTo(*row, seq)});
    }
    choose(tr("Which entry?"), choices, [this](const QString& id) { goTo(id.toLongLong()); });
}

void RecordPage::turnSheet()
{
    m_sheet->turn();
    render();
}

void RecordPage::goTo(Seq seq)
{
    close();
    const int row = m_day.rowOf(seq);
    if (row < 0) {
        m_wanted = seq;
        return m_source.findDay(seq);
    }
    if (!m_filter.mapFromSource(m_day.index(row)).isValid())
        wish({});
    m_list->goTo(m_filter.mapFromSource(m_day.index(row)).row());
    render();
}

}  // namespace bathside::ui
