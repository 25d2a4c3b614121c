#pragma once

// Whoever shows by a PIN who they are. What signs asks for a `Proven`, which only the check makes.
//
// Where the PINs are kept is the application's (D18); how long one waits after wrong ones is
// reckoned from the trail (core/people/pin.h). A try within the wait is not looked at.

#include <QString>
#include <optional>
#include <string>

#include "core/base/result.h"
#include "core/people/pin.h"
#include "ui/models/station_model.h"

namespace bathside::ui {

class PinDesk {
public:
    PinDesk() = default;
    PinDesk(const PinDesk&) = delete;
    PinDesk& operator=(const PinDesk&) = delete;
    virtual ~PinDesk() = default;

    /// There is something to check that person's PIN against.
    [[nodiscard]] virtual bool knows(const PersonId& person) const = 0;
    [[nodiscard]] virtual bool isRight(const PersonId& person, const std::string& pin) const = 0;
    /// False when it could not be written; then the old one still holds.
    [[nodiscard]] virtual bool keep(const PersonId& person, const std::string& pin) = 0;
};

class Proven {
public:
    [[nodiscard]] const PersonId& person() const noexcept { return m_person; }

private:
    friend Result<Proven, QString> proven(StationModel&, const PinDesk&, const PersonId&,
                                          const QString&, std::uint64_t);
    explicit Proven(PersonId person) : m_person(std::move(person)) {}

    PersonId m_person;
};

/// Or one sentence why not; a wrong PIN is noted in the trail.
[[nodiscard]] Result<Proven, QString> proven(StationModel& model, const PinDesk& pins,
                                             const PersonId& person, const QString& pin,
                                             std::uint64_t inputMs);

/// Those who may do that and can show who they are, by initials.
[[nodiscard]] std::vector<PersonId> signersFor(const Bench& bench, const PinDesk& pins, Act act);

}  // namespace bathside::ui
