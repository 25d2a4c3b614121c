#include "ui/checks/checks_page.h"

#include <QEvent>
#include <algorithm>

#include "ui/checks/birds_view.h"
#include "ui/checks/injector_view.h"
#include "ui/checks/level_content.h"
#include "ui/checks/vessel_view.h"
#include "ui/controls/banner.h"
#include "ui/controls/grid.h"
#include "ui/controls/tap_button.h"
#include "ui/frame/frame.h"
#include "ui/text/faults.h"
#include "ui/text/refusals.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

using namespace std::chrono_literals;

constexpr double kActionMm = 26;  // a word, and a reason under it
constexpr double kNoticeMm = 11, kAfterMm = 1.5, kChartShare = 0.4;
constexpr auto kToldShown = 6s;

bool isSame(const CheckSheet& a, const CheckSheet& b)
{
    return a.role == b.role && a.title == b.title &&
           std::ranges::equal(a.fields, b.fields, [](const Field& one, const Field& other) {
               return one.name == other.name && one.value == other.value;
           });
}

}  // namespace

ChecksPage::ChecksPage(Parts parts, QWidget* parent)
    : Page(parent),
      m_parts(std::move(parts)),
      m_model(m_parts.model),
      m_bench(button(QStringLiteral("checks.bench"))),
      m_injector(button(QStringLiteral("checks.injector"))),
      m_birds(button(QStringLiteral("checks.birds"))),
      m_vessel(button(QStringLiteral("checks.vessel"))),
      m_more(button(QStringLiteral("checks.more"))),
      m_sheet(new FieldSheet(this)),
      m_chart(new Chart(QStringLiteral("checks.levels"), this)),
      m_notice(new Banner(QStringLiteral("checks.notice"), this)),
      m_ask(new AskPane(m_model, this)),
      m_asking{.model = m_model,
               .draft = m_draft,
               .asker = *m_ask,
               .language = m_parts.language,
               .zone = m_parts.zone,
               .goTo = [this](const QString& page) { emit asksFor(page); },
               .draftChanged = [] {},
               .later = [this] { m_ask->close(); }},
      m_context{.bench = m_asking,
                .drafts = m_parts.drafts,
                .changed = [this] { render(); },
                .tell = [this](const QString& words) { m_ask->showRefusal(words); },
                .save = [this] { savePicture(); }},
      m_injectorView(std::make_unique<InjectorView>(m_context, m_parts.balance)),
      m_birdsView(std::make_unique<BirdsView>(m_context)),
      m_vesselView(std::make_unique<VesselView>(m_context))
{
    setObjectName(QStringLiteral("checks"));
    m_sheet->setObjectName(QStringLiteral("checks.sheet"));
    for (std::size_t i = 0; i < kActions; ++i) {
        m_actions[i] = button({});
        m_actions[i]->stackUnder(m_ask);
        connect(m_actions[i], &TapButton::pressed, this,
                [this, i](const TapStamp& stamp) { pressAction(i, stamp); });
    }
    connectAll();
    put(View::Injector);
}

ChecksPage::~ChecksPage() = default;

TapButton* ChecksPage::button(const QString& place)
{
    auto* made = new TapButton(place, this);
    made->setCapMm(4);
    return made;
}

void ChecksPage::connectAll()
{
    connect(m_bench, &TapButton::pressed, this,
            [this] { emit asksFor(QString::fromLatin1(Frame::kBench)); });
    connect(m_injector, &TapButton::pressed, this, [this] { put(View::Injector); });
    connect(m_birds, &TapButton::pressed, this, [this] { put(View::Birds); });
    connect(m_vessel, &TapButton::pressed, this, [this] { put(View::Vessel); });
    connect(m_more, &TapButton::pressed, this, [this] {
        m_sheet->turn();
        renderBar();
    });
    connect(m_ask, &AskPane::changed, this, [this] {
        place();
        render();
    });
    connect(&m_model, &StationModel::changed, this, whileShown([this] { render(); }));
    connect(&m_model, &StationModel::refused, this, &ChecksPage::showRefusal);
    connect(&m_model, &StationModel::taken, this, [this] { m_toldAt.reset(); });
    connect(&m_parts.balance.source, &WeightSource::said, this, &ChecksPage::hear);
    connect(&theme(), &Theme::changed, this, [this] {
        place();
        render();
    });
}

CheckView& ChecksPage::view() const
{
    switch (m_view) {
        case View::Injector:
            return *m_injectorView;
        case View::Birds:
            return *m_birdsView;
        case View::Vessel:
            return *m_vesselView;
    }
    Q_UNREACHABLE();
}

void ChecksPage::pressAction(std::size_t index, const TapStamp& stamp)
{
    if (index >= static_cast<std::size_t>(m_offered.size()))
        return;
    const CheckAction action = m_offered.at(static_cast<qsizetype>(index));
    m_ask->opening(stamp.inputMs);
    m_injectorView->stopWeighing();
    action.press({stamp.inputMs, action.place});
    if (m_model.isInCriticalWindow())
        m_ask->close();
}

void ChecksPage::put(View view)
{
    m_view = view;
    m_ask->close();
    place();
    render();
}

void ChecksPage::showRefusal(const Refusal& refusal)
{
    if (!isVisible())
        return;
    tell(Role::Limit,
         refusalText(refusal, m_model.bench().card.get(), m_parts.language.cardCode()));
    m_ask->showRefusal(m_told);
}

void ChecksPage::savePicture()
{
    const auto saved = m_parts.save(m_chart->picture(), m_chart->objectName().replace(u'.', u'-'));
    if (!saved)
        return tell(Role::Limit, faultText(saved.error()));
    tell(Role::Good, tr("Saved: %1").arg(*saved));
}

