#pragma once

// One place of the program: bench, set-up, plan, stores, record. Shown within the frame, which
// keeps what is in sight everywhere (rehearsal, status, alarms) and decides whether a page may be
// left.
//
// A page's operable widgets have object names; none opens a window of its own. UI thread only.

#include <QWidget>
#include <utility>

#include "ui/controls/tap_stamp.h"

namespace bathside::ui {

class TapButton;

class Page : public QWidget {
    Q_OBJECT

public:
    using QWidget::QWidget;

    /// What the pedal and Space press while this page shows; null: nothing.
    [[nodiscard]] virtual TapButton* step() { return nullptr; }
    /// A code was scanned while this page shows, outside the critical window. True: the page has
    /// dealt with it; else the frame says it.
    virtual bool usesScan([[maybe_unused]] const QString& text,
                          [[maybe_unused]] const TapStamp& stamp)
    {
        return false;
    }

protected:
    /// What a signal calls so that `draw` runs only while the page shows; a page that comes to show
    /// draws itself whole.
    template <typename Draw>
    [[nodiscard]] auto whileShown(Draw draw)
    {
        return [this, draw = std::move(draw)] {
            if (isVisible())
                draw();
        };
    }

signals:
    /// Asks for the page of that id; the frame says no within the critical window.
    void asksFor(const QString& page);
    /// `step()` would give another answer.
    void stepChanged();
};

}  // namespace bathside::ui
