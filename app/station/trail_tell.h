#pragma once

// How an answer comes to the UI thread from the store's or a worker's: to an object that is there
// still.

#include <QCoreApplication>
#include <QPointer>

#include "core/base/ids.h"

namespace bathside::app {

/// Entries that are read together: a few milliseconds of the store's thread.
inline constexpr Seq kSlice = 500;

/// Runs `what` on the UI thread, unless `guard` is gone by then.
template <typename To, typename What>
void tell(const QPointer<To>& guard, What what)
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
