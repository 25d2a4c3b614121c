// Every control, in its states, both schemes and at 5.9 px/mm: all its words have to fit. The
// pictures are saved where BATHSIDE_PICTURES names a folder, for people to look at.

#include <QDir>
#include <QPainter>
#include <memory>

#include <gtest/gtest.h>

#include "ui/controls/alarm_strip.h"
#include "ui/controls/bag_tile.h"
#include "ui/controls/banner.h"
#include "ui/controls/big_clock.h"
#include "ui/controls/choice_grid.h"
#include "ui/controls/fact_list.h"
#include "ui/controls/label.h"
#include "ui/controls/lane_view.h"
#include "ui/controls/letter_pad.h"
#include "ui/controls/number_pad.h"
#include "ui/controls/page_bar.h"
#include "ui/controls/status_chip.h"
#include "ui/controls/step_button.h"
#include "ui/theme/mark.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

/// A sheet of controls; each is checked for room and drawn with the sheet.
class Sheet : public QWidget {
public:
    explicit Sheet(double widthMm, double heightMm) { resize(sizeOfMm(widthMm, heightMm)); }

    template <typename Made>
    Made* put(Made* made, double x, double y, double width, double height)
    {
        made->setParent(this);
        const Metrics& metrics = theme().metrics();
        made->setGeometry(metrics.ceilPx(x), metrics.ceilPx(y), metrics.ceilPx(width),
                          metrics.ceilPx(height));
        return made;
    }

protected:
    void paintEvent(QPaintEvent*) override
    {
        QPainter(this).fillRect(rect(), theme().palette().ground());
    }
};

void save(QWidget& sheet, const QString& name)
{
    const QString folder = qEnvironmentVariable("BATHSIDE_PICTURES");
    if (folder.isEmpty())
        return;
    QDir().mkpath(folder);
    const QString scheme =
        theme().scheme() == Scheme::Light ? QStringLiteral("light") : QStringLiteral("dark");
    ASSERT_TRUE(sheet.grab().save(QStringLiteral("%1/%2-%3.png").arg(folder, name, scheme)));
}

void expectWhole(const QWidget& sheet)
{
    for (const auto* control : sheet.findChildren<Control*>())
        EXPECT_TRUE(control->isHidden() || control->fits())
            << qPrintable(control->objectName()) << ": " << qPrintable(control->accessibleName());
}

class Pictures : public testing::TestWithParam<Scheme> {
protected:
    void SetUp() override { theme().setScheme(GetParam()); }
    void TearDown() override { theme().setScheme(Scheme::Light); }

    static void show(Sheet& sheet, const QString& name)
    {
        sheet.show();
        expectWhole(sheet);
        save(sheet, name);
    }
};

LaneState lane(int number, const QString& state, const QString& time, Role role,
               const QString& level, double used)
{
    return {.number = number,
            .what = QStringLiteral("serotype 3 · LOT-2041"),
            .state = state,
            .time = time,
            .level = level,
            .role = role,
            .used = used,
            .headsUp = 80.0 / 90,
            .uncertain = {},
            .open = true};
}

QList<Choice> ends()
{
    return {{.id = QStringLiteral("broken"), .word = QStringLiteral("broken")},
            {.id = QStringLiteral("dropped"), .word = QStringLiteral("dropped")},
            {.id = QStringLiteral("abandoned"), .word = QStringLiteral("abandoned")}};
}

void putLane(Sheet& sheet, double y, const LaneState& state)
{
    auto* view =
        sheet.put(new LaneView(QStringLiteral("lane.%1").arg(state.number)), 4, y, 122, 20);
    view->setEnds(ends(), QStringLiteral("lost"), QStringLiteral("keep"));
    view->setState(state);
}

TEST_P(Pictures, lanes)
{
    Sheet sheet(130, 150);
    putLane(sheet, 4,
            lane(1, QStringLiteral("in bath"), QStringLiteral("1:07"), Role::Good, {}, 0.25));
    putLane(sheet, 28,
            lane(2, QStringLiteral("in bath"), QStringLiteral("0:09"), Role::HeadsUp,
                 QStringLiteral("heads-up"), 0.9));
    putLane(sheet, 52,
            lane(3, QStringLiteral("in bath"), QStringLiteral("+0:02"), Role::Limit,
                 QStringLiteral("limit"), 1.02));
    putLane(sheet, 76,
            lane(4, QStringLiteral("opened"), QStringLiteral("+0:12"), Role::Overrun,
                 QStringLiteral("overrun"), 1.1));
    LaneState lost = lane(5, QStringLiteral("lost: broken"), {}, Role::Good, {}, -1);
    lost.open = false;
    putLane(sheet, 100, lost);
    auto* opened = sheet.put(new LaneView(QStringLiteral("lane.6")), 4, 124, 122, 23);
    opened->setEnds(ends(), QStringLiteral("lost"), QStringLiteral("keep"));
    opened->setState(
        lane(6, QStringLiteral("in bath"), QStringLiteral("1:07"), Role::Good, {}, 0.25));
    opened->findChild<TapButton*>(QStringLiteral("lane.6.end"))->press({});
    show(sheet, QStringLiteral("lanes"));
}

