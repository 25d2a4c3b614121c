#pragma once

// What has to be explained after the critical window, and the choices, in words.

#include <QString>
#include <string>

#include "core/bench/next.h"

namespace bathside::ui {

[[nodiscard]] QString questionText(const Question& question);
/// The fixed choices are translated; any other (an ampoule's number, the site's own) stands as it
/// is.
[[nodiscard]] QString choiceText(QuestionKind kind, const std::string& choice);

}  // namespace bathside::ui
