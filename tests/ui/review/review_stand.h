#pragma once

// The review and people pages beside the others; PINs kept in memory, checked as the real ones are.

#include <map>

#include "tests/ui/setup/page_stand.h"
#include "ui/models/pin_desk.h"

namespace bathside::test {

class Pins final : public ui::PinDesk {
public:
    [[nodiscard]] bool knows(const PersonId& person) const override { return all.contains(person); }
    [[nodiscard]] bool isRight(const PersonId& person, const std::string& pin) const override;
    [[nodiscard]] bool keep(const PersonId& person, const std::string& pin) override;

    std::map<PersonId, PinHash> all;
    bool diskIsFull = false;
};

class ReviewStand {
public:
    ReviewStand(const Panel& panel, const QString& language);

    [[nodiscard]] Stand& stand() { return m_pages.stand(); }
    [[nodiscard]] const Bench& bench() { return m_pages.stand().bench(); }
    [[nodiscard]] Pins& pins() { return m_pins; }
    void show(const char* page) { m_pages.show(page); }
    /// Digits on the number pad, and set.
    void pin(const char* digits);
    void spell(const char* letters);
    [[nodiscard]] QString notice(const char* name);

private:
    Pins m_pins;
    PageStand m_pages;
};

/// LS leads with the PIN 4071, MK prepares with the PIN 9314.
void listStaff(ReviewStand& pages);
/// A morning with cases of every sort: one carried from yesterday, an ampoule out too long, diluent
/// too warm, a bag too long in use, another on hold.
void liveThroughDeviations(ReviewStand& pages);

}  // namespace bathside::test
