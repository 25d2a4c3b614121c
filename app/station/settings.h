#pragma once

// The preferences in a file of the settings folder; what cannot be read counts as not set.

#include <filesystem>

#include "ui/models/preferences.h"

namespace bathside::app {

[[nodiscard]] ui::Preference readPreference(const std::filesystem::path& file);
/// False when it could not be written.
bool writePreference(const std::filesystem::path& file, const ui::Preference& preference);

}  // namespace bathside::app
