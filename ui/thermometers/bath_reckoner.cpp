#include "ui/thermometers/bath_reckoner.h"

#include <utility>

namespace bathside::ui {
namespace {

BathReckoned reckonedFrom(const State& state)
{
    const Card& card = *state.bench.card;
    const HeatRules& heat = card.content().heat;
    BathReckoned all{.of = card.hash(), .fits = fitsOf(state, heat), .curve = {}};
    all.curve = slushCurve(heatWith(heat, {}, all.fits.inCue));
    return all;
}

}  // namespace

BathReckoner::BathReckoner(Run run, QObject* parent) : QObject(parent), m_run(std::move(run))
{
    m_worker.setMaxThreadCount(1);
    if (!m_run)
        m_run = [this](std::function<void()> job) { m_worker.start(std::move(job)); };
}

BathReckoner::~BathReckoner()
{
    m_worker.clear();
    m_worker.waitForDone();
}

void BathReckoner::reckon(const State& state)
{
    const int asked = ++m_asked;
    m_worker.clear();  // what has not begun is not wanted any more
    m_run([this, asked, state] {
        const BathReckoned answer = reckonedFrom(state);
        QMetaObject::invokeMethod(this, [this, asked, answer] { take(asked, answer); });
    });
}

void BathReckoner::take(int asked, const BathReckoned& answer)
{
    if (asked != m_asked)
        return;
    m_answered = asked;
    m_last = answer;
    emit reckoned();
}

}  // namespace bathside::ui
