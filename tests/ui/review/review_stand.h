#pragma once

// The review and people pages beside the others.

#include "tests/ui/setup/page_stand.h"
#include "ui/models/shift_source.h"

namespace bathside::test {

/// The shifts that the stand has kept; answers when told to.
class KeptShifts final : public ui::ShiftSource {
    Q_OBJECT

public:
    explicit KeptShifts(const Kept& kept) : m_kept(kept) {}

    void readShift(Seq of) override { asked.push_back(of); }
    void answer();

    std::vector<Seq> asked;
    std::optional<StoreTrouble> trouble;

private:
    const Kept& m_kept;
};

class ReviewStand {
public:
    ReviewStand(const Panel& panel, const QString& language);

    [[nodiscard]] Stand& stand() { return m_pages.stand(); }
    [[nodiscard]] const Bench& bench() { return m_pages.stand().bench(); }
    [[nodiscard]] Pins& pins() { return m_pages.pins(); }
    [[nodiscard]] KeptShifts& shifts() { return m_shifts; }
    void show(const char* page) { m_pages.show(page); }
    /// Digits on the number pad, and set.
    void pin(const char* digits);
    void spell(const char* letters);
    /// A person's code, as a scanner types it.
    void badge(const char* initials);
    [[nodiscard]] QString notice(const char* name);

private:
    PageStand m_pages;
    KeptShifts m_shifts;
};

/// LS leads with the PIN 4071, MK prepares with the PIN 9314.
void listStaff(ReviewStand& pages);
/// EF leads, too, with the PIN 5180.
void listSecondLead(ReviewStand& pages);
/// A morning with cases of every sort: one carried from yesterday, an ampoule out too long, diluent
/// too warm, a bag too long in use, another on hold.
void liveThroughDeviations(ReviewStand& pages);

}  // namespace bathside::test
