#include "ui/record/record_page.h"

#include <QKeyEvent>
#include <utility>

#include "ui/bench/ask_pane.h"
#include "ui/controls/choice_grid.h"
#include "ui/controls/label.h"
#include "ui/controls/tap_button.h"
#include "ui/record/day_view.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
RecordPage::RecordPage(Parts parts, QWidget* parent)
    : Page(parent),
      m_parts(parts),
      m_model(parts.model),
      m_source(parts.source),
      m_filter(m_day),
      m_title(new Label(this)),
      m_empty(new Label(this)),
      m_about(new Label(this)),
      m_list(new DayView(m_filter, this)),
      m_choices(new ChoiceGrid(QStringLiteral("record.ask"), this)),
      m_sheet(new FieldSheet(this)),
      m_ask(new AskPane(m_model, this)),
      m_signing{.model = m_model,
                .asker = *m_ask,
                .pins = parts.pins,
                .zone = {},
                .tell = [this](const QString& sentence) { tell(sentence); }},
      m_bench(button("record.bench", &RecordPage::goToBench)),
      m_before(button("record.before", &RecordPage::dayBefore)),
      m_after(button("record.after", &RecordPage::dayAfter)),
      m_filterButton(button("record.filter", &RecordPage::pressFilter)),
      m_clear(button("record.clear", &RecordPage::pressClear)),
      m_verify(button("record.verify", &RecordPage::pressVerify)),
      m_export(button("record.export", &RecordPage::pressExport)),
      m_copy(button("record.copy", &RecordPage::pressCopy)),
      m_pageUp(button("record.page-up", &RecordPage::pageUp)),
      m_pageDown(button("record.page-down", &RecordPage::pageDown)),
      m_up(button("record.up", &RecordPage::rowUp)),
      m_down(button("record.down", &RecordPage::rowDown)),
      m_exact(button("record.exact", &RecordPage::pressExact)),
      m_linked(button("record.linked", &RecordPage::pressLinked)),
      m_comment(new TapButton(QStringLiteral("record.comment"), this)),
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
    m_about->setObjectName(QStringLiteral("record.about"));
    m_about->setCapMm(4, Metrics::kSmall);
    m_bench->setRole(Role::Primary);
    m_comment->setCapMm(4);
    connectTaps();
    connectSource();
    put(Over::Nothing);
    render();
}

void RecordPage::connectTaps()
{
    connect(m_comment, &TapButton::pressed, this, &RecordPage::pressComment);
    connect(m_ask, &AskPane::changed, this, [this] {
        if (!m_ask->isOpen() && m_over == Over::Question)
            return put(Over::Nothing);
        place();
    });
    connect(m_choices, &ChoiceGrid::chosen, this, [this](const QString& id, const TapStamp&) {
        const Chosen chosen = m_chosen;  // may be replaced by what it asks next
        chosen(id);
    });
    connect(m_list, &DayView::picked, this, &RecordPage::renderDetail);
    connect(&m_model, &StationModel::stateChanged, this, &RecordPage::follow);
    connect(&m_model, &StationModel::refused, this, &RecordPage::showRefusal);
    connect(&theme(), &Theme::changed, this, &RecordPage::place);
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
            [this](const DayRange& days, const std::vector<Entry>& entries) {
                if (days == m_days && !(isLong() && m_again))
                    m_day.append(entries);
            });
    connect(&m_source, &RecordSource::laterRead, this,
            [this](const DayRange& days, const std::vector<Entry>& entries) {
                if (days == m_days)
                    m_day.mendBy(entries);
            });
    connect(&m_source, &RecordSource::dayRead, this,
            [this](const DayRange& days, const std::optional<StoreTrouble>& trouble) {
                m_reading = false;
                if (days != m_days || m_again)
                    return read();
                m_trouble = trouble;
                m_hasEarlier = isLong() && m_day.rowCount() >= RecordSource::kStretch;
                m_filter.look();
                if (const Seq wanted = std::exchange(m_wanted, 0); m_day.rowOf(wanted) >= 0)
                    return goTo(wanted);
                if (!m_list->currentIndex().isValid())
                    m_list->goTo(m_landsFirst ? 0 : m_filter.rowCount() - 1);
                render();
            });
    connect(
        &m_source, &RecordSource::dayFound, this, [this](Seq seq, const std::optional<Date>& day) {
            if (seq != m_wanted)
                return;
            if (day)
                return showDays({*day, *day});
            m_wanted = 0;
            show({Role::HeadsUp, tr("Entry %1 cannot be found. Verify the record.").arg(seq), {}});
        });
    connect(&m_source, &RecordSource::verified, this, [this](const VerifyAnswer& answer) {
        m_verifying = false;
        show(sheetOf(answer));
    });
    connect(&m_source, &RecordSource::exported, this, [this](const ExportAnswer& answer) {
        m_exporting = false;
        show(sheetOf(answer));
    });
    connect(&m_source, &RecordSource::sheetRead, this, &RecordPage::printDay);
    connect(&m_source, &RecordSource::copied, this, [this](const CopyAnswer& answer) {
        m_copying = false;
        show(sheetOf(answer));
    });
}

