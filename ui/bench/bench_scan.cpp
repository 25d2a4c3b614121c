// Scans on the bench page.

#include "core/bench/lots.h"
#include "core/scan/said.h"
#include "ui/bench/ask_bag.h"
#include "ui/bench/bench_page.h"
#include "ui/frame/frame.h"
#include "ui/text/time.h"

namespace bathside::ui {
namespace {

constexpr auto kChoicePlace = "scan.lot";

/// A bag's name is used again on another day; its label has the day on which it was mixed.
bool isOf(const BagCode& code, const Bag& bag, const std::string& zone)
{
    const Moment& mixed = bag.mixed ? *bag.mixed : bag.started;
    return localDay(mixed.at.wall, zone) == std::chrono::sys_days(code.mixed);
}

}  // namespace

bool BenchPage::usesScan(const QString& text, const TapStamp& stamp)
{
    const auto today = std::chrono::floor<std::chrono::days>(m_model.now().wall);
    const auto code =
        scannedCodeFrom(text.toStdString(), std::chrono::year_month_day(today).year());
    if (!code)
        return false;
    if (const auto bag = bagSaid(*code)) {
        showScannedBag(*bag, text, stamp);
        return true;
    }
    for (const Stock& of : stockOf(*code, m_model.bench().stores)) {
        if (of.kind == StockKind::Ampoule)
            planScanned(of, text, stamp);
    }
    return false;
}

void BenchPage::showScannedBag(const BagCode& code, const QString& text, const TapStamp& stamp)
{
    const Bag* bag = m_model.bench().bag(code.bag);
    if (!bag || !isOf(code, *bag, m_context.zoneNow()))
        return m_model.refuse({RefusalCode::NoSuchBag, subjectOf(code.bag), {}});
    if (!bag->isOpen())
        return m_model.refuse({RefusalCode::BagIsDown, subjectOf(code.bag), {}});
    if (m_model.say(Scan{text.toStdString()}, stamp.inputMs,
                    QString::fromLatin1(Frame::kScanPlace)))
        ask(stamp, [this, id = code.bag] { askBag(m_context, id); });
}

// What the plan or a person has put on the screen is expected, too. What is scanned last is what
// will be taken out.
void BenchPage::planScanned(const Stock& of, const QString& text, const TapStamp& stamp)
{
    const ComponentId component{of.item};
    const ChooseLot choice{component, of.lot, {}};
    if (m_draft.has(component, of.lot) && !mayGoNext(m_model.bench(), component, of.lot) &&
        m_model.wouldTake(choice))
        m_model.say(choice, stamp.inputMs, QString::fromLatin1(kChoicePlace));
    if (!m_model.wouldTake(Scan{text.toStdString()}))
        return;
    m_draft.setLotOf(component, of.lot);
    render();
}

}  // namespace bathside::ui
