#pragma once

// A trail that goes on after damage.
//
// The damaged file stays where and as it is. The next one stands beside it ("trail.db",
// "trail.part-2.db" …): its origin is the last good head, and its first entry, `trail.continued`,
// says so. Whoever names a trail names its first file. (Spec: the trail, faults.)

#include <optional>
#include <vector>

#include "core/trail/store/trail_db.h"

namespace bathside::store {

/// The files of that trail, oldest first; the first alone, there or not, where nothing continues
/// it.
[[nodiscard]] std::vector<std::filesystem::path> partsOf(const std::filesystem::path& trail);
/// The name that the file after the last one has.
[[nodiscard]] std::filesystem::path nextPart(const std::filesystem::path& trail);

/// Whether a file was to continue another one, and its making was broken off.
[[nodiscard]] bool lacksFirstEntry(const std::filesystem::path& file);

/// A file that was damaged, and how far it is sound and continued.
struct SoundPart {
    std::filesystem::path file;
    Seq last = 0;
};

/// Those before the last of a trail's files, whose origin is `origin`; without a file of which
/// nothing is sound.
[[nodiscard]] std::vector<SoundPart> soundParts(std::vector<std::filesystem::path> files,
                                                const Origin& origin);

/// Whether not even the header is left of a trail, so that SQLite takes it for no file of its own.
/// By its name a trail ends in ".db": a file that was named by mistake is not taken for a ruin.
[[nodiscard]] bool isDestroyed(const std::filesystem::path& trail);

/// Why a file cannot be gone on with, where that is damage: to its pages, its tables, the end of
/// its chain, or to what a start reads of it. Reads only.
[[nodiscard]] std::optional<OpenFault> damageOf(const std::filesystem::path& file);

}  // namespace bathside::store
