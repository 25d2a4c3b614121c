#include "ui/record/record_page.h"

#include <QKeyEvent>
#include <QLocale>

#include "ui/controls/choice_grid.h"
#include "ui/controls/label.h"
#include "ui/controls/tap_button.h"
#include "ui/frame/frame.h"
#include "ui/record/day_view.h"
#include "ui/text/subjects.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

QString groupId(Group group) { return QStringLiteral("group:%1").arg(static_cast<int>(group)); }

/// For a target: what the group is above all.
QString shortWord(Group group)
{
    if (group == Group::Shift)
        return RecordPage::tr("shift");
    return group == Group::Deviations ? RecordPage::tr("deviations") : wordOf(group);
}

Date shifted(Date date, int days)
{
    return Date{std::chrono::sys_days(date) + std::chrono::days(days)};
}

}  // namespace

RecordPage::RecordPage(StationModel& model, RecordSource& source, QWidget* parent)
    : Page(parent),
      m_model(model),
      m_source(source),
      m_filter(m_day),
      m_title(new Label(this)),
      m_empty(new Label(this)),
      m_about(new Label(this)),
      m_list(new DayView(m_filter, this)),
      m_choices(new ChoiceGrid(QStringLiteral("record.ask"), this)),
      m_sheet(new FieldSheet(this)),
      m_bench(button("record.bench", &RecordPage::goToBench)),
      m_before(button("record.before", &RecordPage::dayBefore)),
      m_after(button("record.after", &RecordPage::dayAfter)),
      m_filterButton(button("record.filter", &RecordPage::pressFilter)),
      m_verify(button("record.verify", &RecordPage::pressVerify)),
      m_export(button("record.export", &RecordPage::pressExport)),
      m_copy(button("record.copy", &RecordPage::pressCopy)),
      m_pageUp(button("record.page-up", &RecordPage::pageUp)),
      m_pageDown(button("record.page-down", &RecordPage::pageDown)),
      m_up(button("record.up", &RecordPage::rowUp)),
      m_down(button("record.down", &RecordPage::rowDown)),
      m_exact(button("record.exact", &RecordPage::pressExact)),
      m_linked(button("record.linked", &RecordPage::pressLinked)),
      m_turn(button("record.turn", &RecordPage::turnSheet)),
      m_close(button("record.close", &RecordPage::close))
{
    setObjectName(QStringLiteral("record"));
    m_sheet->setObjectName(QStringLiteral("record.sheet"));
    m_title->setObjectName(QStringLiteral("record.title"));
    m_title->setWeight(Weight::Strong);
    m_title->setCapMm(4.4, Metrics::kSmall);
    m_empty->setCapMm(Metrics::kWords, Metrics::kSmall);
    m_empty->setAlignment(Qt::AlignCenter);
    m_about->setCapMm(4, Metrics::kSmall);
    m_bench->setRole(Role::Primary);
    connect(m_choices, &ChoiceGrid::chosen, this, [this](const QString& id, const TapStamp&) {
        const Chosen chosen = m_chosen;  // may be replaced by what it asks next
        chosen(id);
    });
    connect(m_list, &DayView::picked, this, &RecordPage::renderDetail);
    connect(&m_model, &StationModel::stateChanged, this, &RecordPage::follow);
    connect(&theme(), &Theme::changed, this, &RecordPage::place);
    connectSource();
    put(Over::Nothing);
    render();
}

TapButton* RecordPage::button(const char* name, void (RecordPage::*pressed)())
{
    auto* made = new TapButton(QString::fromLatin1(name), this);
    made->setCapMm(4);
    connect(made, &TapButton::pressed, this, [this, pressed] { (this->*pressed)(); });
    return made;
}

void RecordPage::connectSource()
{
    connect(&m_source, &RecordSource::entriesRead, this,
            [this](Date date, const std::vector<Entry>& entries) {
                if (date == m_date)
                    m_day.append(entries);
            });
    connect(&m_source, &RecordSource::dayRead, this,
            [this](Date date, const std::optional<StoreTrouble>& trouble) {
                m_reading = false;
                if (date != m_date || m_again)
                    return read();
                m_trouble = trouble;
                m_filter.look();
                if (!m_list->currentIndex().isValid())
                    m_list->goTo(m_filter.rowCount() - 1);
                render();
            });
    connect(&m_source, &RecordSource::verified, this, [this](const VerifyAnswer& answer) {
        m_verifying = false;
        show(sheetOf(answer));
    });
    connect(&m_source, &RecordSource::exported, this, [this](const ExportAnswer& answer) {
        m_exporting = false;
        show(sheetOf(answer));
    });
    connect(&m_source, &RecordSource::copied, this, [this](const CopyAnswer& answer) {
        m_copying = false;
        show(sheetOf(answer));
    });
}

