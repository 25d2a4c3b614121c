#pragma once

// What PINs are checked against, in a file of its own beside the trail: scrypt's salt and result,
// never a PIN. Mode 0600; written whole or not at all. (D18)
//
// A file that cannot be read holds nothing: then nobody can sign until PINs are set anew. UI
// thread.

#include <filesystem>
#include <map>

#include "core/people/pin.h"

namespace bathside::app {

class PinFile {
public:
    /// Beside that trail: "trail.db" has "trail.pins".
    explicit PinFile(std::filesystem::path file);

    [[nodiscard]] static std::filesystem::path beside(const std::filesystem::path& trail);

    [[nodiscard]] bool knows(const PersonId& person) const { return m_pins.contains(person); }
    [[nodiscard]] bool isRight(const PersonId& person, const std::string& pin) const;
    /// False when it could not be written; then the one before holds, in the file and here.
    [[nodiscard]] bool keep(const PersonId& person, const std::string& pin);

private:
    std::filesystem::path m_file;
    std::map<PersonId, PinHash> m_pins;
};

}  // namespace bathside::app
