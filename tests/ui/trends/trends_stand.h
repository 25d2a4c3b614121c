#pragma once

// The page of charts beside the review: its points folded from what the stand kept.

#include "tests/ui/review/review_stand.h"
#include "ui/models/chart_source.h"
#include "ui/trends/trends_page.h"

namespace bathside::test {

/// Answers when told to, not before.
class KeptCharts final : public ui::ChartSource {
    Q_OBJECT

public:
    explicit KeptCharts(const Kept& kept) : m_kept(kept) {}

    void readPoints(const ui::PointsWanted& wanted) override { asked.push_back(wanted); }
    void readShift(Seq of) override { shifts.push_back(of); }
    void answer();

    std::vector<ui::PointsWanted> asked;
    std::vector<Seq> shifts;
    std::optional<StoreTrouble> trouble;

private:
    const Kept& m_kept;
};

class TrendsStand {
public:
    TrendsStand(const Panel& panel, const QString& language);

    [[nodiscard]] Stand& stand() { return m_pages.stand(); }
    [[nodiscard]] ReviewStand& pages() { return m_pages; }
    [[nodiscard]] KeptCharts& charts() { return m_charts; }
    [[nodiscard]] ui::TrendsPage& page() { return *m_page; }
    /// Shows the page, its points read.
    void show();
    /// A tap, and whatever is asked of the source is answered.
    void tap(const char* place);

    bool diskIsFull = false;
    std::vector<QString> saved;

private:
    ReviewStand m_pages;
    KeptCharts m_charts;
    ui::TrendsPage* m_page;
};

/// Twelve pulls of one ampoule, out of the cryogen for these seconds: the first six by MK of lot
/// K07-112, the rest by OB of lot K08-001; one weighed dose.
inline constexpr double kOutside[]{4.9, 4.7, 5.0, 5.1, 4.8, 5.1, 5.3, 5.2, 5.4, 5.2, 5.1, 9.5};
void liveThroughPulls(TrendsStand& pages);

}  // namespace bathside::test
