#include "ui/bench/ask_bag.h"

#include <QCoreApplication>

#include "ui/bench/ask_cells.h"
#include "ui/print/bag_label.h"
#include "ui/text/refusals.h"
#include "ui/text/subjects.h"
#include "ui/text/words.h"

namespace bathside::ui {
namespace {

constexpr auto kLabel = "label";
constexpr auto kCells = "cells";

struct BagText {
    Q_DECLARE_TR_FUNCTIONS(BagText)
};

// --- what can be said of a bag
// -----------------------------------------------------------------------------

void askWhyHeld(BenchContext& context, const BagId& bag)
{
    QList<Choice> choices;
    for (const HoldReason why : {HoldReason::Leak, HoldReason::Colour, HoldReason::WrongLot,
                                 HoldReason::AgeUnknown, HoldReason::Other})
        choices.append({.id = fromCore(std::string(nameOf(why))), .word = wordOf(why)});
    context.asker.choose(BagText::tr("On hold: why?"), choices,
                         [&context, bag](const QString& id, const AnswerTap& tap) {
                             const auto why = named<HoldReason>(id.toStdString());
                             context.say(HoldBag{bag, why.value_or(HoldReason::Other), {}}, tap);
                         });
}

void askVolumeLeft(BenchContext& context, const BagId& bag, DownReason why)
{
    const Bag* known = context.bench().bag(bag);
    const qint64 most =
        known ? known->volume.count + context.bench().card->content().syringe.count : 0;
    const NumberQuestion question{
        .title = BagText::tr("How much is left in the bag?"),
        .unit = QStringLiteral("mL"),
        .lowest = 0,
        .highest = most,
        .decimals = 3,
        .typedDecimals = 0,
        .suggested = why == DownReason::Empty ? std::optional<qint64>(0) : std::nullopt};
    context.asker.number(question, [&context, bag, why](qint64 left, const AnswerTap& tap) {
        context.say(TakeBagDown{bag, why, MicroLitres{left}}, tap);
    });
}

void askWhyDown(BenchContext& context, const BagId& bag)
{
    QList<Choice> choices;
    for (const DownReason why :
         {DownReason::Empty, DownReason::Expired, DownReason::Discarded, DownReason::Finished})
        choices.append({.id = fromCore(std::string(nameOf(why))),
                        .word = wordOf(why),
                        .line = BagText::tr("volume left …")});
    context.asker.choose(
        BagText::tr("Taken down: why?"), choices,
        [&context, bag](const QString& id, const AnswerTap&) {
            askVolumeLeft(context, bag,
                          named<DownReason>(id.toStdString()).value_or(DownReason::Finished));
        });
}

void askWhyReleased(BenchContext& context, const BagId& bag, const PersonId& by)
{
    const QList<Choice> choices{
        {.id = QStringLiteral("checked and good"), .word = BagText::tr("checked and good")},
        {.id = QStringLiteral("held by mistake"), .word = BagText::tr("held by mistake")},
        {.id = QStringLiteral("lead accepts it"), .word = BagText::tr("the lead accepts it")}};
    context.asker.choose(BagText::tr("Released: why?"), choices,
                         [&context, bag, by](const QString& id, const AnswerTap& tap) {
                             context.say(ReleaseBag{bag, by, id.toStdString()}, tap);
                         });
}

void askWhoReleases(BenchContext& context, const BagId& bag)
{
    if (context.bench().people.areListed()) {  // a signature is asked for, on the page for it
        context.asker.close();
        return context.goTo(QStringLiteral("review"));
    }
    context.asker.text({.title = BagText::tr("Which shift lead releases it? Initials"),
                        .shortest = 1,
                        .longest = 4,
                        .suggested = {}},
                       [&context, bag](const QString& text, const AnswerTap&) {
                           askWhyReleased(context, bag, {text.toStdString()});
                       });
}

/// One thing that can be said of a bag: at once, or after a question.
struct Saying {
    QString id, word;
    Intent intent;  // what decides whether it is offered; said as it is when nothing is asked
    void (*ask)(BenchContext&, const BagId&) = nullptr;
};

/// Who could release it, with a PIN where there is one; where nobody is listed, anybody.
PersonId someLead(const Bench& bench)
{
    PersonId lead{"?"};
    for (const auto& [id, member] : bench.people.members) {
        if (!may(bench.people, id, Act::Judge))
            continue;
        lead = id;
        if (member.hasPin)
            break;
    }
    return lead;
}

std::vector<Saying> sayings(const BenchContext& context, const Bag& bag)
{
    const BagId& id = bag.id;
    const auto drawn = context.bench().card->content().diluentDrawn;
    const std::string somebody = "?";
    return {
        {QStringLiteral("swirled"), BagText::tr("SWIRLED"), SwirlBag{id}},
        {QStringLiteral("inspected"), BagText::tr("INSPECTED: GOOD"), InspectBag{id, true}},
        {QStringLiteral("not-good"), BagText::tr("INSPECTED: NOT GOOD"), InspectBag{id, false}},
        {QStringLiteral("drawn"), BagText::tr("DILUENT DRAWN"), DrawDiluent{id, drawn}},
        {QStringLiteral("mixed"), BagText::tr("MIXED"), MixBag{id}},
        {QStringLiteral("hung"), bag.line ? BagText::tr("moved to …") : BagText::tr("hung on …"),
         HangBag{id, LineId{somebody}}, askWhereHung},
        {QStringLiteral("held"), BagText::tr("put on hold …"), HoldBag{id, HoldReason::Other, {}},
         askWhyHeld},
        {QStringLiteral("released"), BagText::tr("released …"),
         ReleaseBag{id, someLead(context.bench()), somebody}, askWhoReleases},
        {QStringLiteral("down"), BagText::tr("taken down …"),
         TakeBagDown{id, DownReason::Empty, {}}, askWhyDown},
    };
}

}  // namespace

void askBag(BenchContext& context, const BagId& bag)
{
    const Bag* known = context.bench().bag(bag);
    if (!known || !context.bench().card)
        return;
    QList<Choice> choices;
    const std::vector<Saying> all = sayings(context, *known);
    for (const Saying& saying : all) {
        const auto no = context.model.refusal(saying.intent);
        if (!no || no->code == RefusalCode::NoPin)
            choices.append({.id = saying.id,
                            .word = saying.word,
                            .reason = no ? refusalText(*no) : QString()});
    }
    if (const auto cells = cellsChoice(context, *known))
        choices.append(*cells);
    if (context.printLabel && bagLabel(context.model.state(), bag))
        choices.append({.id = QString::fromLatin1(kLabel),
                        .word = BagText::tr("print label"),
                        .mark = Mark::Sheet});
    context.asker.choose(subjectText(subjectOf(bag)), choices,
                         [&context, bag, all](const QString& id, const AnswerTap& tap) {
                             if (id == QLatin1String(kCells))
                                 return lookAtCells(context, bag);
                             if (id == QLatin1String(kLabel)) {
                                 context.asker.close();
                                 return context.printLabel(bag);
                             }
                             for (const Saying& saying : all) {
                                 if (saying.id != id)
                                     continue;
                                 if (saying.ask)
                                     return saying.ask(context, bag);
                                 return context.say(saying.intent, tap);
                             }
                         });
}

void askWhereHung(BenchContext& context, const BagId& bag)
{
    QList<Choice> choices;
    const auto add = [&](const LineId& line) {
        const auto refusal = context.model.refusal(HangBag{bag, line});
        choices.append({.id = QStringLiteral("line:") + idText(line),
                        .word = subjectText(subjectOf(line)),
                        .reason = refusal ? refusalText(*refusal) : QString()});
    };
    for (const auto& [id, line] : context.bench().lines)
        add(id);
    for (const std::string name : {"A", "B", "C", "D", "E", "F"}) {
        if (choices.size() < 6 && !context.bench().lines.contains({name}))
            add({name});
    }
    context.asker.choose(BagText::tr("%1: hung on which line?").arg(subjectText(subjectOf(bag))),
                         choices, [&context, bag](const QString& id, const AnswerTap& tap) {
                             context.say(HangBag{bag, LineId{id.mid(5).toStdString()}}, tap);
                         });
}

void askWhichBag(BenchContext& context)
{
    QList<Choice> choices;
    for (const Bag& bag : context.bench().bags) {
        if (bag.isOpen())
            choices.append({.id = QStringLiteral("bag:") + idText(bag.id),
                            .word = subjectText(subjectOf(bag.id))});
    }
    context.asker.choose(BagText::tr("Which bag?"), choices,
                         [&context](const QString& id, const AnswerTap&) {
                             askBag(context, {id.mid(4).toStdString()});
                         });
}

}  // namespace bathside::ui
