#include "app/cli/trail_file.h"

#include <cerrno>
#include <cstring>

namespace bathside::cli {
namespace {

struct Said {
    std::string_view found, expected;
};

Said saidOf(StoreFault fault)
{
    switch (fault) {
        case StoreFault::NoSpace:
            return {"no space left on the disk", "room for the trail"};
        case StoreFault::ReadOnly:
            return {"a place that cannot be written to", "a folder that can"};
        case StoreFault::NotPermitted:
            return {"no permission", "a file that this user may open"};
        case StoreFault::InUse:
            return {"a trail that a station holds open",
                    "a copy of it: make one on the station's Record page"};
        case StoreFault::Damaged:
            return {"a damaged trail",
                    "a sound one; the sound part of it can still be read on the Record page"};
        case StoreFault::Foreign:
            return {"a file that is not a trail of this program", "a trail"};
        case StoreFault::Newer:
            return {"a trail of a later version", "one of this version or an earlier one"};
        case StoreFault::WriteFailed:
            return {"a write that failed", "a disk that takes it"};
        case StoreFault::Unconfirmed:
            return {"a write whose outcome is not known", "a disk that confirms it"};
        case StoreFault::NotLocal:
            return {"a network file system", "a disk of this machine"};
        case StoreFault::Unsafe:
            return {"a setting that the disk or SQLite did not take",
                    "one that survives a power cut"};
        case StoreFault::OutOfStep:
            return {"an event that does not continue the trail", "the next one"};
    }
    std::unreachable();
}

}  // namespace

Unusable unusable(const std::string& file, const StoreTrouble& trouble)
{
    const Said said = saidOf(trouble.fault);
    const auto number = static_cast<int>(trouble.errorNumber);
    const std::string system = number == 0 ? "" : " (" + std::string(std::strerror(number)) + ")";
    return {file, "", std::string(said.found) + system, std::string(said.expected)};
}

Unusable unusable(const std::string& file, const store::OpenFault& fault)
{
    if (fault.check == store::Check::Place && fault.trouble.errorNumber == ENOENT)
        return {file, "", "no such file", "a trail that is there"};
    Unusable what = unusable(file, fault.trouble);
    if (!fault.detail.empty())
        what.found += ": " + fault.detail;
    return what;
}

Result<std::unique_ptr<store::TrailDb>, Unusable> openTrail(const std::string& file)
{
    if (file == "-")
        return failure(Unusable{file, "", "a stream", "a trail file"});
    auto trail = store::TrailDb::open(file, store::Mode::ReadOnly);
    if (!trail)
        return failure(unusable(file, trail.error()));
    return std::move(*trail);
}

}  // namespace bathside::cli
