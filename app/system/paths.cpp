#include "app/system/paths.h"

#include <cstdlib>

namespace bathside::app {
namespace {

struct Place {
    const char* variable;
    const char* belowHome;
};

Place placeOf(Keeps what)
{
    switch (what) {
        case Keeps::Data:
            return {"XDG_DATA_HOME", ".local/share"};
        case Keeps::State:
            return {"XDG_STATE_HOME", ".local/state"};
        case Keeps::Settings:
            return {"XDG_CONFIG_HOME", ".config"};
    }
    std::abort();
}

}  // namespace

std::string readEnvironment(const char* name)
{
    const char* value = std::getenv(name);
    return value == nullptr ? std::string{} : value;
}

std::filesystem::path folderFor(Keeps what, const Environment& read)
{
    const Place place = placeOf(what);
    const std::filesystem::path given = read(place.variable);
    const auto base =
        given.is_absolute() ? given : std::filesystem::path(read("HOME")) / place.belowHome;
    return base / "bathside";
}

}  // namespace bathside::app
