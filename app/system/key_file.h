#pragma once

// Where the station's own key is kept: one file, for its owner only (mode 0600), made on the first
// start.
//
// It holds the seed as 64 hex digits and appears whole or not at all. A file that is there and
// cannot be read is never replaced: seals by a second key would look like another station's. (Spec:
// the trail, day seal.)

#include <filesystem>

#include "core/base/result.h"
#include "core/trail/seal.h"

namespace bathside::app {

enum class KeyFault : std::uint8_t {
    Unreadable,  // it is there, and may not be opened
    NoKey,       // it is there, and holds something else
    Unwritable,  // it is not there, and cannot be made
    Open,        // others may read it: it is no secret any more
};

[[nodiscard]] Result<SealKey, KeyFault> keyAt(const std::filesystem::path& file);
/// The same, but none is made where there is none: `Unreadable`.
[[nodiscard]] Result<SealKey, KeyFault> keyIn(const std::filesystem::path& file);

}  // namespace bathside::app
