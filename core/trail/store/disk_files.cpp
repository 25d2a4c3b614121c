#include "core/trail/store/disk_files.h"

#include <algorithm>
#include <charconv>

#include "core/trail/store/disk.h"

namespace bathside::store {
namespace {

constexpr std::string_view kMerged = ".merged";

// The number in "<prefix><number>" or "<prefix><number>.merged"; 0 for any other name.
int numberIn(std::string_view name, std::string_view prefix, bool& merged)
{
    if (!name.starts_with(prefix))
        return 0;
    name.remove_prefix(prefix.size());
    merged = name.ends_with(kMerged);
    if (merged)
        name.remove_suffix(kMerged.size());
    int number = 0;
    const auto read = std::from_chars(name.data(), name.data() + name.size(), number);
    return read.ec == std::errc{} && read.ptr == name.data() + name.size() ? number : 0;
}

void removeFresh(const std::filesystem::path& file)
{
    std::error_code none;
    for (const char* const suffix : {"", "-wal", "-journal"})
        std::filesystem::remove(file.string() + suffix, none);
}

}  // namespace

Result<std::unique_ptr<TrailStore>, StoreTrouble> DiskFiles::openTrail()
{
    auto trail = TrailDb::open(m_places.trail, m_mode, m_places.origin);
    if (!trail) {
        m_refusal = trail.error();
        return failure(trail.error().trouble);
    }
    m_refusal.reset();
    m_mode = Mode::Existing;
    return std::move(*trail);
}

// What one file's failing left is brought into the one that continues it.
std::string DiskFiles::spoolPrefix() const
{
    const auto& named = m_places.spoolsOf.empty() ? m_places.trail : m_places.spoolsOf;
    return named.filename().string() + ".spool-";
}

std::vector<DiskFiles::Found> DiskFiles::spools() const
{
    const std::string prefix = spoolPrefix();
    std::vector<Found> found;
    for (const auto& folder : m_places.spoolFolders) {
        std::error_code none;
        for (const auto& file : std::filesystem::directory_iterator(folder, none)) {
            bool merged = false;
            if (const int number = numberIn(file.path().filename().string(), prefix, merged);
                number > 0)
                found.push_back({file.path(), number, merged});
        }
    }
    std::ranges::sort(found, {}, &Found::number);
    return found;
}

std::vector<std::string> DiskFiles::unmerged()
{
    std::vector<std::string> names;
    for (const Found& spool : spools()) {
        if (!spool.merged)
            names.push_back(spool.file.string());
    }
    return names;
}

Result<Spool, StoreTrouble> DiskFiles::makeSpool(const Head& after)
{
    const auto known = spools();
    const int number = known.empty() ? 1 : known.back().number + 1;
    const std::string name = spoolPrefix() + std::to_string(number);
    StoreTrouble trouble{StoreFault::NotPermitted, 0};
    for (const auto& folder : m_places.spoolFolders) {
        const std::filesystem::path file = folder / name;
        auto made = TrailDb::open(
            file, Mode::New,
            {.role = Role::Spool, .after = after, .continues = m_places.trail.filename().string()});
        if (made)
            return Spool{file.string(), after, std::move(*made)};
        trouble = made.error().trouble;
        removeFresh(file);  // made a moment ago and never written to
    }
    return failure(trouble);
}

Result<Spool, StoreTrouble> DiskFiles::openSpool(const std::string& name)
{
    auto spool = TrailDb::open(name, Mode::Existing);
    if (!spool)
        return failure(spool.error().trouble);
    const Head after = (*spool)->origin().after;
    return Spool{name, after, std::move(*spool)};
}

// If this fails, the next start merges it again, and nothing comes in twice.
void DiskFiles::markMerged(const std::string& name)
{
    std::error_code none;
    if (std::filesystem::exists(name + "-wal",
                                none))  // its handle failed: what it holds goes along
        std::filesystem::rename(name + "-wal", name + std::string(kMerged) + "-wal", none);
    std::ignore = renameDurably(name, name + std::string(kMerged));
}

}  // namespace bathside::store
