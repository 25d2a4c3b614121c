// A delivery typed, question by question.

#include <QCoreApplication>

#include "core/base/day.h"
#include "ui/stores/ask_lot.h"
#include "ui/text/numbers.h"
#include "ui/text/stores.h"
#include "ui/text/subjects.h"

namespace bathside::ui {
namespace {

struct ReceiptText {
    Q_DECLARE_TR_FUNCTIONS(ReceiptText)
};

constexpr qint64 kMostReceived = 1'000'000, kMostPfu = 1'000'000'000, kMostMicroLitres = 10'000'000;
constexpr int kLongestName = 40;

NumberQuestion whole(const QString& title, qint64 lowest, qint64 highest)
{
    return {.title = title,
            .unit = {},
            .lowest = lowest,
            .highest = highest,
            .decimals = 0,
            .typedDecimals = 0,
            .suggested = {}};
}

void askHowMany(BenchContext& context, const StoreReceived& draft)
{
    context.asker.number(
        whole(ReceiptText::tr("How many of %1?").arg(stockText(draft.of)), 1, kMostReceived),
        [&context, draft](qint64 count, const AnswerTap& tap) {
            StoreReceived line = draft;
            line.count = count;
            context.say(Receive{{line}}, tap);
        });
}

void askPlace(BenchContext& context, const StoreReceived& draft)
{
    askStockPlace(context, draft.of.kind, ReceiptText::tr("Where does it stand?"),
                  [&context, draft](const std::string& place, const AnswerTap&) {
                      StoreReceived next = draft;
                      next.place = place;
                      askHowMany(context, next);
                  });
}

void askTitre(BenchContext& context, const StoreReceived& draft)
{
    if (draft.of.kind != StockKind::Ampoule)
        return askPlace(context, draft);
    context.asker.number(
        whole(ReceiptText::tr("Titre by the certificate, PFU a dose; 0: none given"), 0, kMostPfu),
        [&context, draft](qint64 titre, const AnswerTap&) {
            StoreReceived next = draft;
            if (titre > 0)
                next.titre = titre;
            askPlace(context, next);
        });
}

/// Eight digits, as certificates print a day: year, month, day.
void askExpiry(BenchContext& context, const StoreReceived& draft)
{
    if (draft.expires)
        return askTitre(context, draft);
    constexpr qint64 kFirst = 20200101, kLast = 20991231;
    context.asker.number(
        whole(ReceiptText::tr("Good to which day? Year, month, day, e.g. 20270131"), kFirst, kLast),
        [&context, draft](qint64 digits, const AnswerTap&) {
            const std::string text = std::to_string(digits);
            const auto day =
                dayFrom(text.substr(0, 4) + "-" + text.substr(4, 2) + "-" + text.substr(6, 2));
            if (!day) {
                context.model.refuse({RefusalCode::BadValue, {}, "expires"});
                return;
            }
            StoreReceived next = draft;
            next.expires = *day;
            askTitre(context, next);
        });
}

void askDoses(BenchContext& context, const StoreReceived& draft)
{
    context.asker.number(whole(ReceiptText::tr("How many doses has an ampoule?"), 1, kMostReceived),
                         [&context, draft](qint64 doses, const AnswerTap&) {
                             StoreReceived next = draft;
                             next.doses = doses;
                             askExpiry(context, next);
                         });
}

/// A lot that is there already is as it was.
void askLotsOwn(BenchContext& context, StoreReceived draft)
{
    if (const StockLot* known = context.bench().stores.lot(draft.of)) {
        draft.doses = known->doses;
        draft.expires = known->expires;
        return askPlace(context, draft);
    }
    if (draft.of.kind == StockKind::Ampoule)
        return askDoses(context, draft);
    askExpiry(context, draft);
}

void askLotName(BenchContext& context, const StoreReceived& draft)
{
    if (!draft.of.lot.empty())
        return askLotsOwn(context, draft);
    context.asker.text({.title = ReceiptText::tr("Lot of %1").arg(itemText(draft.of)),
                        .shortest = 1,
                        .longest = kLongestName,
                        .suggested = {}},
                       [&context, draft](const QString& lot, const AnswerTap&) {
                           StoreReceived next = draft;
                           next.of.lot = {lot.trimmed().toStdString()};
                           askLotsOwn(context, next);
                       });
}

void askVolume(BenchContext& context, const StoreReceived& draft)
{
    QList<Choice> choices;
    for (const MicroLitres volume : context.bench().card->content().bagVolumes)
        choices.append(
            {.id = QStringLiteral("volume:%1").arg(volume.count), .word = volumeText(volume)});
    choices.append({.id = QStringLiteral("other"), .word = ReceiptText::tr("another volume …")});
    const auto with = [&context, draft](qint64 volume) {
        StoreReceived next = draft;
        next.of.volume = MicroLitres{volume};
        askLotName(context, next);
    };
    context.asker.choose(ReceiptText::tr("How large are the bags?"), choices,
                         [&context, with](const QString& id, const AnswerTap&) {
                             if (id != QLatin1String("other"))
                                 return with(id.mid(7).toLongLong());
                             context.asker.number(
                                 {.title = ReceiptText::tr("How large are the bags?"),
                                  .unit = QStringLiteral("mL"),
                                  .lowest = 1000,
                                  .highest = kMostMicroLitres,
                                  .decimals = 3,
                                  .typedDecimals = 0,
                                  .suggested = {}},
                                 [with](qint64 volume, const AnswerTap&) { with(volume); });
                         });
}

void askConsumable(BenchContext& context, const StoreReceived& known)
{
    context.asker.text({.title = ReceiptText::tr("Which consumable?"),
                        .shortest = 1,
                        .longest = kLongestName,
                        .suggested = {}},
                       [&context, known](const QString& name, const AnswerTap&) {
                           StoreReceived draft = known;
                           draft.of.kind = StockKind::Consumable;
                           draft.of.item = name.trimmed().toLower().toStdString();
                           askPlace(context, draft);
                       });
}

QList<Choice> sorts(const Bench& bench)
{
    QList<Choice> choices;
    for (const Component& part : bench.card->content().recipe)
        choices.append({.id = QStringLiteral("ampoule:") + idText(part.id),
                        .word = idText(part.id),
                        .line = ReceiptText::tr("ampoules")});
    choices.append({.id = QStringLiteral("diluent"), .word = ReceiptText::tr("diluent bags")});
    choices.append({.id = QStringLiteral("needle"), .word = ReceiptText::tr("needles")});
    choices.append(
        {.id = QStringLiteral("consumable"), .word = ReceiptText::tr("other consumables …")});
    choices.append({.id = QStringLiteral("back"),
                    .word = ReceiptText::tr("back"),
                    .role = Role::Quiet,
                    .mark = Mark::Back});
    return choices;
}

}  // namespace

void askReceipt(BenchContext& context, const StoreReceived& known)
{
    if (!context.bench().card)
        return context.model.refuse({RefusalCode::NoCard, {}, {}});
    const QString title =
        known.of.lot.empty()
            ? ReceiptText::tr("What came in?")
            : ReceiptText::tr("Lot %1 is new here. What is it?").arg(idText(known.of.lot));
    context.asker.choose(title, sorts(context.bench()),
                         [&context, known](const QString& id, const AnswerTap&) {
                             StoreReceived draft = known;
                             if (id.startsWith(QLatin1String("ampoule:"))) {
                                 draft.of.item = id.mid(8).toStdString();
                                 return askLotName(context, draft);
                             }
                             if (id == QLatin1String("diluent")) {
                                 draft.of.kind = StockKind::Diluent;
                                 return askVolume(context, draft);
                             }
                             if (id == QLatin1String("needle")) {
                                 draft.of.kind = StockKind::Consumable;
                                 draft.of.item = kNeedle;
                                 return askPlace(context, draft);
                             }
                             if (id == QLatin1String("consumable"))
                                 return askConsumable(context, known);
                             context.asker.close();
                         });
}

}  // namespace bathside::ui
