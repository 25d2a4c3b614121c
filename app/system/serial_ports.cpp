#include "app/system/serial_ports.h"

#include <algorithm>
#include <array>

namespace bathside::app {
namespace {

namespace fs = std::filesystem;

constexpr std::array<const char*, 4> kNumbered{"ttyUSB", "ttyACM", "ttyAMA", "ttyS"};

/// By name.
std::vector<std::string> pathsIn(const fs::path& folder, const std::string& start)
{
    std::vector<std::string> found;
    std::error_code error;
    fs::directory_iterator entries(folder, error);
    while (!error && entries != fs::directory_iterator()) {
        if (entries->path().filename().string().starts_with(start))
            found.push_back(entries->path().string());
        entries.increment(error);
    }
    std::ranges::sort(found);
    return found;
}

}  // namespace

std::vector<std::string> serialPorts(const fs::path& devices)
{
    std::vector<std::string> all = pathsIn(devices / "serial" / "by-id", {});
    for (const char* start : kNumbered) {
        for (std::string& path : pathsIn(devices, start)) {
            const auto isIt = [&](const std::string& other) { return isSamePort(path, other); };
            if (std::ranges::none_of(all, isIt))
                all.push_back(std::move(path));
        }
    }
    return all;
}

bool isSamePort(const fs::path& one, const fs::path& other)
{
    std::error_code error;
    const fs::path first = fs::weakly_canonical(one, error);
    const fs::path second = fs::weakly_canonical(other, error);
    return error ? one == other : first == second;
}

}  // namespace bathside::app
