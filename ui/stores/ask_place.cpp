// Where something stands or goes: a place in use, or a new one by its parts.

#include <QCoreApplication>
#include <set>

#include "ui/stores/ask_lot.h"
#include "ui/text/subjects.h"

namespace bathside::ui {
namespace {

struct PlaceText {
    Q_DECLARE_TR_FUNCTIONS(LotText)
};

constexpr auto kOtherPlace = "other";
constexpr int kLongestPart = 20;

using Placed = std::function<void(const std::string&, const AnswerTap&)>;

/// Asks for each part in turn; a single one for what does not stand in a vessel.
void askParts(BenchContext& context, QStringList titles, QStringList parts, Placed answered)
{
    const QString title = titles.takeFirst();
    context.asker.text({.title = title, .shortest = 1, .longest = kLongestPart, .suggested = {}},
                       [&context, titles, parts, answered = std::move(answered)](
                           const QString& part, const AnswerTap& tap) {
                           const QStringList all = parts + QStringList{part.trimmed()};
                           if (!titles.isEmpty())
                               return askParts(context, titles, all, answered);
                           answered(
                               placeText(all.value(0).toStdString(), all.value(1).toStdString(),
                                         all.value(2).toStdString()),
                               tap);
                       });
}

void askNewPlace(BenchContext& context, StockKind kind, const Placed& answered)
{
    const bool inVessel = kind == StockKind::Ampoule;
    askParts(context,
             inVessel ? QStringList{PlaceText::tr("Which vessel?"),
                                    PlaceText::tr("Which canister?"), PlaceText::tr("Which cane?")}
                      : QStringList{PlaceText::tr("Which shelf or box?")},
             {}, answered);
}

}  // namespace

void askStockPlace(BenchContext& context, StockKind kind, const QString& title, Placed answered)
{
    constexpr qsizetype kMost = 7;
    std::set<std::string> places;
    for (const auto& [of, lot] : context.bench().stores.lots) {
        for (const auto& [place, holding] : lot.places) {
            if (of.kind == kind && !place.empty())
                places.insert(place);
        }
    }
    if (places.empty())
        return askNewPlace(context, kind, answered);
    QList<Choice> choices;
    for (const std::string& place : places) {
        if (choices.size() < kMost)
            choices.append(
                {.id = QStringLiteral("at:") + fromCore(place), .word = fromCore(place)});
    }
    choices.append(
        {.id = QString::fromLatin1(kOtherPlace), .word = PlaceText::tr("another place …")});
    choices.append({.id = QStringLiteral("back"),
                    .word = PlaceText::tr("back"),
                    .role = Role::Quiet,
                    .mark = Mark::Back});
    context.asker.choose(
        title, choices,
        [&context, kind, answered = std::move(answered)](const QString& id, const AnswerTap& tap) {
            if (id.startsWith(QLatin1String("at:")))
                return answered(id.mid(3).toStdString(), tap);
            if (id == QLatin1String(kOtherPlace))
                return askNewPlace(context, kind, answered);
            context.asker.close();
        });
}

}  // namespace bathside::ui