void ChecksPage::tell(Role role, const QString& words)
{
    m_toldAt = m_model.now();
    m_toldAs = role;
    m_told = words;
    render();
}

void ChecksPage::hear(const WeightSource::Said& said)
{
    if (isVisible() && m_view == View::Injector && m_ask->isOpen())
        m_injectorView->hear(said);
}

void ChecksPage::resizeEvent(QResizeEvent*)
{
    place();
    render();
}

void ChecksPage::showEvent(QShowEvent* event)
{
    Page::showEvent(event);
    m_toldAt.reset();
    put(m_view);
}

void ChecksPage::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        put(m_view);
    Page::changeEvent(event);
}

// --- where it stands -----------------------------------------------------------------------------

// From the top: what was refused, what is known, what can be done, the bar; over all of it what is
// asked.
void ChecksPage::place()
{
    const Metrics& metrics = theme().metrics();
    const int gap = metrics.gapPx(), bar = metrics.ceilPx(Metrics::kMinimum);
    m_notice->setGeometry(0, 0, width(), metrics.ceilPx(kNoticeMm));
    const int top = metrics.ceilPx(kNoticeMm + kAfterMm);
    m_ask->setGeometry(m_ask->room() == AskPane::Room::Page ? rect()
                                                            : rect().adjusted(0, top, 0, 0));
    const int actions = height() - bar - gap - metrics.ceilPx(kActionMm),
              chart = static_cast<int>(kChartShare * width());
    const QRect middle(0, top, width(), actions - gap - top);
    const bool isVessel = m_view == View::Vessel;
    m_chart->setGeometry(middle.left(), middle.top(), chart - gap, middle.height());
    m_sheet->setGeometry(isVessel ? middle.adjusted(chart, 0, 0, 0) : middle);
}

void ChecksPage::placeRow(const QList<TapButton*>& targets, const QRect& row)
{
    const GridShape shape{static_cast<int>(targets.size()), 1};
    for (int i = 0; i < targets.size(); ++i)
        targets.at(i)->setGeometry(cellOf(row, shape, i));
}

// --- what is shown -------------------------------------------------------------------------------

void ChecksPage::render()
{
    if (m_toldAt && elapsed(*m_toldAt, m_model.now()).time > kToldShown)
        m_toldAt.reset();
    renderSheet();
    renderActions();
    renderBar();
    if (m_toldAt)
        return m_notice->say(m_toldAs, {}, m_told);
    m_notice->say(Role::Neutral, tr("CHECKS"),
                  view().isHeldToCard()
                      ? tr("Limits here are those of the card; the label goes first.")
                      : tr("Limits here are common practice: the label and the site go first."));
}

void ChecksPage::renderSheet()
{
    const VesselLog* log = m_vesselView->log();
    const bool isCovered = m_ask->isOpen();
    const CheckSheet sheet = view().sheet();
    if (!isSame(sheet, m_shown)) {
        m_shown = sheet;
        m_sheet->show(sheet.role, sheet.title, sheet.fields);
    }
    m_sheet->setVisible(!isCovered);
    m_chart->setVisible(!isCovered && m_view == View::Vessel);
    const ChartContent levels = log ? levelContent(*log, m_asking.zoneNow()) : ChartContent{};
    if (levels != m_chart->content())  // else it would be whole again under the finger
        m_chart->show(levels);
}

void ChecksPage::renderActions()
{
    m_offered = view().actions();
    const bool isCovered = m_ask->isOpen();
    QList<TapButton*> row;
    for (std::size_t i = 0; i < kActions; ++i) {
        TapButton* target = m_actions[i];
        const auto at = static_cast<qsizetype>(i);
        target->setVisible(!isCovered && at < m_offered.size());
        if (at >= m_offered.size()) {
            target->setPlace({});
            continue;
        }
        const CheckAction& action = m_offered.at(at);
        target->setPlace(action.place);
        target->setWord(action.word);
        target->setLine(action.line);
        target->setRole(action.role);
        target->setReason(action.reason);
        row.append(target);
    }
    const Metrics& metrics = theme().metrics();
    const int high = metrics.ceilPx(kActionMm), bar = metrics.ceilPx(Metrics::kMinimum);
    placeRow(row, QRect(0, height() - bar - metrics.gapPx() - high, width(), high));
}

void ChecksPage::renderBar()
{
    const bool isCovered = m_ask->isOpen();
    const struct {
        TapButton* target;
        QString word;
        View view;
    } views[] = {{m_injector, tr("injector"), View::Injector},
                 {m_birds, tr("birds", "the check of birds"), View::Birds},
                 {m_vessel, tr("vessel"), View::Vessel}};
    for (const auto& each : views) {
        each.target->setWord(each.word);
        each.target->setChosen(m_view == each.view);
        each.target->setVisible(!isCovered);
    }
    m_bench->setWord(tr("bench"));
    m_bench->setMark(Mark::Back);
    m_bench->setVisible(!isCovered);
    const bool turns = m_sheet->sheets() > 1;
    m_more->setWord(tr("more …", "figures"));
    m_more->setLine(
        tr("%1 of %2", "which page of how many").arg(m_sheet->sheet() + 1).arg(m_sheet->sheets()));
    m_more->setVisible(!isCovered && turns);
    QList<TapButton*> row{m_bench, m_injector, m_birds, m_vessel};
    if (turns)
        row.append(m_more);
    const int bar = theme().metrics().ceilPx(Metrics::kMinimum);
    placeRow(row, QRect(0, height() - bar, width(), bar));
}

}  // namespace bathside::ui
