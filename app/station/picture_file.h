#pragma once

// A chart's picture as a PNG in this computer's documents, beside the exports, with a number where
// that name is taken.

#include <QImage>

#include "core/base/result.h"
#include "ui/print/fault.h"

namespace bathside::app {

/// The file's path. `name` without ending.
[[nodiscard]] Result<QString, ui::PrintFault> savePicture(const QImage& picture,
                                                          const QString& name);

}  // namespace bathside::app
