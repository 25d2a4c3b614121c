#include "core/trail/store/continuation.h"

#include <algorithm>
#include <fstream>
#include <string_view>

#include "core/trail/store/restore.h"

namespace bathside::store {
namespace {

std::filesystem::path part(const std::filesystem::path& trail, int number)
{
    std::filesystem::path name = trail;
    name.replace_filename(trail.stem().string() + ".part-" + std::to_string(number) +
                          trail.extension().string());
    return name;
}

}  // namespace

std::vector<std::filesystem::path> partsOf(const std::filesystem::path& trail)
{
    std::error_code none;
    std::vector<std::filesystem::path> parts;
    if (std::filesystem::exists(trail, none))
        parts.push_back(trail);
    for (int number = 2; std::filesystem::exists(part(trail, number), none); ++number)
        parts.push_back(part(trail, number));
    if (parts.empty())
        parts.push_back(trail);
    return parts;
}

std::filesystem::path nextPart(const std::filesystem::path& trail)
{
    std::error_code none;
    int number = 2;
    while (std::filesystem::exists(part(trail, number), none))
        ++number;
    return part(trail, number);
}

bool lacksFirstEntry(const std::filesystem::path& file)
{
    const auto trail = TrailDb::open(file, Mode::ReadOnly);
    if (!trail)
        return false;
    const Origin& origin = (*trail)->origin();
    return origin.role == Role::Trail && !origin.continues.empty() &&
           (*trail)->head() == origin.after;
}

std::vector<SoundPart> soundParts(std::vector<std::filesystem::path> files, const Origin& origin)
{
    std::vector<SoundPart> parts;
    Seq last = origin.after.seq;
    files.pop_back();
    for (auto file = files.rbegin(); file != files.rend(); ++file) {
        if (last > 0)
            parts.insert(parts.begin(), {*file, last});
        if (const auto part = TrailDb::open(*file, Mode::Salvage))
            last = std::min(last, (*part)->origin().after.seq);
    }
    return parts;
}

bool isDestroyed(const std::filesystem::path& trail)
{
    constexpr std::string_view kBegins("SQLite format 3\0", 16);  // SQLite's file format, 1.3
    std::ifstream file(trail, std::ios::binary);
    std::string begins(kBegins.size(), '\0');
    file.read(begins.data(), static_cast<std::streamsize>(begins.size()));
    return trail.extension() == ".db" && file.gcount() > 0 && begins != kBegins;
}

std::optional<OpenFault> damageOf(const std::filesystem::path& file)
{
    const auto trail = TrailDb::open(file, Mode::ReadOnly);
    if (!trail)
        return trail.error().trouble.fault == StoreFault::Damaged ? std::optional(trail.error())
                                                                  : std::nullopt;
    const auto state = stateOf(**trail);
    if (state || state.error().fault != StoreFault::Damaged)
        return std::nullopt;
    return OpenFault{state.error(), Check::Tail, {}};
}

}  // namespace bathside::store
