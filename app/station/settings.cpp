#include "app/station/settings.h"

#include <QSettings>

namespace bathside::app {
namespace {

constexpr auto kLanguage = "language", kDark = "dark", kPitch = "pitch_correction",
               kSound = "sound_device";

QString key(const char* name) { return QString::fromLatin1(name); }

QString nameOf(const std::filesystem::path& file) { return QString::fromStdString(file.string()); }

}  // namespace

ui::Preference readPreference(const std::filesystem::path& file)
{
    const QSettings settings(nameOf(file), QSettings::IniFormat);
    ui::Preference found;
    found.language = settings.value(key(kLanguage)).toString();
    found.dark = settings.value(key(kDark), false).toBool();
    bool isNumber = false;
    const double pitch = settings.value(key(kPitch), 1.0).toDouble(&isNumber);
    found.pitchCorrection = isNumber && pitch > 0 ? pitch : 1.0;
    found.soundDevice = settings.value(key(kSound)).toString();
    return found;
}

bool writePreference(const std::filesystem::path& file, const ui::Preference& preference)
{
    QSettings settings(nameOf(file), QSettings::IniFormat);
    settings.setValue(key(kLanguage), preference.language);
    settings.setValue(key(kDark), preference.dark);
    settings.setValue(key(kPitch), preference.pitchCorrection);
    settings.setValue(key(kSound), preference.soundDevice);
    settings.sync();
    return settings.status() == QSettings::NoError;
}

}  // namespace bathside::app
