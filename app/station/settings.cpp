#include "app/station/settings.h"

#include <QSettings>
#include <algorithm>
#include <array>

#include "core/bath/probe_source.h"

namespace bathside::app {
namespace {

constexpr auto kStation = "station", kLanguage = "language", kDark = "dark",
               kPitch = "pitch_correction", kSound = "sound_device",
               kLabelPrinter = "label_printer", kLabelPaper = "label_paper",
               kSheetPrinter = "sheet_printer", kSheetPaper = "sheet_paper",
               kCopyFolder = "copy_folder", kCopyHours = "copy_every_hours",
               kCopyShift = "copy_at_shift_end", kBalancePort = "balance_port",
               kBalanceBaud = "balance_baud", kBalanceUnit = "balance_unit",
               kBalanceStill = "balance_still", kBalanceMark = "balance_mark";

QString key(const char* name) { return QString::fromLatin1(name); }

QString iniName(const std::filesystem::path& file) { return QString::fromStdString(file.string()); }

constexpr std::array<std::pair<ui::Paper, const char*>, 4> kPapers{{{ui::Paper::Label, "100x50"},
                                                                    {ui::Paper::Roll, "62"},
                                                                    {ui::Paper::A4, "A4"},
                                                                    {ui::Paper::Letter, "Letter"}}};

QString textOf(ui::Paper paper)
{
    return key(
        std::ranges::find(kPapers, paper, &std::pair<ui::Paper, const char*>::first)->second);
}

ui::Paper paperFrom(const QString& text, ui::Paper otherwise)
{
    for (const auto& [paper, name] : kPapers) {
        if (text == key(name))
            return paper;
    }
    return otherwise;
}

ui::PrintChoice readPrintChoice(const QSettings& settings)
{
    const auto textAt = [&](const char* name) { return settings.value(key(name)).toString(); };
    ui::PrintChoice found;
    found.labelPrinter = textAt(kLabelPrinter);
    found.labelPaper = paperFrom(textAt(kLabelPaper), found.labelPaper);
    found.sheetPrinter = textAt(kSheetPrinter);
    const ui::Paper sheet = paperFrom(textAt(kSheetPaper), found.sheetPaper);
    if (ui::isSheet(sheet))
        found.sheetPaper = sheet;
    return found;
}

void writePrintChoice(QSettings& settings, const ui::PrintChoice& choice)
{
    settings.setValue(key(kLabelPrinter), choice.labelPrinter);
    settings.setValue(key(kLabelPaper), textOf(choice.labelPaper));
    settings.setValue(key(kSheetPrinter), choice.sheetPrinter);
    settings.setValue(key(kSheetPaper), textOf(choice.sheetPaper));
}

constexpr int kLongestHours = 24 * 31;

ui::CopyChoice readCopyChoice(const QSettings& settings)
{
    const int hours = settings.value(key(kCopyHours), 0).toInt();
    return {.folder = settings.value(key(kCopyFolder)).toString(),
            .everyHours = std::clamp(hours, 0, kLongestHours),
            .atShiftEnd = settings.value(key(kCopyShift), false).toBool()};
}

void writeCopyChoice(QSettings& settings, const ui::CopyChoice& choice)
{
    settings.setValue(key(kCopyFolder), choice.folder);
    settings.setValue(key(kCopyHours), choice.everyHours);
    settings.setValue(key(kCopyShift), choice.atShiftEnd);
}

template <typename E>
E wordAt(const QSettings& settings, const char* name, E otherwise)
{
    return named<E>(settings.value(key(name)).toString().toStdString()).value_or(otherwise);
}

QString wordOf(auto value) { return QString::fromStdString(std::string(nameOf(value))); }

ui::BalanceChoice readBalance(const QSettings& settings)
{
    ui::BalanceChoice found;
    found.port = settings.value(key(kBalancePort)).toString().toStdString();
    const int baud = settings.value(key(kBalanceBaud), found.baud).toInt();
    if (std::ranges::find(kBauds, baud) != kBauds.end())
        found.baud = baud;
    found.format.unit = wordAt(settings, kBalanceUnit, found.format.unit);
    found.format.stillness = wordAt(settings, kBalanceStill, found.format.stillness);
    found.format.mark = settings.value(key(kBalanceMark)).toString().toStdString();
    return found;
}

void writeBalance(QSettings& settings, const ui::BalanceChoice& choice)
{
    settings.setValue(key(kBalancePort), QString::fromStdString(choice.port));
    settings.setValue(key(kBalanceBaud), choice.baud);
    settings.setValue(key(kBalanceUnit), wordOf(choice.format.unit));
    settings.setValue(key(kBalanceStill), wordOf(choice.format.stillness));
    settings.setValue(key(kBalanceMark), QString::fromStdString(choice.format.mark));
}

}  // namespace

ui::Preference readPreference(const std::filesystem::path& file)
{
    const QSettings settings(iniName(file), QSettings::IniFormat);
    ui::Preference found;
    const QString station = settings.value(key(kStation)).toString();
    if (ui::isStationName(station))
        found.station = station;
    found.language = settings.value(key(kLanguage)).toString();
    found.dark = settings.value(key(kDark), false).toBool();
    bool isNumber = false;
    const double pitch = settings.value(key(kPitch), 1.0).toDouble(&isNumber);
    found.pitchCorrection = isNumber && pitch > 0 ? pitch : 1.0;
    found.soundDevice = settings.value(key(kSound)).toString();
    found.print = readPrintChoice(settings);
    found.copies = readCopyChoice(settings);
    found.balance = readBalance(settings);
    return found;
}

bool writePreference(const std::filesystem::path& file, const ui::Preference& preference)
{
    QSettings settings(iniName(file), QSettings::IniFormat);
    settings.setValue(key(kStation), preference.station);
    settings.setValue(key(kLanguage), preference.language);
    settings.setValue(key(kDark), preference.dark);
    settings.setValue(key(kPitch), preference.pitchCorrection);
    settings.setValue(key(kSound), preference.soundDevice);
    writePrintChoice(settings, preference.print);
    writeCopyChoice(settings, preference.copies);
    writeBalance(settings, preference.balance);
    settings.sync();
    return settings.status() == QSettings::NoError;
}

}  // namespace bathside::app
