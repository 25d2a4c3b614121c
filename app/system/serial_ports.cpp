#include "app/system/serial_ports.h"

#include <functional>

namespace bathside::app {
namespace {

std::set<std::string> pathsIn(const std::filesystem::path& folder,
                              const std::function<bool(const std::string&)>& fits)
{
    std::set<std::string> found;
    std::error_code error;
    std::filesystem::directory_iterator entries(folder, error);
    while (!error && entries != std::filesystem::directory_iterator()) {
        if (fits(entries->path().filename().string()))
            found.insert(entries->path().string());
        entries.increment(error);
    }
    return found;
}

}  // namespace

std::set<std::string> serialPorts(const std::filesystem::path& devices)
{
    const auto lasting = pathsIn(devices / "serial" / "by-id", [](const auto&) { return true; });
    if (!lasting.empty())
        return lasting;
    return pathsIn(devices, [](const std::string& name) {
        return name.starts_with("ttyUSB") || name.starts_with("ttyACM");
    });
}

}  // namespace bathside::app