// --- the day ----------------------------------------------------------------------------------

void RecordPage::showDay(Date date)
{
    close();
    m_date = date;
    m_filter.wish({});
    m_day.begin(m_source.zone());
    m_trouble.reset();
    read();
    render();
}

void RecordPage::dayBefore() { showDay(shifted(m_date, -1)); }
void RecordPage::dayAfter()
{
    if (m_date < m_source.currentDay())
        showDay(shifted(m_date, 1));
}

/// One question at a time; what comes up meanwhile is asked after it.
void RecordPage::read()
{
    m_again = m_reading;
    if (m_reading)
        return;
    m_reading = true;
    m_source.readDay(m_date, m_day.lastSeq());
}

/// More is recorded than is shown.
void RecordPage::follow()
{
    if (isVisible() && m_model.record().recorded > m_day.lastSeq() &&
        m_date == m_source.currentDay())
        read();
    renderTitle();
}

void RecordPage::askDay()
{
    QList<Choice> choices{{.id = QStringLiteral("day:now"), .word = tr("today")}};
    for (const int days : {7, 30, 365})
        choices.append({.id = QStringLiteral("day:-%1").arg(days),
                        .word = tr("%n day(s) earlier", nullptr, days),
                        .line = dayText(shifted(m_date, -days))});
    for (const int days : {7, 30, 365}) {
        if (shifted(m_date, days) < m_source.currentDay())
            choices.append({.id = QStringLiteral("day:%1").arg(days),
                            .word = tr("%n day(s) later", nullptr, days),
                            .line = dayText(shifted(m_date, days))});
    }
    choose(tr("Which day?"), choices, [this](const QString& id) {
        const QString day = id.mid(4);
        showDay(day == QLatin1String("now") ? m_source.currentDay() : shifted(m_date, day.toInt()));
    });
}

void RecordPage::wish(const DayWish& wish)
{
    m_filter.wish(wish);
    close();
    if (!m_list->currentIndex().isValid())
        m_list->goTo(m_filter.rowCount() - 1);
    render();
}

// --- the targets ------------------------------------------------------------------------------

void RecordPage::goToBench()
{
    close();
    emit asksFor(QString::fromLatin1(Frame::kBench));
}

void RecordPage::pressFilter()
{
    const About named = m_day.named();
    QList<Choice> choices;
    for (const Group group : {Group::All, Group::Ampoules, Group::Bags, Group::Lines, Group::Bath,
                              Group::Shift, Group::Alarms, Group::Deviations, Group::Station})
        choices.append({.id = groupId(group), .word = shortWord(group)});
    const auto by = [&](const char* id, const QString& word, const std::set<std::string>& ids) {
        choices.append({.id = QString::fromLatin1(id),
                        .word = word,
                        .reason = ids.empty() ? tr("none this day") : QString()});
    };
    by("person", tr("one person …"), named.persons);
    by("bag", tr("one bag …"), named.bags);
    by("lot", tr("one lot …"), named.lots);
    choices.append({.id = QStringLiteral("day"), .word = tr("another day …")});
    choose(tr("What shall be shown?"), choices, [this, named](const QString& id) {
        if (id == QLatin1String("person"))
            return askIds(DayWish::By::Person, named.persons, 0);
        if (id == QLatin1String("bag"))
            return askIds(DayWish::By::Bag, named.bags, 0);
        if (id == QLatin1String("lot"))
            return askIds(DayWish::By::Lot, named.lots, 0);
        if (id == QLatin1String("day"))
            return askDay();
        wish({.by = DayWish::By::Group, .group = static_cast<Group>(id.mid(6).toInt()), .id = {}});
    });
}

