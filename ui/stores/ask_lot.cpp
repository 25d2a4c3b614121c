#include "ui/stores/ask_lot.h"

#include <QCoreApplication>
#include <QLocale>
#include <algorithm>

#include "core/stores/intake.h"
#include "ui/text/numbers.h"
#include "ui/text/stores.h"
#include "ui/text/subjects.h"

namespace bathside::ui {
namespace {

struct LotText {
    Q_DECLARE_TR_FUNCTIONS(LotText)
};

constexpr qint64 kMostPieces = 1'000'000;
constexpr auto kOther = "other";
constexpr int kLongestReason = 60;

using Placed = std::function<void(const std::string&, const AnswerTap&)>;
using Founded = std::function<void(const std::string& why, const AnswerTap&)>;

Choice back()
{
    return {.id = QStringLiteral("back"),
            .word = LotText::tr("back"),
            .role = Role::Quiet,
            .mark = Mark::Back};
}

NumberQuestion pieces(const QString& title, qint64 lowest, qint64 highest)
{
    return {.title = title,
            .unit = {},
            .lowest = lowest,
            .highest = highest,
            .decimals = 0,
            .typedDecimals = 0,
            .suggested = {}};
}

/// The one place of the lot, or which of several.
void askWhere(BenchContext& context, const Stock& of, const QString& title, Placed answered)
{
    const StockLot* lot = context.bench().stores.lot(of);
    if (!lot || lot->places.empty())
        return answered({}, {});
    if (lot->places.size() == 1)
        return answered(lot->places.begin()->first, {});
    constexpr qsizetype kMost = 8;
    QList<Choice> choices;
    for (const auto& [place, holding] : lot->places) {
        if (choices.size() < kMost)
            choices.append({.id = QStringLiteral("at:") + fromCore(place),
                            .word = placeWords(place),
                            .line = QString::number(holding.count)});
    }
    choices.append(back());
    context.asker.choose(
        title, choices,
        [&context, answered = std::move(answered)](const QString& id, const AnswerTap& tap) {
            if (!id.startsWith(QLatin1String("at:")))
                return context.asker.close();
            answered(id.mid(3).toStdString(), tap);
        });
}

/// As the record has it, and as the screen says it.
struct Reason {
    const char* id;
    QString word;
};

/// One of these, or another in letters.
void askReason(BenchContext& context, const QString& title, const std::vector<Reason>& reasons,
               Founded answered)
{
    QList<Choice> choices;
    for (const Reason& reason : reasons)
        choices.append(
            {.id = QStringLiteral("why:") + QString::fromLatin1(reason.id), .word = reason.word});
    choices.append({.id = QString::fromLatin1(kOther), .word = LotText::tr("another reason …")});
    choices.append(back());
    context.asker.choose(
        title, choices,
        [&context, title, answered = std::move(answered)](const QString& id, const AnswerTap& tap) {
            if (id.startsWith(QLatin1String("why:")))
                return answered(id.mid(4).toStdString(), tap);
            if (id != QLatin1String(kOther))
                return context.asker.close();
            context.asker.text(
                {.title = title, .shortest = 3, .longest = kLongestReason, .suggested = {}},
                [answered](const QString& why, const AnswerTap& said) {
                    answered(why.toStdString(), said);
                });
        });
}

void askCount(BenchContext& context, const Stock& of)
{
    const QString title = LotText::tr("%1: how many are there?").arg(stockText(of));
    askWhere(context, of, LotText::tr("Counted where?"),
             [&context, of, title](const std::string& place, const AnswerTap&) {
                 context.asker.number(pieces(title, 0, kMostPieces),
                                      [&context, of, place](qint64 count, const AnswerTap& tap) {
                                          context.say(CountStock{of, place, count}, tap);
                                      });
             });
}

void askMove(BenchContext& context, const Stock& of)
{
    const auto asked = [&context, of](const std::string& from, const AnswerTap&) {
        const auto counted = [&context, of, from](qint64 count, const AnswerTap&) {
            askStockPlace(context, of.kind, LotText::tr("Where to?"),
                          [&context, of, from, count](const std::string& to, const AnswerTap& tap) {
                              context.say(MoveStock{of, from, to, count}, tap);
                          });
        };
        context.asker.number(pieces(LotText::tr("How many are moved?"), 1, kMostPieces), counted);
    };
    askWhere(context, of, LotText::tr("Moved from where?"), asked);
}

void askWhyOut(BenchContext& context, const Stock& of, const std::string& place, qint64 count)
{
    QList<Choice> choices;
    for (const DiscardReason why :
         {DiscardReason::Broken, DiscardReason::Expired, DiscardReason::Thawed, DiscardReason::Used,
          DiscardReason::Other})
        choices.append({.id = fromCore(std::string(nameOf(why))), .word = wordOf(why)});
    choices.append(back());
    context.asker.choose(LotText::tr("Why are they taken out?"), choices,
                         [&context, of, place, count](const QString& id, const AnswerTap& tap) {
                             const auto why = named<DiscardReason>(id.toStdString());
                             if (!why)
                                 return context.asker.close();
                             context.say(DiscardStock{of, place, count, *why}, tap);
                         });
}

void askDiscard(BenchContext& context, const Stock& of)
{
    askWhere(context, of, LotText::tr("Taken out from where?"),
             [&context, of](const std::string& place, const AnswerTap&) {
                 context.asker.number(
                     pieces(LotText::tr("How many are taken out?"), 1, kMostPieces),
                     [&context, of, place](qint64 count, const AnswerTap&) {
                         askWhyOut(context, of, place, count);
                     });
             });
}

void askQuarantine(BenchContext& context, const Stock& of)
{
    askReason(context, LotText::tr("Why is %1 set apart?").arg(stockText(of)),
              {{"certificate missing", LotText::tr("certificate missing")},
               {"arrived damaged", LotText::tr("arrived damaged")},
               {"cryogen ran low", LotText::tr("cryogen ran low")},
               {"recalled by its maker", LotText::tr("recalled by its maker")}},
              [&context, of](const std::string& why, const AnswerTap& tap) {
                  context.say(QuarantineLot{of, {}, why}, tap);
              });
}

/// A shift lead's word: who they are, by PIN or, while nobody is listed, by initials; then why.
template <typename Said>
void askLead(BenchContext& context, const Stock& of, const std::vector<Reason>& reasons)
{
    constexpr int kLongestInitials = 4;
    const auto why = [&context, of, reasons](const PersonId& by) {
        askReason(context, LotText::tr("Why may %1 be used?").arg(stockText(of)), reasons,
                  [&context, of, by](const std::string& reason, const AnswerTap& tap) {
                      context.say(Said{of, by, reason}, tap);
                  });
    };
    if (context.bench().people.areListed())
        return context.sign(LotText::tr("%1 may be used").arg(stockText(of)), why);
    context.asker.text(
        {.title = LotText::tr("Shift lead's initials"),
         .shortest = 1,
         .longest = kLongestInitials,
         .suggested = {}},
        [why](const QString& initials, const AnswerTap&) { why({initials.toStdString()}); });
}

void askRelease(BenchContext& context, const Stock& of)
{
    askLead<ReleaseLot>(context, of,
                        {{"certificate seen", LotText::tr("certificate seen")},
                         {"never got warm", LotText::tr("never got warm")},
                         {"set apart by mistake", LotText::tr("set apart by mistake")}});
}

void askAllow(BenchContext& context, const Stock& of)
{
    askLead<AllowLot>(
        context, of,
        {{"certificate read out by telephone", LotText::tr("certificate read out by telephone")},
         {"no other lot is there", LotText::tr("no other lot is there")},
         {"agreed with the maker", LotText::tr("agreed with the maker")}});
}

void chooseNext(BenchContext& context, const Stock& of, const AnswerTap& tap)
{
    context.say(ChooseLot{{of.item}, of.lot, {}}, tap);
}

bool isApart(const StockLot& lot)
{
    return !lot.quarantine.empty() || std::ranges::any_of(lot.places, [](const auto& place) {
        return !place.second.quarantine.empty();
    });
}

QList<Choice> deedsFor(const Bench& bench, const StockLot& lot)
{
    const bool open = bench.shiftIsOpen();
    const bool fit = fitness(bench.stores, lot.of) == LotStanding::Fit;
    QList<Choice> choices{{.id = QStringLiteral("count"), .word = LotText::tr("count …")}};
    if (lot.balance() > 0) {
        choices.append({.id = QStringLiteral("move"), .word = LotText::tr("move …")});
        choices.append({.id = QStringLiteral("discard"), .word = LotText::tr("take out …")});
    }
    if (open && lot.of.kind == StockKind::Ampoule)
        choices.append(
            {.id = QStringLiteral("next"),
             .word = LotText::tr("use next", "the next ampoules are of this lot"),
             .role = fit ? Role::Primary : Role::Neutral,
             .reason = fit ? QString() : wordOf(standing(bench.stores, lot.of, bench.stores.day))});
    if (open && !fit)
        choices.append({.id = QStringLiteral("allow"),
                        .word = LotText::tr("allow today …"),
                        .line = LotText::tr("by the shift lead"),
                        .role = Role::HeadsUp});
    if (isApart(lot))
        choices.append({.id = QStringLiteral("release"),
                        .word = LotText::tr("end quarantine …"),
                        .line = LotText::tr("by the shift lead")});
    else
        choices.append({.id = QStringLiteral("quarantine"),
                        .word = LotText::tr("quarantine …"),
                        .role = Role::Limit});
    choices.append(back());
    return choices;
}

/// The lot, and what its label and certificate say of an ampoule.
QString labelText(const StockLot& lot)
{
    QStringList parts{stockText(lot.of)};
    if (lot.doses)
        parts.append(LotText::tr("%1 doses each").arg(countText(*lot.doses, QLocale())));
    if (lot.titre)
        parts.append(LotText::tr("%1 PFU a dose").arg(countText(*lot.titre, QLocale())));
    return parts.join(QStringLiteral(" · "));
}

QString titleOf(const StockLot& lot)
{
    std::string why = lot.quarantine;
    for (const auto& [place, holding] : lot.places) {
        if (why.empty())
            why = holding.quarantine;
    }
    return why.empty()
               ? labelText(lot)
               : LotText::tr("%1, in quarantine: %2").arg(stockText(lot.of), quarantineText(why));
}

}  // namespace

void askLot(BenchContext& context, const Stock& of)
{
    const StockLot* lot = context.bench().stores.lot(of);
    if (!lot)
        return;
    context.asker.choose(titleOf(*lot), deedsFor(context.bench(), *lot),
                         [&context, of](const QString& id, const AnswerTap& tap) {
                             if (id == QLatin1String("count"))
                                 return askCount(context, of);
                             if (id == QLatin1String("move"))
                                 return askMove(context, of);
                             if (id == QLatin1String("discard"))
                                 return askDiscard(context, of);
                             if (id == QLatin1String("quarantine"))
                                 return askQuarantine(context, of);
                             if (id == QLatin1String("release"))
                                 return askRelease(context, of);
                             if (id == QLatin1String("allow"))
                                 return askAllow(context, of);
                             if (id == QLatin1String("next"))
                                 return chooseNext(context, of, tap);
                             context.asker.close();
                         });
}

}  // namespace bathside::ui
