#include "app/station/record_places.h"

#include <QDir>
#include <QStandardPaths>
#include <QStorageInfo>

namespace bathside::app {
namespace {

constexpr auto kFolder = "bathside";

QString ours(const QString& folder) { return folder + u'/' + QString::fromLatin1(kFolder); }

// Where desktops mount removable media (udisks2; Filesystem Hierarchy Standard 3.0, 3.11 and 3.15).
bool isStick(const QStorageInfo& volume)
{
    const QString root = volume.rootPath();
    return volume.isValid() && volume.isReady() && !volume.isReadOnly() &&
           (root.startsWith(QLatin1String("/media/")) ||
            root.startsWith(QLatin1String("/run/media/")));
}

}  // namespace

std::vector<ui::RecordPlace> recordPlaces()
{
    std::vector<ui::RecordPlace> places{
        {ours(QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation)), {}}};
    for (const QStorageInfo& volume : QStorageInfo::mountedVolumes()) {
        if (!isStick(volume))
            continue;
        const QString name = volume.displayName();
        places.push_back({ours(volume.rootPath()), QDir(name).dirName()});
    }
    return places;
}

QString freeName(const QString& folder, const QString& name, const QString& ending)
{
    const QDir there(folder);
    QString free = name + ending;
    for (int number = 2; there.exists(free); ++number)
        free = QStringLiteral("%1-%2%3").arg(name).arg(number).arg(ending);
    return there.filePath(free);
}

}  // namespace bathside::app
