#pragma once

// What a page asks of the trail about a shift that is over: its entries, and what it is judged by.
//
// Nothing waits: a question is answered by any number of `entriesRead` and one `shiftRead`, on the
// UI thread. Nothing of the record can be changed through it.

#include <QObject>
#include <optional>
#include <vector>

#include "core/trail/entry.h"
#include "core/trail/ports.h"

namespace bathside::ui {

/// What stands elsewhere in the record of a shift.
struct AroundShift {
    std::vector<Entry> context;           // before it: cards, probes, people (kContextKinds)
    std::vector<Entry> later;             // after it, and pointing back into it
    std::optional<StoreTrouble> trouble;  // reading broke off
};

class ShiftSource : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;

    /// The entries of the shift that has this event.
    virtual void readShift(Seq of) = 0;

signals:
    void entriesRead(bathside::Seq of, const std::vector<bathside::Entry>& entries);
    void shiftRead(bathside::Seq of, const bathside::ui::AroundShift& around);
};

}  // namespace bathside::ui