/// So many at a time as have room; the last choice brings the next ones.
void RecordPage::askIds(DayWish::By by, const std::set<std::string>& ids, int from)
{
    constexpr int kAtATime = 9;
    if (ids.empty())
        return;
    const auto count = static_cast<int>(ids.size());
    QList<Choice> choices;
    int at = 0;
    for (const std::string& id : ids) {
        if (at >= from && at < from + kAtATime)
            choices.append({.id = QStringLiteral("id:") + fromCore(id), .word = fromCore(id)});
        ++at;
    }
    if (count > kAtATime)
        choices.append({.id = QStringLiteral("more"), .word = tr("more …"), .mark = Mark::Arrow});
    choose(tr("Which one?"), choices, [this, by, ids, from, count](const QString& id) {
        if (id == QLatin1String("more"))
            return askIds(by, ids, from + kAtATime < count ? from + kAtATime : 0);
        wish({.by = by, .group = Group::All, .id = id.mid(3).toStdString()});
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
    askPlace(tr("Export %1 to where?").arg(dayText(m_date)), [this](const QString& folder) {
        m_exporting = true;
        close();
        const QString sign = QLocale().decimalPoint();
        m_source.exportDay(m_date, folder, sign == QLatin1String(",") ? ',' : '.');
    });
}

void RecordPage::pressCopy()
{
    if (m_copying)
        return;
    if (m_model.bench().openPull() || m_model.isInCriticalWindow())
        return show(
            {Role::HeadsUp, tr("Not copied: a pull is open. Copy the record between pulls."), {}});
    askPlace(tr("Copy the whole record to where?"), [this](const QString& folder) {
        m_copying = true;
        close();
        m_source.copyTrail(folder);
    });
}

void RecordPage::askPlace(const QString& title, const Chosen& chosen)
{
    QList<Choice> choices;
    for (const RecordPlace& place : m_source.places())
        choices.append({.id = place.folder, .word = placeText(place), .line = place.folder});
    if (choices.size() == 1)
        choices.first().line += u' ' + tr("(no stick was found)");
    choose(title, choices, chosen);
}

void RecordPage::pageUp() { m_list->page(-1); }
void RecordPage::pageDown() { m_list->page(1); }
void RecordPage::rowUp() { m_list->step(-1); }
void RecordPage::rowDown() { m_list->step(1); }

void RecordPage::pressExact()
{
    if (const DayRow* row = picked())
        show(sheetOf(*row, m_day.zone()));
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
        const int at = m_day.rowOf(seq);
        if (at >= 0 && choices.size() < kMost)
            choices.append({.id = QString::number(seq),
                            .word = tr("entry %1").arg(seq),
                            .line = m_day.data(m_day.index(at), DayModel::TimeRole).toString()});
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
    if (row < 0)
        return;
    if (!m_filter.mapFromSource(m_day.index(row)).isValid())
        m_filter.wish({});
    m_list->goTo(m_filter.mapFromSource(m_day.index(row)).row());
    render();
}

// --- what lies over the list ------------------------------------------------------------------

void RecordPage::choose(const QString& title, const QList<Choice>& choices, Chosen chosen)
{
    m_chosen = std::move(chosen);
    m_choices->setTitle(title);
    m_choices->setChoices(choices);
    put(Over::Choices);
}

void RecordPage::show(const Sheet& sheet)
{
    m_sheet->show(sheet.role, sheet.title, sheet.fields);
    put(Over::Answer);
}

void RecordPage::close() { put(Over::Nothing); }

void RecordPage::put(Over over)
{
    m_over = over;
    const bool isOpen = over != Over::Nothing;
    m_choices->setVisible(over == Over::Choices);
    m_sheet->setVisible(over == Over::Answer);
    m_close->setVisible(isOpen);
    m_turn->setVisible(false);
    for (QWidget* each : {static_cast<QWidget*>(m_list), static_cast<QWidget*>(m_about),
                          static_cast<QWidget*>(m_title)})
        each->setVisible(!isOpen);
    for (TapButton* each : {m_pageUp, m_pageDown, m_up, m_down, m_exact, m_linked})
        each->setVisible(!isOpen);
    place();
    render();
}

void RecordPage::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape && m_over != Over::Nothing)
        return close();
    Page::keyPressEvent(event);
}

}  // namespace bathside::ui
