#pragma once

// The real window over a new trail, on a clock of its own, for a script to be played through.
//
// The trail lies in a temporary folder and goes with this. Deliveries are the script's own; nothing
// sounds. Needs a QApplication. UI thread.

#include <QString>
#include <QTemporaryDir>
#include <memory>
#include <optional>
#include <vector>

#include "app/station/options.h"
#include "app/station/paper_desk.h"
#include "app/station/session.h"
#include "app/station/window.h"
#include "app/station/window_player.h"
#include "ui/models/preferences.h"
#include "ui/text/language.h"

namespace bathside::app {

class PlayedWindow {
public:
    explicit PlayedWindow(const Options& options);
    ~PlayedWindow();
    PlayedWindow(const PlayedWindow&) = delete;
    PlayedWindow& operator=(const PlayedWindow&) = delete;

    /// At the first entry's time, on the first page. What went wrong, or nothing. `script` outlives
    /// this.
    [[nodiscard]] std::optional<QString> open(const std::vector<ScriptEntry>& script,
                                              const std::string& card);
    /// Once it is open.
    [[nodiscard]] WindowPlayer& player() { return *m_player; }
    [[nodiscard]] Session& session() { return *m_session; }
    [[nodiscard]] Window& window() { return m_window; }
    [[nodiscard]] WallTime now() const { return m_clock->now().wall; }

private:
    class Deaf;
    class SilentLoudspeaker;
    class ScriptDeliveries;

    QTemporaryDir m_folder;
    std::optional<SimulatedClock> m_clock;  // the session's, to its end
    std::unique_ptr<Deaf> m_deaf;
    std::unique_ptr<SilentLoudspeaker> m_silent;
    std::unique_ptr<ScriptDeliveries> m_deliveries;
    ui::Language m_language;
    ui::Preferences m_preferences{ui::Preference{}};
    PaperDesk m_printing{m_preferences};
    std::unique_ptr<Session> m_session;
    Window m_window;
    std::optional<WindowPlayer> m_player;
};

}  // namespace bathside::app
