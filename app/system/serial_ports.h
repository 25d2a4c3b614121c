#pragma once

// The serial ports that there are, each once: by their lasting names where the system makes them
// (the folder serial/by-id), else by their numbers, those that are plugged in before those that
// are built in, which are there whatever hangs on them. Source: Linux,
// Documentation/admin-guide/devices.txt.

#include <filesystem>
#include <string>
#include <vector>

namespace bathside::app {

/// Paths; ttyUSB*, ttyACM*, ttyAMA* and ttyS* of `devices`.
[[nodiscard]] std::vector<std::string> serialPorts(const std::filesystem::path& devices = "/dev");

/// Whether both paths lead to one device, be it there or not.
[[nodiscard]] bool isSamePort(const std::filesystem::path& one, const std::filesystem::path& other);

}  // namespace bathside::app
