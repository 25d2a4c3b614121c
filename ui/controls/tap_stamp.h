#pragma once

// When a press happened, as the input system says.
//
// Every control tells its press from within the input event itself, so the receiver's own `now()`
// is the instant of receipt; turning `inputMs` into the boot clock, or not believing it, is the
// model's business.

#include <QtGlobal>

namespace bathside::ui {

struct TapStamp {
    quint64 inputMs =
        0;  // QInputEvent::timestamp(): ms on the input system's own clock; 0: it gave none
};

}  // namespace bathside::ui
