#include "ui/bench/ask_pull.h"

#include <QCoreApplication>

#include "ui/text/subjects.h"
#include "ui/text/words.h"

namespace bathside::ui {
namespace {

struct PullText {
    Q_DECLARE_TR_FUNCTIONS(PullText)
};

constexpr int kLongestLot = 20;
constexpr std::size_t kLotsOffered = 2;  // of each component

using Picked = std::function<void(const LotId&)>;

void askNewLot(BenchContext& context, const ComponentId& component, Picked picked)
{
    context.asker.text({.title = PullText::tr("Lot on the ampoule: %1").arg(idText(component)),
                        .shortest = 1,
                        .longest = kLongestLot,
                        .suggested = {}},
                       [picked = std::move(picked)](const QString& text, const AnswerTap&) {
                           picked({text.toStdString()});
                       });
}

struct Offer {
    ComponentId component;
    LotId lot;  // empty: a new one
};

std::vector<Offer> offers(const BenchContext& context)
{
    std::vector<Offer> found;
    for (const Component& component : context.bench().card->content().recipe) {
        const auto lots = knownLots(context.bench(), component.id);
        for (std::size_t i = 0; i < std::min(lots.size(), kLotsOffered); ++i)
            found.push_back({component.id, lots[i]});
        found.push_back({component.id, {}});
    }
    return found;
}

void add(BenchContext& context, const ComponentId& component, const LotId& lot)
{
    context.draft.add({.no = 0, .component = component, .lot = lot});
    context.draftChanged();
    if (context.draft.ampoules().size() < PullDraft::kMost)
        askAmpoule(context);
    else
        context.asker.close();
}

}  // namespace

// Every tap adds one and the question stays, so that three ampoules are three taps; the big button
// ends it.
void askAmpoule(BenchContext& context)
{
    if (!context.bench().card)
        return;
    const std::vector<Offer> all = offers(context);
    QList<Choice> choices;
    for (std::size_t i = 0; i < all.size(); ++i)
        choices.append(
            {.id = QStringLiteral("ampoule:%1").arg(i),
             .word = idText(all[i].component),
             .line = all[i].lot.empty() ? PullText::tr("another lot …") : idText(all[i].lot)});
    const int chosen = static_cast<int>(context.draft.ampoules().size());
    const Asker::Step step{.word = PullText::tr("CHOSEN"),
                           .line = ampoulesText(chosen),
                           .reason = {},
                           .done = [&context](const AnswerTap&) { context.asker.close(); }};
    context.asker.choose(
        PullText::tr("Ampoules of the next pull: one tap each"), choices,
        [&context, all](const QString& id, const AnswerTap&) {
            const Offer offer = all.at(id.mid(8).toULongLong());
            if (!offer.lot.empty())
                return add(context, offer.component, offer.lot);
            askNewLot(context, offer.component,
                      [&context, offer](const LotId& lot) { add(context, offer.component, lot); });
        },
        step);
}

void askLot(BenchContext& context, std::size_t index)
{
    if (index >= context.draft.ampoules().size())
        return;
    const ComponentId component = context.draft.ampoules()[index].component;
    const Picked picked = [&context, index](const LotId& lot) {
        context.draft.setLot(index, lot);
        context.draftChanged();
        if (const auto missing = context.draft.firstWithoutLot())
            return askLot(context, *missing);
        context.asker.close();
    };
    const auto lots = knownLots(context.bench(), component);
    if (lots.empty())
        return askNewLot(context, component, picked);
    QList<Choice> choices;
    for (const LotId& lot : lots)
        choices.append({.id = QStringLiteral("lot:") + idText(lot), .word = idText(lot)});
    choices.append({.id = QStringLiteral("new"), .word = PullText::tr("another lot …")});
    context.asker.choose(PullText::tr("Lot on the ampoule: %1").arg(idText(component)), choices,
                         [&context, component, picked](const QString& id, const AnswerTap&) {
                             if (id == QLatin1String("new"))
                                 return askNewLot(context, component, picked);
                             picked({id.mid(4).toStdString()});
                         });
}

}  // namespace bathside::ui
