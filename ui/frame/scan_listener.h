#pragma once

// A scanner that types as a keyboard works on every page, whatever has the focus.
//
// Watches all keys of one window before any widget has them. What `Wedge` calls a scan comes out as
// `scanned` and reaches no widget, its Enter included; what it calls typing is delivered to where
// it was meant for, in order and with its own time stamps, at most 60 ms late. Keys that make no
// sign (the pedal's, arrows) and a leading blank are never held. FNC1 is taken as the sign 29 or as
// Ctrl+]. UI thread only.

#include <QObject>
#include <QPointer>
#include <QTimer>
#include <memory>
#include <vector>

#include "ui/controls/tap_stamp.h"
#include "ui/models/wedge.h"

class QKeyEvent;
class QWidget;

namespace bathside::ui {

class ScanListener final : public QObject {
    Q_OBJECT

public:
    explicit ScanListener(QWidget* window);
    ~ScanListener() override;

signals:
    /// `stamp` is that of the key at its end.
    void scanned(const QString& text, const bathside::ui::TapStamp& stamp);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    struct Held {
        QPointer<QObject> receiver;
        std::unique_ptr<QKeyEvent> event;
    };

    [[nodiscard]] bool isOurs(QObject* watched) const;
    bool press(QObject* receiver, const QKeyEvent& key);
    bool release(QObject* receiver, const QKeyEvent& key);
    void hold(QObject* receiver, const QKeyEvent& key);
    void deliver();
    void drop(const QKeyEvent& end);

    QWidget* m_window;
    Wedge m_wedge;
    QTimer m_patience;
    std::vector<Held> m_held;
    std::vector<int> m_dropped;  // keys of a scan that are still down: their releases go, too
    bool m_delivering = false;
};

}  // namespace bathside::ui
