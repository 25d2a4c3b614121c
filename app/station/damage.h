#pragma once

// A trail that was found damaged: it is kept as it is, and the record goes on in a file beside it.
//
// What is sound of it is read, and the first entry of the new file, `trail.continued`, says where
// it goes on. Broken off anywhere, it can be done again. No session may be open. UI thread; takes
// as long as reading the whole trail does.

#include <QString>
#include <filesystem>
#include <optional>

#include "core/base/clock.h"

namespace bathside::app {

struct Damage {
    QString sentence;     // what was found and done, for the person who starts the station
    bool goesOn = false;  // the next start works
};

/// `station`: its name in the record. None: the trail is not damaged, or not there.
[[nodiscard]] std::optional<Damage> goOnAfterDamage(const std::filesystem::path& trail,
                                                    const Clock& clock, const StationId& station);

}  // namespace bathside::app
