#pragma once

// The ampoules that are going to be taken out: composed on the screen before they leave the
// cryogen.
//
// Not a fact until it is tapped. Suggested from what the bags before this one had, of the lots that
// are expected now; a lot that is chosen, by a tap or a scan, replaces the others of its component.
// An ampoule that comes out leaves it, and one lost within a small pull puts its like forward.
// Values only, no clock.

#include <map>
#include <optional>
#include <vector>

#include "core/bench/bench.h"
#include "core/bench/intent.h"
#include "core/day/day_plan.h"

namespace bathside::ui {

class PullDraft {
public:
    static constexpr std::size_t kMost = 6;       // lanes on the screen
    static constexpr std::size_t kOneColumn = 3;  // lanes that fit one under another on any panel

    /// Suggests anew when another bag is being made up than before, or a pull has closed.
    /// `planned`: the bag that the plan has next; may be null.
    void follow(const Bench& bench, const NextBag* planned);

    [[nodiscard]] const std::vector<AmpouleTaken>& ampoules() const noexcept { return m_ampoules; }
    [[nodiscard]] bool empty() const noexcept { return m_ampoules.empty(); }
    /// The first one whose lot is not known yet.
    [[nodiscard]] std::optional<std::size_t> firstWithoutLot() const;

    /// Does nothing when the lanes are full.
    void add(AmpouleTaken ampoule);
    void removeAt(std::size_t index);
    void setLot(std::size_t index, const LotId& lot);
    /// Of all its ampoules of that component.
    void setLotOf(const ComponentId& component, const LotId& lot);
    [[nodiscard]] bool has(const ComponentId& component, const LotId& lot) const;
    void clear() { m_ampoules.clear(); }

private:
    void followPull(const Pull& pull);
    void followChoice(const Stores& stores);
    void leave(const Ampoule& ampoule);
    void replace(const Pull& pull, const Ampoule& lost);

    std::vector<AmpouleTaken> m_ampoules;
    std::map<ComponentId, LotId> m_chosen;  // as last followed
    std::optional<BagId> m_bag;
    int m_closedPulls = 0;
    Seq m_seen = 0;  // last event of the open pull that was followed
};

/// What the bag being made up still lacks, by the plan where it has that volume planned, else by
/// what the bag before it had; for the first bag one ampoule of each component.
[[nodiscard]] std::vector<AmpouleTaken> suggestedPull(const Bench& bench, const NextBag* planned);

/// Lots of that component that were taken out this shift, the last one first.
[[nodiscard]] std::vector<LotId> knownLots(const Bench& bench, const ComponentId& component);

}  // namespace bathside::ui
