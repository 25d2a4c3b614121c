#pragma once

// Where Bathside keeps its files: the trail, the technical log, the settings.
//
// Source: XDG Base Directory Specification, version 0.8: a variable that is unset, empty or not an
// absolute path does not count, and the default below the home folder is taken. Nothing is created.

#include <filesystem>
#include <functional>
#include <string>

namespace bathside::app {

enum class Keeps : std::uint8_t {
    Data,      // trails and exports
    State,     // the technical log
    Settings,  // screen, sound, language
};

/// Gives a variable of the environment, empty where it is not set.
using Environment = std::function<std::string(const char* name)>;

[[nodiscard]] std::string readEnvironment(const char* name);

[[nodiscard]] std::filesystem::path folderFor(Keeps what,
                                              const Environment& read = readEnvironment);

}  // namespace bathside::app
