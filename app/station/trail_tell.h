#pragma once

// How an answer comes to the UI thread from the store's or a worker's: to a record that is there
// still.

#include <QCoreApplication>
#include <QPointer>

#include "app/station/trail_record.h"

namespace bathside::app {

using Guard = QPointer<TrailRecord>;

/// Runs `what` on the UI thread, unless the record is gone by then.
template <typename What>
void tell(const Guard& guard, What what)
{
    QMetaObject::invokeMethod(
        qApp,
        [guard, what = std::move(what)] {
            if (guard)
                what(*guard);
        },
        Qt::QueuedConnection);
}

}  // namespace bathside::app
