#pragma once

// Where a chart's picture goes when it is saved: the application knows.

#include <QImage>
#include <QString>
#include <functional>

#include "core/base/result.h"
#include "ui/print/fault.h"

namespace bathside::ui {

/// A file's path.
using SavePicture =
    std::function<Result<QString, PrintFault>(const QImage& picture, const QString& name)>;

}  // namespace bathside::ui
