#pragma once

// What is due, worst first, in words, and what to do. No target: heard is a button of its own.
//
// The first alarms are shown in full, as many as there is room for; the others as "+2 more", by the
// words the page gives for that number.

#include <QList>
#include <functional>

#include "ui/controls/control.h"
#include "ui/theme/role.h"

namespace bathside::ui {

struct AlarmLine {
    Role role = Role::HeadsUp;
    QString level{};  // "limit"
    QString text{};   // "ampoule 2: into the diluent"
    bool hushed = false;
    friend bool operator==(const AlarmLine&, const AlarmLine&) = default;
};

class AlarmStrip final : public Control {
    Q_OBJECT

public:
    explicit AlarmStrip(QWidget* parent = nullptr);

    /// Worst first. `calm` is said when there is none; `more` words the number of those without
    /// room.
    void setAlarms(const QList<AlarmLine>& alarms, const QString& calm,
                   std::function<QString(int)> more);
    [[nodiscard]] const QList<AlarmLine>& alarms() const noexcept { return m_alarms; }

    [[nodiscard]] QSize sizeHint() const override;

protected:
    [[nodiscard]] QList<PlacedText> texts() const override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] int shown() const;
    [[nodiscard]] QRectF room(int index) const;
    [[nodiscard]] QRectF moreRoom() const;
    struct LineRooms;
    [[nodiscard]] LineRooms lineRooms(int index) const;

    QList<AlarmLine> m_alarms;
    QString m_calm;
    std::function<QString(int)> m_more;
};

}  // namespace bathside::ui
