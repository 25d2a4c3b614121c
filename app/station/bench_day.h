#pragma once

// A day at the bench as the program runs it: the session, and the frame with its pages in the
// window.

#include <memory>

#include "app/station/session.h"
#include "ui/frame/frame.h"
#include "ui/models/preferences.h"
#include "ui/models/printing.h"
#include "ui/models/sound_test.h"

namespace bathside::app {

/// The frame over `session`, with every page there is, bench first. The caller shows it.
[[nodiscard]] ui::Frame* frameFor(Session& session, const ui::Language& language,
                                  ui::Preferences& preferences, ui::SoundTest& sound,
                                  ui::Printing& printing);

}  // namespace bathside::app
