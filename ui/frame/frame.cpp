#include "ui/frame/frame.h"

#include <QEvent>
#include <QPainter>

#include "core/scan/said.h"
#include "core/scan/scanned_code.h"
#include "ui/controls/banner.h"
#include "ui/controls/pedal.h"
#include "ui/frame/edge.h"
#include "ui/frame/scan_listener.h"
#include "ui/frame/status_bar.h"
#include "ui/text/faults.h"
#include "ui/text/refusals.h"
#include "ui/text/scans.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

/// Where it helps to know which lot is expected.
bool isOfLot(RefusalCode code)
{
    return code == RefusalCode::WrongLot || code == RefusalCode::LotExpired ||
           code == RefusalCode::LotInQuarantine || code == RefusalCode::LotUnknown;
}

}  // namespace

Frame::Frame(StationModel& model, const Language& language, QWidget* parent)
    : QWidget(parent),
      m_model(model),
      m_rehearsal(new Banner(QStringLiteral("rehearsal"), this)),
      m_status(new StatusBar(model, language, this)),
      m_edge(new Edge(this)),
      m_pedal(new Pedal(this)),
      m_scanner(new ScanListener(this)),
      m_notice(new ScanNotice(this))
{
    connect(m_scanner, &ScanListener::scanned, this, &Frame::takeScan);
    connect(&m_model, &StationModel::taken, m_notice, &QWidget::hide);
    connect(&m_model, &StationModel::changed, this, &Frame::follow);
    connect(&theme(), &Theme::changed, this, [this] {
        place();
        update();
    });
    render();
}

void Frame::addPage(const QString& id, Page* page)
{
    page->setParent(this);
    page->hide();
    m_pages[id] = page;
    connect(page, &Page::asksFor, this, &Frame::showPage);
    connect(page, &Page::stepChanged, this, [this, page] {
        if (page == m_current)
            m_pedal->setTarget(page->step());
    });
    if (!m_current)
        put(page);
}

Page* Frame::page(const QString& id) const
{
    const auto found = m_pages.find(id);
    return found == m_pages.end() ? nullptr : found->second;
}

bool Frame::showPage(const QString& id)
{
    Page* wanted = page(id);
    if (!wanted || (m_model.isInCriticalWindow() && id != QLatin1String(kBench)))
        return false;
    put(wanted);
    return true;
}

void Frame::put(Page* page)
{
    if (page == m_current)
        return;
    if (m_current)
        m_current->hide();
    m_current = page;
    m_pedal->setTarget(page->step());
    place();
    page->show();
    m_notice->raise();
    m_edge->raise();
}

// In the window no page has it: nothing may ask or open there.
void Frame::takeScan(const QString& text, const TapStamp& stamp)
{
    m_notice->hide();
    const auto code = scannedCodeFrom(text.toStdString(), thisYear());
    if (const auto seal = code ? sealSaid(*code) : std::nullopt)
        return emit sealScanned(*seal, stamp);
    std::optional<Refusal> why;
    const auto listening = connect(&m_model, &StationModel::refused, this,
                                   [&why](const Refusal& refusal) { why = refusal; });
    const bool isUsed =
        !m_model.isInCriticalWindow() && m_current && m_current->usesScan(text, stamp);
    if (!isUsed)
        m_model.say(Scan{text.toStdString()}, stamp.inputMs, QString::fromLatin1(kScanPlace));
    disconnect(listening);
    if (why)
        showRefused(text, *why);
}

void Frame::showRefused(const QString& text, const Refusal& why)
{
    const auto year = thisYear();
    const auto code = scannedCodeFrom(text.toStdString(), year);
    const QString expected = isOfLot(why.code) ? expectedLotsText(m_model.bench()) : QString();
    notice({.title = scanRefusalWord(why.code),
            .scanned = scannedText(text, year),
            .expected = expected,
            .why = code ? refusalText(why) : faultText(code.error())});
}

void Frame::notice(const ScanNotice::Words& words)
{
    m_notice->say(words);
    m_edge->raise();
}

std::chrono::year Frame::thisYear() const
{
    const auto today = std::chrono::floor<std::chrono::days>(m_model.now().wall);
    return std::chrono::year_month_day(today).year();
}

void Frame::resizeEvent(QResizeEvent*) { place(); }

void Frame::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::LanguageChange)
        render();
    QWidget::changeEvent(event);
}

void Frame::paintEvent(QPaintEvent*)
{
    QPainter(this).fillRect(rect(), theme().palette().ground());
}

void Frame::place()
{
    constexpr double kBannerMm = 5.5, kAfterMm = 0.8;
    const Metrics& metrics = theme().metrics();
    const int margin = metrics.ceilPx(Edge::kThickMm);
    const int after = metrics.ceilPx(kAfterMm);
    const int wide = width() - 2 * margin;
    int top = margin;
    if (m_model.bench().rehearsal) {
        const int high = metrics.ceilPx(kBannerMm);
        m_rehearsal->setGeometry(margin, top, wide, high);
        top += high + after / 2;
    }
    const int strip = metrics.ceilPx(Metrics::kStrip);
    m_status->setGeometry(margin, top, wide, strip);
    top += strip + after;
    if (m_current)
        m_current->setGeometry(margin, top, wide, height() - margin - top);
    m_notice->setGeometry(margin, top, wide, metrics.ceilPx(ScanNotice::kHighMm));
    m_edge->setGeometry(rect());
}

void Frame::follow()
{
    if (m_model.isInCriticalWindow() && m_current != page(QLatin1String(kBench)))
        showPage(QLatin1String(kBench));
    render();
}

// Without sound the screen has to carry the alarm alone: at the level of the worst, or by itself.
void Frame::render()
{
    const Bench& bench = m_model.bench();
    if (bench.rehearsal)
        m_rehearsal->say(Role::Rehearsal, tr("REHEARSAL"),
                         tr("Nothing here counts. The real day has its own record."));
    else
        m_rehearsal->say(Role::Rehearsal, {}, {});
    const auto& due = m_model.alarms().due;
    const Level worst = due.empty() ? Level::Overrun : due.front().level;
    m_edge->show(bench.soundLost ? std::optional(worst) : std::nullopt);
}

}  // namespace bathside::ui
