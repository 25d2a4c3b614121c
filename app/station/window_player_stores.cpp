#include <algorithm>

#include "app/station/window_player.h"
#include "ui/frame/frame.h"
#include "ui/stores/lot_tile.h"
#include "ui/text/subjects.h"

// The stores and the day's plan, pressed as a person would: the page, what is asked there, and back
// to the bench.

namespace bathside::app {
namespace {

using ui::fromCore;
using ui::idText;

/// As the pad takes a time of day: 0730.
qint64 digitsOf(Millis time)
{
    const auto minutes = std::chrono::duration_cast<std::chrono::minutes>(time).count();
    return minutes / 60 * 100 + minutes % 60;
}

const LinePlanned* plannedLine(const Bench& bench, const LineId& line)
{
    const auto found = std::ranges::find(bench.planned, line, &LinePlanned::line);
    return found == bench.planned.end() ? nullptr : &*found;
}

}  // namespace

void WindowPlayer::toPage(const char* page)
{
    fromMenu(QStringLiteral("page:") + QString::fromLatin1(page));
}

void WindowPlayer::deliver(const DeliveryEntry& delivery)
{
    toPage(ui::Frame::kStores);
    m_hand.press(QStringLiteral("stores.file"));
    ask(QStringLiteral("file:") + fromCore(delivery.file));
    m_hand.press(QStringLiteral("stores.take"));
    m_hand.press(QStringLiteral("stores.bench"));
}

/// The lot's tile, leafing on to the page that has it, and what is to be done with it.
void WindowPlayer::onLot(const Stock& of, const QString& deed)
{
    constexpr int kMostPages = 20;
    toPage(ui::Frame::kStores);
    for (int page = 0; page < kMostPages && !m_hand.failed(); ++page) {
        for (const ui::LotTile* tile : m_stage.window.findChildren<ui::LotTile*>()) {
            if (tile->isVisible() && tile->lot() == of) {
                m_hand.press(tile->objectName());
                return ask(deed);
            }
        }
        m_hand.press(QStringLiteral("stores.more"));
    }
    m_hand.fail(QStringLiteral("no such lot is shown"));
}

/// Where a lot lies in several places, it is asked which.
void WindowPlayer::atPlace(const std::string& place)
{
    if (const QString at = QStringLiteral("at:") + fromCore(place);
        m_hand.sees(QStringLiteral("ask.") + at))
        ask(at);
}

void WindowPlayer::countStock(const CountStock& meant)
{
    onLot(meant.of, QStringLiteral("count"));
    atPlace(meant.place);
    m_hand.enterNumber(meant.count, 0);
    m_hand.press(QStringLiteral("stores.bench"));
}

void WindowPlayer::discardStock(const DiscardStock& meant)
{
    onLot(meant.of, QStringLiteral("discard"));
    atPlace(meant.place);
    m_hand.enterNumber(meant.count, 0);
    ask(fromCore(std::string(nameOf(meant.why))));
    m_hand.press(QStringLiteral("stores.bench"));
}

void WindowPlayer::chooseLot(const ChooseLot& meant)
{
    onLot(
        {.kind = StockKind::Ampoule, .item = meant.component.text, .lot = meant.lot, .volume = {}},
        QStringLiteral("next"));
    m_hand.press(QStringLiteral("stores.bench"));
}

/// A new line by its three figures; of a known one the first figure that differs.
void WindowPlayer::planLine(const LinePlanned& plan)
{
    const LinePlanned* known = plannedLine(bench(), plan.line);
    toPage(ui::Frame::kPlan);
    m_hand.press(QStringLiteral("plan.lines"));
    ask(QStringLiteral("line:") + idText(plan.line));
    if (known)
        changeLine(*known, plan);
    else {
        m_hand.enterNumber(plan.birds, 0);
        m_hand.enterNumber(plan.birdsPerHour, 0);
        m_hand.enterNumber(digitsOf(plan.start), 0);
    }
    m_hand.press(QStringLiteral("plan.bench"));
}

void WindowPlayer::changeLine(const LinePlanned& known, const LinePlanned& plan)
{
    if (plan.removed) {
        ask(QStringLiteral("remove"));
        return ask(QStringLiteral("sure"));
    }
    if (plan.birds != known.birds) {
        ask(QStringLiteral("birds"));
        return m_hand.enterNumber(plan.birds, 0);
    }
    if (plan.birdsPerHour != known.birdsPerHour) {
        ask(QStringLiteral("rate"));
        return m_hand.enterNumber(plan.birdsPerHour, 0);
    }
    if (plan.start != known.start) {
        ask(QStringLiteral("start"));
        return m_hand.enterNumber(digitsOf(plan.start), 0);
    }
    if (plan.breaks.size() != known.breaks.size() + 1)
        return m_hand.fail(QStringLiteral("one figure of a line at a time"));
    ask(QStringLiteral("break"));
    m_hand.enterNumber(digitsOf(plan.breaks.back().from), 0);
    m_hand.enterNumber(digitsOf(plan.breaks.back().to), 0);
}

}  // namespace bathside::app
