#include "app/station/options.h"

#include <QCommandLineParser>
#include <QCoreApplication>

#include "ui/models/preferences.h"

namespace bathside::app {
namespace {

struct OptionText {
    Q_DECLARE_TR_FUNCTIONS(OptionText)
};

constexpr auto kDemoDay = ":/demo/day.jsonl";

QString option(const char* name) { return QString::fromLatin1(name); }

void describe(QCommandLineParser& parser)
{
    parser.setApplicationDescription(
        OptionText::tr("The bench-side station for making up frozen poultry vaccine."));
    parser.addHelpOption();
    parser.addVersionOption();
    const auto flag = [&](const char* name, const QString& what) {
        parser.addOption({option(name), what});
    };
    const auto value = [&](const char* name, const QString& what, const char* of) {
        parser.addOption({option(name), what, option(of)});
    };
    flag("real", OptionText::tr("Start the real day at once."));
    flag("rehearsal",
         OptionText::tr("Rehearse at once; nothing counts, and it has a trail of its own."));
    value("trail", OptionText::tr("Keep the trail in FILE."), "FILE");
    value("card", OptionText::tr("Work by the procedure card in FILE."), "FILE");
    value("station", OptionText::tr("The station's name in the record."), "NAME");
    value("lang", OptionText::tr("Language of the screen: en or es."), "LANG");
    flag("dark", OptionText::tr("Light words on a dark ground."));
    flag("light", OptionText::tr("Dark words on a light ground."));
    value("px-per-mm", OptionText::tr("Pixels per millimetre of this panel."), "N");
    flag("windowed", OptionText::tr("In a window instead of on the whole screen."));
    parser.addOption(
        {option("play-demo"), OptionText::tr("Play the demo day through the window and end.")});
    value("play", OptionText::tr("Play the script in FILE through the window and end."), "FILE");
    value("pictures", OptionText::tr("While playing, leave pictures in DIR."), "DIR");
    value("exports", OptionText::tr("After playing, leave the exported record in DIR."), "DIR");
}

Instead wrong(const QString& what)
{
    return {OptionText::tr("bathside: %1 See bathside --help.").arg(what), 2};
}

Result<void, Instead> readDisplay(const QCommandLineParser& parser, Options& options)
{
    options.windowed = parser.isSet(option("windowed"));
    options.language = parser.value(option("lang"));
    if (parser.isSet(option("dark")) || parser.isSet(option("light")))
        options.dark = parser.isSet(option("dark"));
    if (!parser.isSet(option("px-per-mm")))
        return {};
    constexpr double kLowest = 2, kHighest = 16;
    bool isNumber = false;
    const double pitch = parser.value(option("px-per-mm")).toDouble(&isNumber);
    if (!isNumber || pitch < kLowest || pitch > kHighest)
        return failure(wrong(OptionText::tr("--px-per-mm wants a number from 2 to 16.")));
    options.pxPerMm = pitch;
    return {};
}

Result<void, Instead> readStation(const QCommandLineParser& parser, Options& options)
{
    options.station = parser.value(option("station"));
    if (parser.isSet(option("station")) && !ui::isStationName(options.station))
        return failure(wrong(OptionText::tr(
            "--station wants a name of 1 to 24 signs, without a blank before or after it.")));
    return {};
}

}  // namespace

Result<Options, Instead> optionsFrom(const QStringList& arguments)
{
    QCommandLineParser parser;
    describe(parser);
    if (!parser.parse(arguments))
        return failure(wrong(parser.errorText() + u'.'));
    if (parser.isSet(option("help")))
        return failure(Instead{parser.helpText(), 0});
    if (parser.isSet(option("version")))
        return failure(Instead{QStringLiteral("bathside " BATHSIDE_VERSION), 0});
    if (!parser.positionalArguments().isEmpty())
        return failure(wrong(
            OptionText::tr("“%1” is not an option.").arg(parser.positionalArguments().first())));
    Options options;
    if (const auto display = readDisplay(parser, options); !display)
        return failure(display.error());
    if (const auto station = readStation(parser, options); !station)
        return failure(station.error());
    if (parser.isSet(option("real")))
        options.day = Day::Real;
    if (parser.isSet(option("rehearsal")))
        options.day = Day::Rehearsal;
    options.trail = parser.value(option("trail"));
    options.card = parser.value(option("card"));
    options.play = parser.isSet(option("play-demo")) ? QString::fromLatin1(kDemoDay)
                                                     : parser.value(option("play"));
    options.pictures = parser.value(option("pictures"));
    options.exports = parser.value(option("exports"));
    return options;
}

}  // namespace bathside::app
