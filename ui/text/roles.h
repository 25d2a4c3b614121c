#pragma once

// The role of a person, in words. Apart from words.h, where a colour's role has the same name.

#include <QString>

#include "core/facts/words.h"

namespace bathside::ui {

[[nodiscard]] QString roleText(bathside::Role role);

}  // namespace bathside::ui
