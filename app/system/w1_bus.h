#pragma once

// The one-wire thermometers that the kernel sees: one folder each, with a text to read.
//
// Every call looks at the folder anew, so that a probe that was plugged in is read and one that is
// gone is told as lost, once. Probes are named as the kernel names them ("28-0000075f2b1c").
// Reading makes the kernel measure: up to 0.75 s a probe, so this belongs on a thread of its own
// (see `BackgroundSource`). A file that cannot be read is an empty reading, as a failed read is in
// the kernel. Source: Linux, Documentation/w1/slaves/w1_therm.rst.

#include <filesystem>
#include <set>
#include <string>
#include <variant>
#include <vector>

#include "core/bath/source.h"

namespace bathside::app {

struct ProbeValue {
    ProbeId probe;
    std::variant<MilliCelsius, ReadingFault> value;

    friend bool operator==(const ProbeValue&, const ProbeValue&) = default;
};

class W1Bus {
public:
    /// `expected` count as known: told as lost where they are not there at first.
    explicit W1Bus(std::filesystem::path folder = "/sys/bus/w1/devices",
                   std::set<std::string> expected = {});

    /// The thermometers that are there now, by name: families 10, 22, 28, 3b and 42.
    [[nodiscard]] std::set<std::string> thermometers() const;

    /// One value of each thermometer that is there, then one `Lost` of each that no longer is.
    [[nodiscard]] std::vector<ProbeValue> readAll();

private:
    std::filesystem::path m_folder;
    std::set<std::string> m_known;
};

}  // namespace bathside::app
