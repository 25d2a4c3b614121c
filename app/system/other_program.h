#pragma once

// This process becomes another program of ours: same input and output, same exit code to whoever
// waits.

#include <filesystem>
#include <string>
#include <vector>

namespace bathside::app {

/// `words`: its arguments, the first by custom its name. Comes back only where it cannot be.
void becomeProgram(const std::filesystem::path& program, std::vector<std::string> words);

}  // namespace bathside::app
