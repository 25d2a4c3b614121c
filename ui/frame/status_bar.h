#pragma once

// What is always in sight: the bath and its verdict, what is due and what to do about it, whether
// the record is safe, whether sound is proven. No target. Renders the model; follows its changes by
// itself.

#include "ui/controls/control.h"
#include "ui/models/station_model.h"
#include "ui/text/language.h"

namespace bathside::ui {

class AlarmStrip;
class StatusChip;

class StatusBar final : public QWidget {
    Q_OBJECT

public:
    StatusBar(const StationModel& model, const Language& language, QWidget* parent = nullptr);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void place();
    void render();
    void renderBath();
    void renderAlarms();
    void renderRecord();
    void renderSound();

    const StationModel& m_model;
    const Language& m_language;
    StatusChip* m_bath;
    AlarmStrip* m_alarms;
    StatusChip* m_record;
    StatusChip* m_sound;
};

}  // namespace bathside::ui
