#include <algorithm>

#include "app/station/window_player.h"
#include "core/bench/next.h"
#include "ui/controls/tap_button.h"
#include "ui/models/big_step.h"
#include "ui/models/lanes.h"
#include "ui/text/subjects.h"

// The pull and its bag, pressed as a person would: the big button where it says just that, else the
// lanes.

namespace bathside::app {
namespace {

using ui::idText;

bool same(std::vector<int> a, std::vector<int> b)
{
    std::ranges::sort(a);
    std::ranges::sort(b);
    return a == b;
}

bool same(const std::vector<AmpouleTaken>& a, const std::vector<AmpouleTaken>& b)
{
    return std::ranges::equal(a, b, [](const AmpouleTaken& one, const AmpouleTaken& other) {
        return one.component == other.component && one.lot == other.lot;
    });
}

}  // namespace

QString WindowPlayer::laneOf(int ampoule) const
{
    const auto shown =
        ui::lanes(bench(), m_stage.bench.draft(), m_stage.model.alarms(), m_stage.clock.now());
    for (std::size_t i = 0; i < shown.size(); ++i) {
        if (shown[i].ampoule.no == ampoule)
            return QStringLiteral("lane.%1").arg(i + 1);
    }
    return {};
}

void WindowPlayer::takeOut(const TakeOut& meant)
{
    if (!same(meant.ampoules, m_stage.bench.draft().ampoules()))
        compose(meant.ampoules);
    m_hand.press(QStringLiteral("step"));
}

/// The lanes are emptied and chosen anew, one tap an ampoule.
void WindowPlayer::compose(const std::vector<AmpouleTaken>& wanted)
{
    while (!m_stage.bench.draft().empty() && !m_hand.failed()) {
        m_hand.press(QStringLiteral("lane.1.end"));
        m_hand.press(QStringLiteral("lane.1.end.remove"));
    }
    m_hand.press(QStringLiteral("add-ampoule"));
    for (const AmpouleTaken& each : wanted)
        choose(each);
    m_hand.press(QStringLiteral("step"));  // chosen
}

void WindowPlayer::choose(const AmpouleTaken& wanted)
{
    QString fresh;
    for (int i = 0; m_hand.sees(QStringLiteral("ask.ampoule:%1").arg(i)); ++i) {
        const QString place = QStringLiteral("ask.ampoule:%1").arg(i);
        const ui::TapButton* offer = m_hand.find(place);
        if (offer->word() != idText(wanted.component))
            continue;
        if (offer->line() == idText(wanted.lot))
            return m_hand.press(place);
        fresh = place;  // the last one of a component is for another lot
    }
    m_hand.press(fresh);
    m_hand.enterText(idText(wanted.lot));
}

void WindowPlayer::moveOn(const MoveOn& meant)
{
    const Next next = bathside::next(bench());
    const auto side = ui::sideStep(m_stage.model);
    const auto* later = side && side->intent ? std::get_if<MoveOn>(&*side->intent) : nullptr;
    const bool all = meant.ampoules.empty() || same(meant.ampoules, next.ampoules);
    const Bag* bag = bench().bagBeingMadeUp();
    const bool usual = !meant.bag || (bag && bag->id == *meant.bag);
    if (next.deed == NextDeed::MoveOn && next.step == meant.step && all && usual)
        return m_hand.press(QStringLiteral("step"));
    if (later && later->step == meant.step && all && usual)
        return m_hand.press(QStringLiteral("side"));
    for (const int ampoule : meant.ampoules)
        m_hand.press(usual ? laneOf(ampoule) : tileOf(*meant.bag));
}

void WindowPlayer::startBag(const StartBag& meant)
{
    const bool onStep =
        ui::bigStep(m_stage.model, m_stage.bench.draft()).asks == ui::BigStep::Asks::Bag;
    if (onStep)
        m_hand.press(QStringLiteral("step"));
    else
        fromMenu(QStringLiteral("new-bag"));
    if (meant.bag != ui::nextBagName(bench())) {
        ask(QStringLiteral("name"));
        m_hand.enterText(idText(meant.bag));
    }
    if (const QString volume = QString::number(meant.volume.count);
        m_hand.sees(QStringLiteral("ask.") + volume))
        ask(volume);
    else {
        ask(QStringLiteral("volume"));
        m_hand.enterNumber(meant.volume.count, 3);
    }
    if (bench().bags.empty() || bench().bags.back().diluentLot != meant.diluentLot) {
        ask(QStringLiteral("lot"));
        m_hand.enterText(idText(meant.diluentLot));
    }
    if (meant.temperature) {
        ask(QStringLiteral("temperature"));
        m_hand.enterNumber(meant.temperature->count, 3);
    }
    m_hand.press(QStringLiteral("step"));
}

void WindowPlayer::hangBag(const HangBag& meant)
{
    const Next next = bathside::next(bench());
    const auto big = ui::bigStep(m_stage.model, m_stage.bench.draft());
    const auto* offered = big.intent ? std::get_if<HangBag>(&*big.intent) : nullptr;
    const bool isNext = next.deed == NextDeed::Hang && (!meant.bag || next.bag == meant.bag);
    if (isNext && offered && offered->line == meant.line)
        return m_hand.press(QStringLiteral("step"));
    if (isNext && big.asks == ui::BigStep::Asks::Line)
        m_hand.press(QStringLiteral("step"));
    else
        onBag(meant.bag ? meant.bag : next.bag, QStringLiteral("hung"));
    ask(QStringLiteral("line:") + idText(meant.line));
}

}  // namespace bathside::app
