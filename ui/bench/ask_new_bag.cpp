#include <QCoreApplication>

#include "core/bench/next.h"
#include "ui/bench/ask_bag.h"
#include "ui/models/big_step.h"
#include "ui/text/numbers.h"
#include "ui/text/refusals.h"
#include "ui/text/subjects.h"
#include "ui/text/words.h"

// A new bag: everything in one place, with what the last bag had, and the big button to say that it
// was started.

namespace bathside::ui {
namespace {

struct NewBagText {
    Q_DECLARE_TR_FUNCTIONS(NewBagText)
};

struct BagDraft {
    BagId bag;
    MicroLitres volume;
    LotId lot;
    std::optional<MilliCelsius> temperature;
};

/// As planned, else as the last one.
BagDraft suggestedBag(const StationModel& model)
{
    const Bench& bench = model.bench();
    BagDraft draft{.bag = nextBagName(bench), .volume = {}, .lot = {}, .temperature = {}};
    if (!bench.bags.empty()) {
        draft.volume = bench.bags.back().volume;
        draft.lot = bench.bags.back().diluentLot;
    }
    const auto& day = model.day();
    if (!day || !day->next)
        return draft;
    draft.volume = day->next->volume;
    if (const LotId lot = diluentToUse(bench.stores, draft.volume); !lot.empty())
        draft.lot = lot;
    return draft;
}

void askBagDraft(BenchContext& context, const BagDraft& draft);

void askDiluentLot(BenchContext& context, const BagDraft& draft)
{
    context.asker.text({.title = NewBagText::tr("Lot of the diluent"),
                        .shortest = 1,
                        .longest = 20,
                        .suggested = idText(draft.lot)},
                       [&context, draft](const QString& text, const AnswerTap&) {
                           BagDraft next = draft;
                           next.lot = {text.toStdString()};
                           askBagDraft(context, next);
                       });
}

void askBagName(BenchContext& context, const BagDraft& draft)
{
    context.asker.text({.title = NewBagText::tr("Name of the bag, as on its label"),
                        .shortest = 1,
                        .longest = 12,
                        .suggested = idText(draft.bag)},
                       [&context, draft](const QString& text, const AnswerTap&) {
                           BagDraft next = draft;
                           next.bag = {text.toStdString()};
                           askBagDraft(context, next);
                       });
}

void askDiluentTemperature(BenchContext& context, const BagDraft& draft)
{
    constexpr qint64 kHighest = 60'000;  // m°C
    const NumberQuestion question{
        .title = NewBagText::tr("Diluent: what does the thermometer show?"),
        .unit = QStringLiteral("°C"),
        .lowest = 0,
        .highest = kHighest,
        .decimals = 3,
        .typedDecimals = 2,
        .suggested = {}};
    context.asker.number(question, [&context, draft](qint64 value, const AnswerTap&) {
        BagDraft next = draft;
        next.temperature = MilliCelsius{value};
        askBagDraft(context, next);
    });
}

void askOtherVolume(BenchContext& context, const BagDraft& draft)
{
    constexpr qint64 kHighest = 5'000'000;  // µL
    const NumberQuestion question{.title = NewBagText::tr("How large is the bag?"),
                                  .unit = QStringLiteral("mL"),
                                  .lowest = 1000,
                                  .highest = kHighest,
                                  .decimals = 3,
                                  .typedDecimals = 0,
                                  .suggested = {}};
    context.asker.number(question, [&context, draft](qint64 value, const AnswerTap&) {
        BagDraft next = draft;
        next.volume = MicroLitres{value};
        askBagDraft(context, next);
    });
}

void answerDraft(BenchContext& context, BagDraft draft, const QString& id)
{
    if (id == QLatin1String("lot"))
        return askDiluentLot(context, draft);
    if (id == QLatin1String("temperature"))
        return askDiluentTemperature(context, draft);
    if (id == QLatin1String("name"))
        return askBagName(context, draft);
    if (id == QLatin1String("volume"))
        return askOtherVolume(context, draft);
    draft.volume = MicroLitres{id.toLongLong()};
    askBagDraft(context, draft);
}

QString missing(const BenchContext& context, const BagDraft& draft)
{
    if (draft.volume.count == 0)
        return NewBagText::tr("Which volume?");
    if (draft.lot.empty())
        return NewBagText::tr("Which lot of diluent?");
    const auto refusal =
        context.model.refusal(StartBag{draft.bag, draft.volume, draft.lot, draft.temperature});
    return refusal ? refusalText(*refusal) : QString();
}

QList<Choice> draftChoices(const BenchContext& context, const BagDraft& draft)
{
    QList<Choice> choices;
    bool offered = false;
    for (const MicroLitres volume : context.bench().card->content().bagVolumes) {
        const bool is = volume == draft.volume;
        offered = offered || is;
        choices.append({.id = QString::number(volume.count),
                        .word = volumeText(volume),
                        .role = is ? Role::Good : Role::Neutral,
                        .mark = is ? Mark::Tick : Mark::None});
    }
    if (!offered && draft.volume.count > 0)
        choices.append({.id = QStringLiteral("volume"),
                        .word = volumeText(draft.volume),
                        .role = Role::Good,
                        .mark = Mark::Tick});
    else
        choices.append({.id = QStringLiteral("volume"), .word = NewBagText::tr("other volume …")});
    const auto filled = [](bool is) { return is ? Role::Good : Role::HeadsUp; };
    choices.append({.id = QStringLiteral("lot"),
                    .word = draft.lot.empty() ? NewBagText::tr("which lot?") : idText(draft.lot),
                    .line = NewBagText::tr("lot of the diluent …"),
                    .role = filled(!draft.lot.empty())});
    choices.append({.id = QStringLiteral("temperature"),
                    .word = draft.temperature ? temperatureText(*draft.temperature)
                                              : NewBagText::tr("how warm?"),
                    .line = NewBagText::tr("diluent …"),
                    .role = draft.temperature ? Role::Good : Role::Neutral});
    choices.append({.id = QStringLiteral("name"),
                    .word = idText(draft.bag),
                    .line = NewBagText::tr("name of the bag …")});
    return choices;
}

void askBagDraft(BenchContext& context, const BagDraft& draft)
{
    const Asker::Step step{
        .word = doneWord(NextDeed::StartBag, {}),
        .line = idText(draft.bag),
        .reason = missing(context, draft),
        .done = [&context, draft](const AnswerTap& tap) {
            if (draft.volume.count == 0 || draft.lot.empty())
                return context.model.refuse(
                    {RefusalCode::BadValue, {}, draft.lot.empty() ? "lot" : "volume"});
            context.say(StartBag{draft.bag, draft.volume, draft.lot, draft.temperature}, tap);
        }};
    context.asker.choose(
        NewBagText::tr("A new bag of diluent"), draftChoices(context, draft),
        [&context, draft](const QString& id, const AnswerTap&) { answerDraft(context, draft, id); },
        step);
}

}  // namespace

void askNewBag(BenchContext& context)
{
    if (!context.bench().card)
        return;
    askBagDraft(context, suggestedBag(context.model));
}

}  // namespace bathside::ui