// --- the days ---------------------------------------------------------------------------------

void RecordPage::showDays(const DayRange& days, const DayWish& wished)
{
    m_days = days;
    m_wish = wished;
    close();
    m_filter.wish(isLong() ? DayWish{} : wished);
    m_befores.clear();
    m_hasEarlier = m_landsFirst = false;
    m_day.begin(m_source.zone(), days);
    m_trouble.reset();
    read();
    render();
}

void RecordPage::moveBy(int days)
{
    showDays({daysAfter(m_days.first, days), daysAfter(m_days.last, days)}, m_wish);
}

void RecordPage::dayBefore() { moveBy(-m_days.count()); }
void RecordPage::dayAfter()
{
    if (m_days.last < m_source.currentDay())
        moveBy(m_days.count());
}

/// One question at a time; what comes up meanwhile is asked after it.
void RecordPage::read()
{
    m_again = m_reading;
    if (m_reading)
        return;
    m_reading = true;
    m_recorded = m_model.record().recorded;
    if (!isLong())
        return m_source.readDays(m_days, m_day.lastSeq());
    m_day.begin(m_source.zone(), m_days);
    m_source.readStretch(m_days, entryWishOf(m_wish),
                         m_befores.empty() ? RecordSource::kNewest : m_befores.back());
}

/// Of many days: to the stretch before or after the one shown, where there is one; else false.
bool RecordPage::turnStretch(int direction)
{
    if (!isLong() || m_reading)
        return false;
    if (direction < 0) {
        if (!m_hasEarlier)
            return false;
        m_befores.push_back(m_day.rows().front().entry.seq);
    } else if (!m_befores.empty()) {
        m_befores.pop_back();
    } else if (m_model.record().recorded <= m_recorded) {
        return false;
    }
    m_landsFirst = direction > 0;
    read();
    render();
    return true;
}

/// More is recorded than was read: of these days, or about them.
void RecordPage::follow()
{
    if (isVisible() && !isLong() && m_model.record().recorded > m_recorded)
        read();
    if (m_model.isInCriticalWindow())
        m_ask->close();
    renderTitle();
}

void RecordPage::wish(const DayWish& wish)
{
    if (isLong())
        return showDays(m_days, wish);
    m_wish = wish;
    m_filter.wish(wish);
    close();
    if (!m_list->currentIndex().isValid())
        m_list->goTo(m_filter.rowCount() - 1);
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

void RecordPage::show(const Sheet& sheet, Seq exactOf)
{
    m_exactOf = exactOf;
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
    m_close->setVisible(over == Over::Choices || over == Over::Answer);
    if (over != Over::Question)
        m_ask->close();
    m_turn->setVisible(false);
    for (QWidget* each : {static_cast<QWidget*>(m_list), static_cast<QWidget*>(m_about),
                          static_cast<QWidget*>(m_title)})
        each->setVisible(!isOpen);
    for (TapButton* each : {m_pageUp, m_pageDown, m_up, m_down, m_exact, m_linked})
        each->setVisible(!isOpen);
    m_clear->setVisible(!isOpen && m_wish != DayWish{});
    m_comment->setVisible(over == Over::Answer && m_exactOf != 0 && offersComment());
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
