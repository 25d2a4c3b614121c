#pragma once

// The screen's way to the file of PINs.

#include "app/system/pin_file.h"
#include "ui/models/pin_desk.h"

namespace bathside::app {

class Pins final : public ui::PinDesk {
public:
    explicit Pins(const std::filesystem::path& trail) : m_file(PinFile::beside(trail)) {}

    [[nodiscard]] bool knows(const PersonId& person) const override { return m_file.knows(person); }
    [[nodiscard]] bool isRight(const PersonId& person, const std::string& pin) const override
    {
        return m_file.isRight(person, pin);
    }
    [[nodiscard]] bool keep(const PersonId& person, const std::string& pin) override
    {
        return m_file.keep(person, pin);
    }

private:
    PinFile m_file;
};

}  // namespace bathside::app
