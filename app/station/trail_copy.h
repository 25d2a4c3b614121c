#pragma once

// One copy of the record: written by the store's thread, read back and checked on another.
//
// The file's name says which station and when; no file replaces another. What was not finished is
// removed, so a copy is whole or not there.

#include <functional>

#include "app/station/session.h"
#include "ui/models/record_source.h"

namespace bathside::app {

/// Whether a folder lies on a stick that is not in.
[[nodiscard]] bool isStickMissing(const QString& folder);

/// `done` is called once, on the UI thread. The folder is made where only it is missing.
void copyTrail(Session& session, const QString& folder,
               std::function<void(const ui::CopyAnswer&)> done);

}  // namespace bathside::app
