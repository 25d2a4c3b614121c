#pragma once

// The serial ports that were plugged in: by their lasting names where the system makes them (the
// folder serial/by-id), else ttyUSB* and ttyACM*. Ports that are soldered in are not listed: they
// are always there, whatever hangs on them. Source: Linux, Documentation/admin-guide/devices.txt.

#include <filesystem>
#include <set>
#include <string>

namespace bathside::app {

/// Paths, by name.
[[nodiscard]] std::set<std::string> serialPorts(const std::filesystem::path& devices = "/dev");

}  // namespace bathside::app
