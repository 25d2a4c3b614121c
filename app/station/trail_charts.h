#pragma once

// What the charts over time are answered from the session's own trail.
//
// Reads go through the store's thread, one short slice at a time; each is folded on another thread
// before the next is asked for, so that years of history neither hold taps back nor fill the
// memory. Answers come on the UI thread; those that come after this is gone are dropped. Outlived
// by the session.

#include "app/station/session.h"
#include "ui/models/chart_source.h"

namespace bathside::app {

class TrailCharts final : public ui::ChartSource {
    Q_OBJECT

public:
    explicit TrailCharts(Session& session, QObject* parent = nullptr);

    void readPoints(const ui::PointsWanted& wanted) override;
    void readShift(Seq of) override;

private:
    Session& m_session;
};

}  // namespace bathside::app
