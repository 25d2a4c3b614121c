#include "app/system/serial_source.h"

#include <utility>

namespace bathside::app {

SerialSource::SerialSource(SerialSetting setting, ProbeId probe)
    : m_setting(std::move(setting)),
      m_probe(std::move(probe)),
      m_lines(m_setting.port, m_setting.baud, LinePattern::kLongestLine)
{
}

std::optional<RawReading> SerialSource::poll(const Stamp& now)
{
    const auto said = m_lines.poll(now);
    if (!said)
        return std::nullopt;
    if (!said->line)
        return RawReading{m_probe, said->at, ReadingFault::Lost};
    return RawReading{m_probe, said->at,
                      readLine(m_setting.pattern, m_setting.meaning, *said->line)};
}

}  // namespace bathside::app
