#pragma once

// The thermometers page in its frame beside bench and set-up, with thermometers that are not there.

#include <functional>
#include <map>

#include "tests/ui/setup/page_stand.h"
#include "ui/models/live_probes.h"
#include "ui/thermometers/thermometers_page.h"

namespace bathside::test {

class FakeProbes final : public ui::LiveProbes {
public:
    [[nodiscard]] std::vector<ProbeSource> pluggedIn() const override { return plugged; }
    [[nodiscard]] std::vector<RawReading> trace(const ProbeId& probe) const override
    {
        const auto found = traces.find(probe);
        return found == traces.end() ? std::vector<RawReading>() : found->second;
    }
    [[nodiscard]] std::optional<std::string> lastLine(const ProbeId&) const override
    {
        return line;
    }
    [[nodiscard]] bool isSamePort(const std::string& one, const std::string& other) const override
    {
        return one == other || (lasting.contains(one) && lasting.at(one) == other) ||
               (lasting.contains(other) && lasting.at(other) == one);
    }

    std::map<std::string, std::string> lasting;  // a port's number by its lasting name
    std::vector<ProbeSource> plugged;
    std::map<ProbeId, std::vector<RawReading>> traces;
    std::optional<std::string> line;
};

class ThermoStand {
public:
    ThermoStand(const Panel& panel, const QString& language);

    [[nodiscard]] Stand& stand() { return m_pages.stand(); }
    [[nodiscard]] FakeProbes& probes() { return m_probes; }
    void show() { m_pages.show(ui::ThermometersPage::kPage); }
    /// Digits and the locale's sign on the number pad, and set.
    void type(const QString& digits);
    void spell(const QString& letters);

    std::string balancePort;
    std::vector<QString> saved;                 // names of pictures
    std::optional<ui::PrintFault> saveFault{};  // what saving comes to
    bool holdsWork = false;  // what takes long waits in `work`, else is done at once
    std::vector<std::function<void()>> work;

private:
    FakeProbes m_probes;
    PageStand m_pages;
};

/// A calibrated one-wire thermometer, an overdue one by hand and a serial one that is gone, with
/// some minutes behind them.
void liveWithThermometers(ThermoStand& thermo);

}  // namespace bathside::test
