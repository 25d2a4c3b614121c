#include "app/system/key_file.h"

#include <QFile>
#include <QSaveFile>

namespace bathside::app {
namespace {

constexpr auto kOwnersOnly = QFileDevice::ReadOwner | QFileDevice::WriteOwner;
constexpr auto kOthers = QFileDevice::ReadGroup | QFileDevice::WriteGroup | QFileDevice::ReadOther |
                         QFileDevice::WriteOther;

Result<SealKey, KeyFault> made(const QString& name)
{
    const SealKey key = SealKey::fresh();
    QSaveFile file(name);
    if (!file.open(QIODevice::WriteOnly) || !file.setPermissions(kOwnersOnly))
        return failure(KeyFault::Unwritable);
    file.write(QByteArray::fromStdString(toHex(key.seed()) + "\n"));
    if (!file.commit())
        return failure(KeyFault::Unwritable);
    return SealKey::from(key.seed());
}

}  // namespace

Result<SealKey, KeyFault> keyAt(const std::filesystem::path& path)
{
    const QString name = QString::fromStdString(path.string());
    return QFile::exists(name) ? keyIn(path) : made(name);
}

Result<SealKey, KeyFault> keyIn(const std::filesystem::path& path)
{
    QFile file(QString::fromStdString(path.string()));
    if (!file.open(QIODevice::ReadOnly))
        return failure(KeyFault::Unreadable);
    if (file.permissions() & kOthers)
        return failure(KeyFault::Open);
    const auto seed = hashFromHex(file.readAll().trimmed().toStdString());
    if (!seed)
        return failure(KeyFault::NoKey);
    return SealKey::from(*seed);
}

}  // namespace bathside::app
