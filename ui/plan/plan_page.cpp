#include "ui/plan/plan_page.h"

#include <QKeyEvent>

#include "ui/controls/banner.h"
#include "ui/controls/tap_button.h"
#include "ui/frame/frame.h"
#include "ui/plan/ask_plan.h"
#include "ui/plan/bag_table.h"
#include "ui/plan/sheet_of_plan.h"
#include "ui/plan/timeline_view.h"
#include "ui/record/field_sheet.h"
#include "ui/record/record_text.h"
#include "ui/text/faults.h"
#include "ui/text/printing.h"
#include "ui/text/refusals.h"
#include "ui/theme/theme.h"

namespace bathside::ui {

PlanPage::PlanPage(Parts parts, QWidget* parent)
    : Page(parent),
      m_parts(std::move(parts)),
      m_model(m_parts.model),
      m_bench(button("plan.bench")),
      m_more(button("plan.more")),
      m_lines(button("plan.lines")),
      m_list(button("plan.list")),
      m_words(button("plan.words")),
      m_print(button("plan.print")),
      m_notice(new Banner(QStringLiteral("plan.notice"), this)),
      m_timeline(new TimelineView(this)),
      m_bags(new BagTable(this)),
      m_sheet(new FieldSheet(this)),
      m_ask(new AskPane(m_model, this)),
      m_context{.model = m_model,
                .draft = m_draft,
                .asker = *m_ask,
                .language = m_parts.language,
                .zone = m_parts.zone,
                .goTo = [this](const QString& page) { emit asksFor(page); },
                .draftChanged = [] {},
                .later = [this] { m_ask->close(); }}
{
    setObjectName(QStringLiteral("plan"));
    m_sheet->setObjectName(QStringLiteral("plan.sheet"));
    connectAll();
    put(View::Timeline);
}

TapButton* PlanPage::button(const char* name)
{
    auto* made = new TapButton(QString::fromLatin1(name), this);
    made->setCapMm(4);
    return made;
}

void PlanPage::connectAll()
{
    connect(m_bench, &TapButton::pressed, this,
            [this] { emit asksFor(QString::fromLatin1(Frame::kBench)); });
    connect(m_more, &TapButton::pressed, this, &PlanPage::pressMore);
    connect(m_lines, &TapButton::pressed, this, &PlanPage::pressLines);
    connect(m_list, &TapButton::pressed, this,
            [this] { put(m_view == View::List ? View::Timeline : View::List); });
    connect(m_words, &TapButton::pressed, this,
            [this] { put(m_view == View::Words ? View::Timeline : View::Words); });
    connect(m_print, &TapButton::pressed, this, &PlanPage::pressPrint);
    connect(&m_parts.printing, &Printing::ended, this, &PlanPage::tellPrinted);
    connect(m_ask, &AskPane::changed, this, [this] {
        place();
        render();
    });
    connect(&m_model, &StationModel::changed, this, whileShown([this] { render(); }));
    connect(&m_model, &StationModel::refused, this, &PlanPage::showRefusal);
    connect(&m_model, &StationModel::taken, this, [this] { m_refusedAt.reset(); });
    connect(&theme(), &Theme::changed, this, [this] {
        place();
        render();
    });
}

void PlanPage::pressLines(const TapStamp& stamp)
{
    if (m_view != View::Timeline && m_view != View::List)
        put(View::Timeline);
    m_ask->opening(stamp.inputMs);
    if (m_model.isInCriticalWindow())
        return;
    if (!m_model.bench().shiftIsOpen())
        return m_model.refuse({RefusalCode::ShiftNotOpen, {}, {}});
    askPlannedLine(m_context);
}

void PlanPage::pressMore()
{
    switch (m_view) {
        case View::Timeline:
            m_timeline->turn();
            break;
        case View::List:
            m_bags->turn();
            break;
        case View::Words:
        case View::Printed:
            m_sheet->turn();
            break;
    }
    renderBar();
}

void PlanPage::pressPrint()
{
    if (!day())
        return;
    const Bench& bench = m_model.bench();
    const SheetHead head{.site = bench.card ? bench.card->content().site : std::string(),
                         .made = m_model.now().wall,
                         .rehearsal = bench.rehearsal};
    const PlanSheet sheet = planSheetFrom(*day(), clock(), head);
    put(View::Printed);
    showWords({Role::Neutral, tr("The plan's sheet is on its way"), {}});
    m_parts.printing.printSheet(sheet);
}

/// In place of "on its way"; where something else is shown by now, as a line above it.
void PlanPage::tellPrinted(const PrintOutcome& outcome)
{
    if (outcome.of != PrintOutcome::Of::Sheet)
        return;
    const PrintNews news = printNews(outcome);
    if (m_view != View::Printed || m_ask->isOpen()) {
        m_refusal = news.sentence();
        m_refusedAt = m_model.now();
        return render();
    }
    if (outcome.isLost())
        return showWords(
            {Role::Limit, tr("The plan's sheet is not saved"), {{tr("why"), news.text}}});
    if (outcome.file.isEmpty())
        return showWords(
            {Role::Good, tr("The plan's sheet is printed"), {{tr("printer"), news.text}}});
    QList<Field> fields{{tr("file"), outcome.file}};
    if (outcome.fault)
        fields.append({tr("why"), faultText(*outcome.fault)});
    showWords({news.role, tr("The plan's sheet is saved"), fields});
}

void PlanPage::put(View view)
{
    m_view = view;
    m_ask->close();
    place();
    render();
}

void PlanPage::showRefusal(const Refusal& refusal)
{
    if (!isVisible())
        return;
    m_refusedAt = m_model.now();
    m_refusal = refusalText(refusal, m_model.bench().card.get(), m_parts.language.cardCode());
    m_ask->showRefusal(m_refusal);
    render();
}

void PlanPage::showEvent(QShowEvent* event)
{
    Page::showEvent(event);
    m_refusedAt.reset();
    put(View::Timeline);
}

void PlanPage::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape)
        return put(View::Timeline);
    Page::keyPressEvent(event);
}

}  // namespace bathside::ui
