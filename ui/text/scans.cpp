#include "ui/text/scans.h"

#include <QCoreApplication>
#include <QStringList>

#include "core/base/day.h"
#include "core/bench/lots.h"
#include "core/scan/said.h"
#include "ui/text/subjects.h"

namespace bathside::ui {
namespace {

struct ScanText {
    Q_DECLARE_TR_FUNCTIONS(ScanText)
};

QString shortened(QString text)
{
    constexpr qsizetype kMost = 40;
    for (QChar& sign : text) {
        if (!sign.isPrint())
            sign = u' ';
    }
    return text.size() > kMost ? text.left(kMost) + QChar(u'…') : text;
}

}  // namespace

QString scanRefusalWord(RefusalCode code)
{
    switch (code) {
        case RefusalCode::WrongLot:
            return ScanText::tr("WRONG LOT");
        case RefusalCode::LotExpired:
            return ScanText::tr("LOT EXPIRED");
        case RefusalCode::LotInQuarantine:
            return ScanText::tr("LOT IN QUARANTINE");
        case RefusalCode::LotUnknown:
            return ScanText::tr("UNKNOWN LOT");
        case RefusalCode::LotDiffers:
            return ScanText::tr("LABEL DIFFERS");
        case RefusalCode::BadValue:
            return ScanText::tr("NOT READ");
        default:
            return ScanText::tr("NOT TAKEN");
    }
}

QString scannedText(const QString& text, std::chrono::year now)
{
    const auto code = scannedCodeFrom(text.toStdString(), now);
    const auto lot = code ? lotSaid(*code) : std::nullopt;
    if (const auto person = code ? personSaid(*code) : std::nullopt)
        return ScanText::tr("Scanned: person %1").arg(shortened(idText(*person)));
    if (!lot)
        return ScanText::tr("Scanned: %1").arg(shortened(text));
    const auto expiry = expirySaid(*code);
    if (!expiry)
        return ScanText::tr("Scanned: lot %1").arg(shortened(idText(*lot)));
    return ScanText::tr("Scanned: lot %1, good to %2")
        .arg(shortened(idText(*lot)), fromCore(toText(std::chrono::sys_days(*expiry))));
}

QString expectedLotsText(const Bench& bench)
{
    QStringList lots;
    if (bench.card) {
        for (const Component& part : bench.card->content().recipe) {
            if (const LotId lot = expectedLot(bench, part.id); !lot.empty())
                //: %1 is a component of the vaccine, %2 its lot.
                lots.append(ScanText::tr("%1 lot %2").arg(idText(part.id), idText(lot)));
        }
    }
    if (const Bag* bag = bench.bagBeingMadeUp(); bag && !bag->diluentLot.empty())
        lots.append(ScanText::tr("diluent lot %1").arg(idText(bag->diluentLot)));
    return lots.isEmpty() ? QString()
                          : ScanText::tr("Expected: %1").arg(lots.join(QStringLiteral(" · ")));
}

}  // namespace bathside::ui
