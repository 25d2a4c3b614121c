#include "app/station/picture_file.h"

#include <QDir>

#include "app/station/record_places.h"

namespace bathside::app {

Result<QString, ui::PrintFault> savePicture(const QImage& picture, const QString& name)
{
    const QString folder = recordPlaces().front().folder;
    if (!QDir().mkpath(folder))
        return failure(ui::PrintFault::CannotWrite);
    const QString path = freeName(folder, name, QStringLiteral(".png"));
    if (!picture.save(path, "PNG"))
        return failure(ui::PrintFault::CannotWrite);
    return path;
}

}  // namespace bathside::app