TEST_P(Pictures, clockAndStep)
{
    Sheet sheet(188, 110);
    sheet.put(new BigClock, 4, 4, 86, 50)
        ->setState({.time = QStringLiteral("0:23"),
                    .label = QStringLiteral("until in diluent"),
                    .level = {},
                    .role = Role::Good});
    sheet.put(new BigClock, 96, 4, 86, 50)
        ->setState({.time = QStringLiteral("+0:12"),
                    .label = QStringLiteral("past: into the diluent"),
                    .level = QStringLiteral("overrun"),
                    .role = Role::Overrun});
    auto* step = sheet.put(new StepButton(QStringLiteral("step")), 4, 60, 86, 44);
    step->setWord(QStringLiteral("OPENED"));
    step->setLine(QStringLiteral("2 ampoules"));
    auto* other = sheet.put(new StepButton(QStringLiteral("step2")), 96, 60, 86, 44);
    other->setWord(QStringLiteral("IN DILUENT"));
    other->setReason(QStringLiteral("No ampoule is out of the cryogen yet."));
    show(sheet, QStringLiteral("clock"));
}

TEST_P(Pictures, stripAndChips)
{
    Sheet sheet(217, 66);
    const auto chip = [&](double x, double y, double width, Role role, Mark mark,
                          const char16_t* main, const char16_t* detail) {
        sheet.put(new StatusChip(QStringLiteral("chip")), x, y, width, 14)
            ->setStatus(role, mark, QString::fromUtf16(main), QString::fromUtf16(detail));
    };
    chip(4, 4, 52, Role::Good, Mark::Drop, u"28.1 ± 0.2 °C", u"inside");
    chip(141, 4, 37, Role::Good, Mark::Sheet, u"recorded", u"");
    chip(181, 4, 32, Role::Good, Mark::Note, u"sound", u"");
    chip(4, 21, 52, Role::Limit, Mark::Drop, u"29.6 ± 0.2 °C", u"outside");
    chip(141, 21, 37, Role::Overrun, Mark::Sheet, u"NOT RECORDED", u"");
    chip(181, 21, 32, Role::Overrun, Mark::Note, u"NO SOUND", u"");
    const auto more = [](int n) { return QStringLiteral("+%1 more").arg(n); };
    sheet.put(new AlarmStrip, 59, 4, 79, 14)->setAlarms({}, QStringLiteral("nothing is due"), more);
    const AlarmLine swirl{Role::Limit, QStringLiteral("limit"),
                          QStringLiteral("Bag B4: swirl the bag gently"), true};
    const AlarmLine slush{Role::HeadsUp, QStringLiteral("heads-up"),
                          QStringLiteral("Ampoule 2: look for slush"), false};
    sheet.put(new AlarmStrip, 59, 21, 79, 14)->setAlarms({swirl, slush, slush}, {}, more);
    sheet.put(new Banner(QStringLiteral("rehearsal")), 4, 38, 209, 10)
        ->say(Role::Rehearsal, QStringLiteral("REHEARSAL"),
              QStringLiteral("Nothing here counts. It has a record of its own."));
    sheet.put(new Banner(QStringLiteral("refusal")), 4, 51, 209, 10)
        ->say(Role::HeadsUp, QStringLiteral("Not taken"),
              QStringLiteral("Ampoule 3 is lost. It takes no more steps."));
    show(sheet, QStringLiteral("strip"));
}

TEST_P(Pictures, bagsAndButtons)
{
    Sheet sheet(217, 66);
    const auto button = [&](double x, const char16_t* word, Mark mark) {
        auto* made = sheet.put(new TapButton(QString::fromUtf16(word)), x, 4, 30, 25);
        made->setWord(QString::fromUtf16(word));
        made->setMark(mark);
        return made;
    };
    button(4, u"take back", Mark::Back);
    button(39, u"heard", Mark::Ear)->setReason(QStringLiteral("nothing sounds"));
    const auto tile = [&](double x, double y, const BagState& state) {
        sheet.put(new BagTile(QStringLiteral("bag.") + state.name), x, y, 42, 25)->setState(state);
    };
    const QString swirl = QStringLiteral("swirl in 2 min");
    tile(74, 4,
         {QStringLiteral("bag B4"),
          QStringLiteral("line A"),
          QStringLiteral("41 min left"),
          swirl,
          {},
          Role::Good,
          0.32,
          0.75});
    tile(121, 4,
         {QStringLiteral("bag B5"), QStringLiteral("line B"), QStringLiteral("12 min left"), swirl,
          QStringLiteral("heads-up"), Role::HeadsUp, 0.8, 0.75});
    tile(168, 4,
         {QStringLiteral("bag B6"),
          {},
          QStringLiteral("on hold: leak"),
          {},
          QStringLiteral("limit"),
          Role::Limit,
          -1,
          -1});
    auto* chosen = button(4, u"broken", Mark::None);
    chosen->setGeometry(chosen->x(), theme().metrics().ceilPx(36), chosen->width(),
                        chosen->height());
    chosen->setChosen(true);
    auto* down = sheet.put(new TapButton(QStringLiteral("down")), 39, 36, 30, 25);
    down->setWord(QStringLiteral("pressed"));
    auto* facts = sheet.put(new FactList, 74, 36, 100, 25);
    facts->setFacts(
        {{QStringLiteral("in bath 1, 2"), QStringLiteral("09:41"), false, false},
         {QStringLiteral("out 1, 2, 3"), QStringLiteral("09:40"), true, false},
         {QStringLiteral("not taken: ampoule 3 is lost"), QStringLiteral("09:40"), true, true}});
    sheet.show();
    down->press({});
    show(sheet, QStringLiteral("bags"));
}

