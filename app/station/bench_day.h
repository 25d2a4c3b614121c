#pragma once

// A day at the bench as the program runs it: the session, and the frame with its pages in the
// window.

#include <memory>

#include "app/station/session.h"
#include "ui/frame/frame.h"
#include "ui/models/delivery_source.h"
#include "ui/models/preferences.h"
#include "ui/models/printing.h"
#include "ui/models/sound_test.h"

namespace bathside::app {

/// What the pages need besides the session; all of it outlives the frame.
struct Surroundings {
    const ui::Language& language;
    ui::Preferences& preferences;
    ui::SoundTest& sound;
    const ui::DeliverySource& deliveries;
    ui::Printing& printing;
};

/// The frame over `session`, with every page there is, bench first. The caller shows it.
[[nodiscard]] ui::Frame* frameFor(Session& session, const Surroundings& around);

}  // namespace bathside::app
