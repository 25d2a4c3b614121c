#pragma once

// The balance that the preferences name: its port opened, polled and read, each line told.
//
// Another choice opens another port at once; none, none. A port that goes is told once and is read
// again as soon as it is back (app/system/serial_lines.h). UI thread.

#include <QTimer>
#include <filesystem>
#include <functional>
#include <memory>

#include "app/system/serial_lines.h"
#include "ui/models/preferences.h"
#include "ui/models/weight_source.h"

namespace bathside::app {

class Balance final : public ui::WeightSource {
    Q_OBJECT

public:
    static constexpr Millis kPoll{100};

    using Now = std::function<Stamp()>;

    /// Preferences outlive this. `devices`: where the kernel shows ports.
    Balance(const ui::Preferences& preferences, Now now, std::filesystem::path devices = "/dev",
            QObject* parent = nullptr);

    [[nodiscard]] std::vector<std::string> ports() const override;
    [[nodiscard]] std::optional<std::string> lastLine() const override;

public slots:
    /// Tells all that has come.
    void poll();

private:
    void follow();

    const ui::Preferences& m_preferences;
    Now m_now;
    std::filesystem::path m_devices;
    ui::BalanceChoice m_choice;
    std::unique_ptr<SerialLines> m_lines;  // none: no balance is set
    QTimer m_timer;
};

}  // namespace bathside::app
