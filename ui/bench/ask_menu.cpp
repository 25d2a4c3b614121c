#include "ui/bench/ask_menu.h"

#include <QCoreApplication>

#include "core/bench/next.h"
#include "ui/bench/ask_bag.h"
#include "ui/bench/ask_line.h"
#include "ui/bench/ask_mend.h"
#include "ui/bench/ask_pull.h"
#include "ui/bench/ask_shift.h"

namespace bathside::ui {
namespace {

struct MenuText {
    Q_DECLARE_TR_FUNCTIONS(MenuText)
};

struct Item {
    const char* id;
    QString word;
    void (*ask)(BenchContext&);
};

std::vector<Item> shiftItems(const State& state)
{
    std::vector<Item> items{
        {"reading", MenuText::tr("bath reading …"), askReading},
        {"next-pull", MenuText::tr("next pull …"), askNextPull},
        {"bags", MenuText::tr("bags …"), askWhichBag},
        {"lines", MenuText::tr("lines …"), askWhichLine},
        {"new-bag", MenuText::tr("new bag …"), askNewBag},
        {"mend", MenuText::tr("correct …"), askCorrection},
        {"water", MenuText::tr("water changed …"), askWaterChanged},
        {"cane", MenuText::tr("cane out too long …"), askCane},
        {"note", MenuText::tr("note …"), askNote},
        {"duty", MenuText::tr("who is on duty …"), askDuty},
        {"close-shift", MenuText::tr("end of shift …"), askCloseShift},
    };
    if (!questions(state).empty())
        items.insert(items.begin(), {"questions", MenuText::tr("open questions …"), askQuestion});
    return items;
}

}  // namespace

void askMore(BenchContext& context)
{
    const std::vector<Item> items =
        context.bench().shiftIsOpen() ? shiftItems(context.model.state()) : std::vector<Item>{};
    QList<Choice> choices;
    for (const Item& item : items)
        choices.append({.id = QString::fromLatin1(item.id), .word = item.word});
    choices.append({.id = QStringLiteral("page:setup"), .word = MenuText::tr("set-up")});
    choices.append({.id = QStringLiteral("page:plan"), .word = MenuText::tr("plan")});
    choices.append({.id = QStringLiteral("page:stores"), .word = MenuText::tr("stores")});
    choices.append({.id = QStringLiteral("page:checks"), .word = MenuText::tr("checks")});
    choices.append({.id = QStringLiteral("page:review"), .word = MenuText::tr("review")});
    choices.append({.id = QStringLiteral("page:record"), .word = MenuText::tr("record")});
    context.asker.choose(MenuText::tr("What else?"), choices,
                         [&context, items](const QString& id, const AnswerTap&) {
                             if (id.startsWith(QLatin1String("page:"))) {
                                 context.asker.close();
                                 return context.goTo(id.mid(5));
                             }
                             for (const Item& item : items) {
                                 if (id == QLatin1String(item.id))
                                     return item.ask(context);
                             }
                         });
}

}  // namespace bathside::ui