TEST_P(Pictures, choices)
{
    Sheet sheet(140, 80);
    auto* grid = sheet.put(new ChoiceGrid(QStringLiteral("why")), 4, 4, 132, 72);
    grid->setTitle(QStringLiteral("Why was ampoule 2 late into the diluent?"));
    grid->setChoices(
        {{.id = QStringLiteral("a"), .word = QStringLiteral("thawed slowly")},
         {.id = QStringLiteral("b"), .word = QStringLiteral("hands were full")},
         {.id = QStringLiteral("c"), .word = QStringLiteral("interrupted")},
         {.id = QStringLiteral("d"), .word = QStringLiteral("tapped late, was in time")},
         {.id = QStringLiteral("e"), .word = QStringLiteral("other")}});
    grid->setChosen(QStringLiteral("b"));
    show(sheet, QStringLiteral("choices"));
}

TEST_P(Pictures, numberPads)
{
    Sheet sheet(217, 190);
    const NumberQuestion bath{
        .title = QStringLiteral("Bath temperature, as the thermometer shows it"),
        .unit = QStringLiteral("°C"),
        .lowest = 1000,
        .highest = 60000,
        .decimals = 3,
        .typedDecimals = 1,
        .suggested = {}};
    sheet.put(new NumberPad(QStringLiteral("bath")), 4, 4, 209, 72)->ask(bath);
    auto* high = sheet.put(new NumberPad(QStringLiteral("bath2")), 4, 84, 209, 100);
    high->ask(bath);
    sheet.show();
    for (const char16_t* key : {u"9", u"9", u"set"})
        high->findChild<TapButton*>(QStringLiteral("bath2.") + QString::fromUtf16(key))->press({});
    show(sheet, QStringLiteral("numbers"));
}

TEST_P(Pictures, letterPad)
{
    Sheet sheet(217, 116);
    auto* pad = sheet.put(new LetterPad(QStringLiteral("initials")), 4, 4, 209, 108);
    pad->ask({.title = QStringLiteral("Your initials"),
              .shortest = 1,
              .longest = 8,
              .suggested = QStringLiteral("MK")});
    show(sheet, QStringLiteral("letters"));
}

TEST_P(Pictures, pageBar)
{
    Sheet sheet(217, 28);
    auto* bar = sheet.put(new PageBar(QStringLiteral("pages")), 4, 4, 209, 20);
    bar->setPages({{.id = QStringLiteral("bench"), .word = QStringLiteral("Bench")},
                   {.id = QStringLiteral("setup"), .word = QStringLiteral("Set-up")},
                   {.id = QStringLiteral("record"), .word = QStringLiteral("Record")},
                   {.id = QStringLiteral("language"), .word = QStringLiteral("Español")}});
    bar->setCurrent(QStringLiteral("bench"));
    show(sheet, QStringLiteral("pages"));
}

class MarkSheet final : public QWidget {
public:
    MarkSheet() { resize(sizeOfMm(kMarks * 12, 24)); }

protected:
    void paintEvent(QPaintEvent*) override
    {
        QPainter painter(this);
        const Metrics& metrics = theme().metrics();
        painter.fillRect(rect(), theme().palette().ground());
        for (int i = 0; i < kMarks; ++i)
            for (const double side : {6.0, 10.0})
                drawMark(painter,
                         {metrics.px(i * 12 + 1), metrics.px(side == 6.0 ? 2 : 11),
                          metrics.px(side), metrics.px(side)},
                         static_cast<Mark>(i), theme().palette().ink());
    }
};

TEST_P(Pictures, marks)
{
    MarkSheet sheet;
    save(sheet, QStringLiteral("marks"));
}

INSTANTIATE_TEST_SUITE_P(Schemes, Pictures, testing::Values(Scheme::Light, Scheme::Dark),
                         [](const auto& test) {
                             return test.param == Scheme::Light ? "Light" : "Dark";
                         });

}  // namespace
}  // namespace bathside::ui
