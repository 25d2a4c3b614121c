#pragma once

// Tells assistive technology that our targets are buttons and can be pressed. Call once at start.

namespace bathside::ui {

void installAccessibility();

}  // namespace bathside::ui
