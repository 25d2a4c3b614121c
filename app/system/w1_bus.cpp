#include "app/system/w1_bus.h"

#include <algorithm>
#include <array>
#include <fstream>
#include <iterator>
#include <string_view>
#include <utility>

#include "core/bath/w1_text.h"

namespace bathside::app {
namespace {

constexpr std::array<std::string_view, 5> kFamilies{"10-", "22-", "28-", "3b-", "42-"};

bool isThermometer(const std::string& name)
{
    return std::ranges::any_of(kFamilies,
                               [&](std::string_view family) { return name.starts_with(family); });
}

std::string textOf(const std::filesystem::path& file)
{
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

}  // namespace

W1Bus::W1Bus(std::filesystem::path folder, std::set<std::string> expected)
    : m_folder(std::move(folder)), m_known(std::move(expected))
{
}

std::set<std::string> W1Bus::thermometers() const
{
    std::set<std::string> found;
    std::error_code error;
    std::filesystem::directory_iterator folders(m_folder, error);
    while (!error && folders != std::filesystem::directory_iterator()) {
        const std::string name = folders->path().filename().string();
        if (isThermometer(name))
            found.insert(name);
        folders.increment(error);
    }
    return found;
}

std::vector<ProbeValue> W1Bus::readAll()
{
    std::vector<ProbeValue> values;
    const std::set<std::string> now = thermometers();
    for (const std::string& name : now)
        values.push_back({ProbeId{name}, readW1(textOf(m_folder / name / "w1_slave"))});
    for (const std::string& name : m_known)
        if (!now.contains(name))
            values.push_back({ProbeId{name}, ReadingFault::Lost});
    m_known = now;
    return values;
}

}  // namespace bathside::app
