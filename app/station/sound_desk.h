#pragma once

// Joins the alarm thread to the session: publishes what is due, records what was sounded, clicks at
// taps.
//
// Lives as long as the program; a session is attached while it is open. UI thread; the alarm thread
// needs nothing of it to go on sounding.

#include <QObject>
#include <QPointer>

#include "app/station/session.h"
#include "ui/models/feedback.h"
#include "ui/models/sound_test.h"
#include "ui/sound/alarm_thread.h"

namespace bathside::app {

class SoundDesk final : public QObject, public ui::Feedback, public ui::SoundTest {
    Q_OBJECT

public:
    explicit SoundDesk(const Clock& clock);

    void taken() override { m_alarms.click(); }
    void refused() override { m_alarms.refuse(); }

    void play() override { m_alarms.test(); }
    [[nodiscard]] QString device() const override;
    [[nodiscard]] std::vector<ui::Loudspeaker> devices() const override;
    void use(const QString& id) override { m_alarms.preferDevice(id.toStdString()); }
    void heard() override;

    void attach(Session& session);
    [[nodiscard]] ui::AlarmThread& alarms() { return m_alarms; }

private:
    void publish();
    void takeReports();
    void note(const ui::SoundReport& report);

    QPointer<Session> m_session;
    ui::AlarmThread m_alarms;
};

}  // namespace bathside::app
