#pragma once

// What the charts over time ask of the trail: the points of some days, and the shift in which one
// of them was made.
//
// Nothing waits: each question is answered by one signal, on the UI thread (`shiftRead` after any
// number of `entriesRead`). Nothing of the record can be changed through it.

#include <QObject>
#include <chrono>
#include <optional>
#include <vector>

#include "core/record/trend.h"
#include "core/trail/entry.h"
#include "core/trail/ports.h"

namespace bathside::ui {

struct PointsWanted {
    std::chrono::year_month_day first{}, last{};  // local days, both within
    std::vector<SeqRange> baselines;              // wanted besides, wherever they are
    int ask = 0;                                  // told with the answer
};

struct PointsAnswer {
    int ask = 0;
    TrendPoints points;
    std::optional<StoreTrouble> trouble;  // reading broke off
};

class ChartSource : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;

    virtual void readPoints(const PointsWanted& wanted) = 0;
    /// The entries of the shift that has this event.
    virtual void readShift(Seq of) = 0;

signals:
    void pointsRead(const bathside::ui::PointsAnswer& answer);
    void entriesRead(bathside::Seq of, const std::vector<bathside::Entry>& entries);
    void shiftRead(bathside::Seq of, const std::optional<bathside::StoreTrouble>& trouble);
};

}  // namespace bathside::ui
