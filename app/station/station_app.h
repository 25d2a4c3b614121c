#pragma once

// The station as a program: which day, which trail, which screen; joins session, sound and window.
//
// Everything that can go wrong at the start becomes one sentence: on the start page where a person
// chose the day there, else on standard error with exit code 2. UI thread.

#include <QObject>
#include <memory>

#include "app/station/delivery_files.h"
#include "app/station/options.h"
#include "app/station/paper_desk.h"
#include "app/station/session.h"
#include "app/station/sound_desk.h"
#include "app/station/window.h"
#include "app/system/boot_clock.h"
#include "app/system/event_time.h"
#include "app/system/sleep_inhibitor.h"
#include "ui/models/preferences.h"
#include "ui/text/language.h"

namespace bathside::app {

class StationApp final : public QObject {
    Q_OBJECT

public:
    explicit StationApp(Options options);
    ~StationApp() override;

    /// Shows the window. None: it runs; else what is wrong.
    [[nodiscard]] std::optional<QString> start();

private:
    [[nodiscard]] Result<std::string, QString> cardDocument() const;
    [[nodiscard]] SessionSetting settingFor(Day day) const;
    [[nodiscard]] std::optional<QString> begin(Day day);
    void showStart();
    void choose(Day day);
    void showFault(const QString& sentence);
    void dressScreen();
    void showWindow();
    void keepAwake();

    Options m_options;
    std::string m_card;
    ui::Preferences m_preferences;
    PaperDesk m_printing;
    ui::Language m_language;
    BootClock m_clock;
    EventTime m_eventTime;
    SoundDesk m_sound;
    DeliveryFiles m_deliveries;
    SleepInhibitor m_inhibitor;
    std::unique_ptr<Session> m_session;
    bool m_startsAgain = false;  // what was wrong with the start has been seen to
    Window m_window;
};

}  // namespace bathside::app
