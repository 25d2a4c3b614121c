#include "app/system/pin_file.h"

#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QRandomGenerator>
#include <QSaveFile>
#include <algorithm>

namespace bathside::app {
namespace {

constexpr qint64 kLargest = 1024 * 1024;
constexpr auto kMine = QFileDevice::ReadOwner | QFileDevice::WriteOwner;
constexpr auto kSalt = "salt", kKey = "key", kN = "n", kR = "r", kP = "p", kPins = "pins";

QString text(const char* name) { return QString::fromLatin1(name); }

template <std::size_t Size>
QString hexOf(const std::array<std::uint8_t, Size>& bytes)
{
    const QByteArray all(reinterpret_cast<const char*>(bytes.data()), Size);
    return QString::fromLatin1(all.toHex());
}

template <std::size_t Size>
bool readHex(const QJsonValue& value, std::array<std::uint8_t, Size>& bytes)
{
    const QByteArray all = QByteArray::fromHex(value.toString().toLatin1());
    if (all.size() != static_cast<qsizetype>(Size))
        return false;
    std::copy(all.begin(), all.end(), bytes.begin());
    return true;
}

std::optional<PinHash> hashFrom(const QJsonObject& object)
{
    const auto cost = [&](const char* name) {
        return static_cast<std::uint64_t>(std::max(0, object.value(text(name)).toInt()));
    };
    PinHash hash;
    hash.cost = {.n = cost(kN), .r = cost(kR), .p = cost(kP)};
    const bool whole = readHex(object.value(text(kSalt)), hash.salt) &&
                       readHex(object.value(text(kKey)), hash.key);
    return whole ? std::optional(hash) : std::nullopt;
}

QJsonObject objectOf(const PinHash& hash)
{
    return {{text(kSalt), hexOf(hash.salt)},
            {text(kKey), hexOf(hash.key)},
            {text(kN), static_cast<qint64>(hash.cost.n)},
            {text(kR), static_cast<qint64>(hash.cost.r)},
            {text(kP), static_cast<qint64>(hash.cost.p)}};
}

std::map<PersonId, PinHash> readPins(const QString& name)
{
    std::map<PersonId, PinHash> pins;
    QFile file(name);
    if (!file.open(QIODevice::ReadOnly) || file.size() > kLargest)
        return pins;
    const QJsonObject all =
        QJsonDocument::fromJson(file.readAll()).object().value(text(kPins)).toObject();
    for (auto one = all.begin(); one != all.end(); ++one) {
        if (const auto hash = hashFrom(one.value().toObject()))
            pins[{one.key().toStdString()}] = *hash;
    }
    return pins;
}

bool writePins(const QString& name, const std::map<PersonId, PinHash>& pins)
{
    QJsonObject all;
    for (const auto& [person, hash] : pins)
        all.insert(QString::fromStdString(person.text), objectOf(hash));
    const QByteArray document = QJsonDocument(QJsonObject{{text(kPins), all}}).toJson();
    QSaveFile file(name);
    const bool isMine = file.open(QIODevice::WriteOnly) && file.setPermissions(kMine);
    return isMine && file.write(document) == document.size() && file.commit();
}

PinSalt newSalt()
{
    PinSalt salt{};
    std::ranges::generate(
        salt, [] { return static_cast<std::uint8_t>(QRandomGenerator::system()->bounded(256)); });
    return salt;
}

}  // namespace

PinFile::PinFile(std::filesystem::path file)
    : m_file(std::move(file)), m_pins(readPins(QString::fromStdString(m_file.string())))
{
}

std::filesystem::path PinFile::beside(const std::filesystem::path& trail)
{
    return std::filesystem::path(trail).replace_extension(".pins");
}

bool PinFile::isRight(const PersonId& person, const std::string& pin) const
{
    const auto known = m_pins.find(person);
    return known != m_pins.end() && bathside::isRight(pin, known->second);
}

bool PinFile::keep(const PersonId& person, const std::string& pin)
{
    const auto hash = hashOf(pin, newSalt());
    if (!hash)
        return false;
    auto pins = m_pins;
    pins[person] = *hash;
    if (!writePins(QString::fromStdString(m_file.string()), pins))
        return false;
    m_pins = std::move(pins);
    return true;
}

}  // namespace bathside::app
