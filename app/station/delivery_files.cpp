#include "app/station/delivery_files.h"

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <algorithm>

#include "app/station/record_places.h"

namespace bathside::app {
namespace {

constexpr qint64 kLargest = 1024 * 1024;

/// Our folder there, and the one around it.
QFileInfoList tablesIn(const ui::RecordPlace& place)
{
    const QStringList tables{QStringLiteral("*.csv")};
    QDir folder(place.folder);
    QFileInfoList found = folder.entryInfoList(tables, QDir::Files | QDir::Readable);
    if (QDir around(QFileInfo(place.folder).path()); around.exists())
        found += around.entryInfoList(tables, QDir::Files | QDir::Readable);
    return found;
}

}  // namespace

std::vector<ui::DeliveryFile> DeliveryFiles::files() const
{
    std::vector<std::pair<QDateTime, ui::DeliveryFile>> dated;
    for (const ui::RecordPlace& place : recordPlaces()) {
        for (const QFileInfo& file : tablesIn(place))
            dated.push_back({file.lastModified(), {file.filePath(), file.fileName(), place.stick}});
    }
    std::ranges::stable_sort(dated, std::greater(), &std::pair<QDateTime, ui::DeliveryFile>::first);
    std::vector<ui::DeliveryFile> files;
    for (auto& [when, file] : dated)
        files.push_back(std::move(file));
    return files;
}

std::optional<std::string> DeliveryFiles::read(const QString& path) const
{
    QFile file(path);
    if (file.size() > kLargest || !file.open(QIODevice::ReadOnly))
        return std::nullopt;
    return file.readAll().toStdString();
}

}  // namespace bathside::app
