#include "app/station/balance.h"

#include <utility>

#include "app/system/serial_ports.h"

namespace bathside::app {
namespace {

constexpr std::size_t kLongestLine = 200;
constexpr int kMostLines = 200;  // lines in one poll, so that taps get through

ui::WeightSource::Said whatIs(const SerialSaid& said, const WeightFormat& format)
{
    if (!said.line)
        return ui::WeightSource::Gone{};
    const auto weight = weightIn(format, *said.line);
    if (!weight)
        return weight.error();
    return *weight;
}

}  // namespace

Balance::Balance(const ui::Preferences& preferences, Now now, std::filesystem::path devices,
                 QObject* parent)
    : m_preferences(preferences), m_now(std::move(now)), m_devices(std::move(devices))
{
    setParent(parent);
    connect(&preferences, &ui::Preferences::changed, this, &Balance::follow);
    connect(&m_timer, &QTimer::timeout, this, &Balance::poll);
    follow();
}

std::vector<std::string> Balance::ports() const { return serialPorts(m_devices); }

std::optional<std::string> Balance::lastLine() const
{
    return m_lines ? m_lines->last() : std::nullopt;
}

// Only another port or speed opens anew; another reading of its lines does not.
void Balance::follow()
{
    const ui::BalanceChoice before = std::exchange(m_choice, m_preferences.now().balance);
    const bool isSame = before.port == m_choice.port && before.baud == m_choice.baud;
    if (isSame && (m_lines || m_choice.port.empty()))
        return;
    m_lines.reset();
    m_timer.stop();
    if (m_choice.port.empty() || !isBaud(m_choice.baud))
        return;
    m_lines = std::make_unique<SerialLines>(m_choice.port, m_choice.baud, kLongestLine);
    m_timer.start(kPoll);
}

void Balance::poll()
{
    for (int i = 0; m_lines && i < kMostLines; ++i) {
        const auto line = m_lines->poll(m_now());
        if (!line)
            return;
        emit said(whatIs(*line, m_choice.format));
    }
}

}  // namespace bathside::app
