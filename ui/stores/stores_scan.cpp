// Scans on the stores page.

#include "core/bench/lots.h"
#include "core/scan/said.h"
#include "ui/stores/ask_lot.h"
#include "ui/stores/stores_page.h"
#include "ui/text/stores.h"

namespace bathside::ui {
namespace {

/// A delivery of which the label has said the lot and the expiry.
StoreReceived receiptOf(const ScannedCode& code, const LotId& lot)
{
    StoreReceived draft;
    draft.of.lot = lot;
    if (const auto expiry = expirySaid(code))
        draft.expires = std::chrono::sys_days(*expiry);
    return draft;
}

}  // namespace

bool StoresPage::usesScan(const QString& text, const TapStamp& stamp)
{
    if ((asksWhoSigns(m_signing) || m_ask->asksSecret()) && takesPerson(m_signing, text, stamp))
        return true;
    const Stores& stores = m_model.bench().stores;
    const auto code =
        scannedCodeFrom(text.toStdString(), std::chrono::year_month_day(day()).year());
    const auto lot = code ? lotOn(*code, stores) : std::nullopt;
    if (!lot)
        return false;
    const std::vector<Stock> known = stockOf(*code, stores);
    const StoreReceived draft = receiptOf(*code, *lot);
    put(View::Lots);
    ask(stamp, [&] {
        if (known.empty())
            return askReceipt(m_context, draft);
        askScanned(known);
    });
    return true;
}

void StoresPage::askScanned(const std::vector<Stock>& known)
{
    if (known.size() == 1)
        return askLot(m_context, known.front());
    QList<Choice> choices;
    for (std::size_t i = 0; i < known.size(); ++i)
        choices.append({.id = QStringLiteral("of:%1").arg(i), .word = stockText(known[i])});
    m_ask->choose(tr("Which of these?"), choices,
                  [this, known](const QString& id, const AnswerTap&) {
                      askLot(m_context, known.at(id.mid(3).toULongLong()));
                  },
                  {});
}

}  // namespace bathside::ui
