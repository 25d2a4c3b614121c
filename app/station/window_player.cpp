#include "app/station/window_player.h"

#include <QCoreApplication>

#include "core/bench/next.h"
#include "ui/bench/bag_places.h"
#include "ui/frame/frame.h"
#include "ui/text/subjects.h"

namespace bathside::app {
namespace {

using ui::fromCore;
using ui::idText;

QString word(std::string_view text) { return fromCore(std::string(text)); }

constexpr auto kPane = "ask-pane";

}  // namespace

/// What a person does at the window to say each thing.
struct Sayer {
    WindowPlayer& player;
    Hand& hand;

    void operator()(const OpenShift& said) const
    {
        hand.press(QStringLiteral("step"));
        hand.enterText(idText(said.person));
    }
    void operator()(const CloseShift&) const
    {
        player.fromMenu(QStringLiteral("close-shift"));
        player.ask(QStringLiteral("close"));
    }
    void operator()(const TakeDuty& said) const
    {
        player.fromMenu(QStringLiteral("duty"));
        hand.enterText(idText(said.person));
    }
    void operator()(const RecordCheck& said) const
    {
        player.fromMenu(QStringLiteral("page:setup"));
        if (!said.ok)
            hand.press(QStringLiteral("setup.other"));
        if (said.check == kAlarmHeard)
            hand.press(QStringLiteral("setup.sound"));
        else
            player.pressCheck(said.check);
        if (said.check == kAlarmHeard || !said.ok)
            player.ask(said.ok ? QStringLiteral("heard") : QStringLiteral("not-ok"));
        hand.press(QStringLiteral("setup.bench"));
    }
    void operator()(const TakeReading& said) const
    {
        player.fromMenu(QStringLiteral("reading"));
        if (const QString probe = QStringLiteral("probe:") + idText(said.probe);
            hand.sees(QStringLiteral("ask.") + probe))
            player.ask(probe);
        if (const auto* value = std::get_if<MilliCelsius>(&said.value))
            hand.enterNumber(value->count, 3);
        else
            hand.fail(QStringLiteral("a person cannot type a probe's fault"));
    }
    void operator()(const StartBag& said) const { player.startBag(said); }
    void operator()(const InspectBag& said) const
    {
        const Next next = bathside::next(player.bench());
        if (next.deed == NextDeed::Inspect && (!said.bag || next.bag == said.bag))
            return hand.press(said.ok ? QStringLiteral("step") : QStringLiteral("side"));
        player.onBag(said.bag, said.ok ? QStringLiteral("inspected") : QStringLiteral("not-good"));
    }
    void operator()(const DrawDiluent& said) const
    {
        stepOr(NextDeed::DrawDiluent, said.bag, "drawn");
    }
    void operator()(const MixBag& said) const { stepOr(NextDeed::Mix, said.bag, "mixed"); }
    void operator()(const HangBag& said) const { player.hangBag(said); }
    void operator()(const SwirlBag& said) const
    {
        player.onBag(said.bag, QStringLiteral("swirled"));
    }
    void operator()(const HoldBag& said) const
    {
        player.onBag(said.bag, QStringLiteral("held"));
        player.ask(word(nameOf(said.why)));
    }
    void operator()(const TakeBagDown& said) const
    {
        player.onBag(said.bag, QStringLiteral("down"));
        player.ask(word(nameOf(said.why)));
        hand.enterNumber(said.left.count, 3);
    }
    void operator()(const TakeOut& said) const { player.takeOut(said); }
    void operator()(const MoveOn& said) const { player.moveOn(said); }
    void operator()(const LoseAmpoule& said) const
    {
        const QString end = player.laneOf(said.ampoule) + QStringLiteral(".end");
        hand.press(end);
        hand.press(end + u'.' + word(nameOf(said.why)));
    }
    void operator()(const CountBirds& said) const
    {
        player.onLine(said.line, QStringLiteral("birds"));
        hand.enterNumber(said.total, 0);
    }
    void operator()(const ChangeNeedle& said) const
    {
        player.onLine(said.line, QStringLiteral("needle"));
    }
    void operator()(const StopLine& said) const
    {
        player.onLine(said.line, QStringLiteral("stopped"));
    }
    void operator()(const GoLine& said) const { player.onLine(said.line, QStringLiteral("going")); }
    void operator()(const CheckDose& said) const
    {
        player.onLine(said.line,
                      said.ok ? QStringLiteral("dose-right") : QStringLiteral("dose-wrong"));
    }
    void operator()(const HearAlarm&) const { hand.press(QStringLiteral("heard")); }
    void operator()(const TakeBack&) const { hand.press(QStringLiteral("take-back")); }
    void operator()(const Answer& said) const
    {
        if (!hand.sees(QStringLiteral("ask.") + fromCore(said.choice)))
            player.fromMenu(QStringLiteral("questions"));
        player.ask(fromCore(said.choice));
    }
    void operator()(const MakeNote& said) const
    {
        player.fromMenu(QStringLiteral("note"));
        hand.enterText(fromCore(said.text));
    }
    void operator()(const ExposeCane& said) const
    {
        player.fromMenu(QStringLiteral("cane"));
        hand.enterText(fromCore(said.place));
        hand.enterNumber(std::chrono::duration_cast<std::chrono::seconds>(said.time).count(), 0);
    }
    void operator()(const PlanLine& said) const { player.planLine(said.plan); }
    void operator()(const CountStock& said) const { player.countStock(said); }
    void operator()(const DiscardStock& said) const { player.discardStock(said); }
    void operator()(const ChooseLot& said) const { player.chooseLot(said); }
    void operator()(const auto& other) const
    {
        hand.fail(
            QStringLiteral("the window has no way to say “%1”").arg(word(nameOf(Intent(other)))));
    }

private:
    void stepOr(NextDeed deed, const std::optional<BagId>& bag, const char* saying) const
    {
        const Next next = bathside::next(player.bench());
        if (next.deed == deed && (!bag || next.bag == bag))
            return hand.press(QStringLiteral("step"));
        player.onBag(bag, QString::fromLatin1(saying));
    }
};

std::optional<QString> WindowPlayer::play(const ScriptEntry& entry)
{
    runTo(entry.at);
    const Seq before = bench().lastSeq;
    say(entry.statement);
    QCoreApplication::processEvents();
    if (!m_hand.failed() && bench().lastSeq == before)
        m_hand.fail(QStringLiteral("nothing was taken"));
    if (!entry.id.empty())
        m_taken[entry.id] = {.again = false, .first = before + 1, .last = bench().lastSeq};
    if (m_hand.failed())
        return QStringLiteral("line %1 (%2): %3")
            .arg(entry.line)
            .arg(fromCore(entry.verb), m_hand.wrong());
    return std::nullopt;
}

void WindowPlayer::runTo(WallTime wall)
{
    const Stamp now = m_stage.clock.now();
    const BootTime target = now.boot + (wall - now.wall);
    while (const auto next = m_stage.station.nextChange()) {
        if (*next > target)
            break;
        m_stage.clock.runTo(*next);
        m_stage.model.tick();
    }
    m_stage.clock.runTo(wall);
    m_stage.model.tick();
}

void WindowPlayer::say(const Statement& statement)
{
    if (const auto* open = std::get_if<OpenShiftEntry>(&statement))
        return openShift(*open);
    if (const auto* correction = std::get_if<CorrectEntry>(&statement))
        return correct(*correction);
    if (const auto* delivery = std::get_if<DeliveryEntry>(&statement))
        return deliver(*delivery);
    const auto* intent = std::get_if<Intent>(&statement);
    if (!intent)
        return m_hand.fail(QStringLiteral("a restart cannot be played through the window"));
    const bool fromNoButton =
        std::holds_alternative<DescribeProbe>(*intent) || std::holds_alternative<Scan>(*intent);
    if (fromNoButton) {
        const TapInput tap{
            .place = {"script"}, .at = m_stage.clock.now(), .byReceipt = false, .id = {}};
        (void)m_stage.station.handle(*intent, tap);
        return;
    }
    if (!std::holds_alternative<Answer>(*intent))
        clearAway();
    std::visit(Sayer{*this, m_hand}, *intent);
}

void WindowPlayer::openShift(const OpenShiftEntry& open)
{
    Sayer{*this, m_hand}(open.shift);
    if (!open.allChecks || !bench().card)
        return;
    for (const Check& check : bench().card->content().checks) {
        clearAway();
        Sayer{*this, m_hand}(RecordCheck{check.id, true, {}});
    }
}

/// Its tile, leafing on to the page that has it.
void WindowPlayer::pressCheck(const CheckId& check)
{
    constexpr int kMostPages = 20;
    const QString tile = QStringLiteral("setup.check.") + idText(check);
    for (int page = 0; page < kMostPages && !m_hand.sees(tile); ++page)
        m_hand.press(QStringLiteral("setup.more"));
    m_hand.press(tile);
}

/// What is asked at the moment is put off: most places are behind it.
void WindowPlayer::clearAway()
{
    const auto* pane = m_stage.window.findChild<QWidget*>(QString::fromLatin1(kPane));
    if (pane && pane->isVisible())
        m_hand.press(QStringLiteral("more"));
}

void WindowPlayer::fromMenu(const QString& item)
{
    clearAway();
    m_hand.press(QStringLiteral("more"));
    ask(item);
}

void WindowPlayer::ask(const QString& id) { m_hand.press(QStringLiteral("ask.") + id); }

QString WindowPlayer::tileOf(const BagId& bag) const
{
    const auto places = ui::bagPlaces(bench());
    for (std::size_t i = 0; i < places.size(); ++i) {
        const QString place = QStringLiteral("bag.%1").arg(i + 1);
        if (places[i] && places[i]->id == bag && m_hand.sees(place))
            return place;
    }
    return {};
}

/// One tap on its tile in the critical window; else the tile, or the list of all bags, and the
/// saying.
void WindowPlayer::onBag(const std::optional<BagId>& bag, const QString& saying)
{
    if (!bag)
        return m_hand.fail(QStringLiteral("which bag?"));
    const QString tile = tileOf(*bag);
    if (!tile.isEmpty())
        m_hand.press(tile);
    else {
        fromMenu(QStringLiteral("bags"));
        ask(QStringLiteral("bag:") + idText(*bag));
    }
    if (!m_stage.model.isInCriticalWindow())
        ask(saying);
}

void WindowPlayer::onLine(const std::optional<LineId>& line, const QString& saying)
{
    if (!line)
        return m_hand.fail(QStringLiteral("which line?"));
    const QString place = QStringLiteral("lines.") + idText(*line);
    if (m_hand.sees(place))
        m_hand.press(place);
    else {
        fromMenu(QStringLiteral("lines"));
        ask(QStringLiteral("line:") + idText(*line));
    }
    ask(saying);
}

void WindowPlayer::correct(const CorrectEntry& correction)
{
    const auto taken = m_taken.find(correction.of);
    if (taken == m_taken.end())
        return m_hand.fail(QStringLiteral("corrects an entry that was not played"));
    const QString field = fromCore(correction.field);
    fromMenu(QStringLiteral("mend"));
    ask(QStringLiteral("said:%1").arg(taken->second.first));
    ask(field);
    const QString value = fromCore(correction.value);
    if (m_hand.sees(QStringLiteral("ask.value:") + value))
        ask(QStringLiteral("value:") + value);
    else if (m_hand.sees(QStringLiteral("pad.set")))
        m_hand.enterNumber(
            value.toLongLong() * (m_hand.sees(QStringLiteral("pad.sign")) ? 1000 : 1),
            m_hand.sees(QStringLiteral("pad.sign")) ? 3 : 0);
    else
        m_hand.enterText(value);
    ask(QStringLiteral("other"));
    m_hand.enterText(fromCore(correction.why));
}

}  // namespace bathside::app
