#pragma once

// Thermometers that are plugged in, as set-up shows them: what is there, and what each one showed
// in the last minutes, also where the record keeps less of it. Returns at once. UI thread.

#include <QObject>
#include <optional>
#include <string>
#include <vector>

#include "core/bath/probe_source.h"
#include "core/bath/source.h"

namespace bathside::ui {

class LiveProbes : public QObject {
    Q_OBJECT

public:
    /// As long as a trace is kept.
    static constexpr Millis kTrace = std::chrono::minutes(5);

    using QObject::QObject;

    /// One-wire thermometers and serial ports that are there now, described or not. A serial line
    /// is given with the usual speed and no pattern.
    [[nodiscard]] virtual std::vector<ProbeSource> pluggedIn() const = 0;
    /// Raw, oldest first; empty for a probe that is read by hand.
    [[nodiscard]] virtual std::vector<RawReading> trace(const ProbeId& probe) const = 0;
    /// The line of text that a serial thermometer sent last; none: nothing has come, or it is none.
    [[nodiscard]] virtual std::optional<std::string> lastLine(const ProbeId& probe) const = 0;
    /// Two paths of one serial port: its lasting name and its number.
    [[nodiscard]] virtual bool isSamePort(const std::string& one,
                                          const std::string& other) const = 0;

signals:
    /// A reading came.
    void changed();
};

}  // namespace bathside::ui
