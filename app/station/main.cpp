// bathside: the touch station.

#include <QApplication>
#include <cstdio>
#include <cstdlib>

#include "app/station/options.h"
#include "app/station/played_day.h"
#include "app/station/station_app.h"
#include "app/system/file_log.h"
#include "app/system/paths.h"

namespace {

constexpr int kUnusable = 2;

/// Before there is a window, and where there cannot be one.
int say(const QString& sentence, int exitCode)
{
    std::fputs(qPrintable(sentence), exitCode == 0 ? stdout : stderr);
    std::fputs("\n", exitCode == 0 ? stdout : stderr);
    return exitCode;
}

bool hasDisplay(const QStringList& arguments)
{
    for (const char* name : {"DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"}) {
        if (!qEnvironmentVariableIsEmpty(name))
            return true;
    }
    return arguments.contains(QStringLiteral("-platform"));
}

/// Qt gives up with a fatal message when the display that is named does not answer.
void endWithOneLine(QtMsgType type, const QMessageLogContext&, const QString& message)
{
    if (type != QtFatalMsg)
        return;
    say(QStringLiteral("bathside: the display does not answer: %1")
            .arg(message.section(u'\n', 0, 0)),
        kUnusable);
    std::_Exit(kUnusable);
}

QStringList argumentsOf(int argc, char** argv)
{
    QStringList arguments;
    for (int i = 0; i < argc; ++i)
        arguments.append(QString::fromLocal8Bit(argv[i]));
    return arguments;
}

}  // namespace

int main(int argc, char** argv)
{
    const auto options = bathside::app::optionsFrom(argumentsOf(argc, argv));
    if (!options)
        return say(options.error().text, options.error().exitCode);
    if (!hasDisplay(argumentsOf(argc, argv)))
        return say(QStringLiteral("bathside: there is no display: start it in a desktop session."),
                   kUnusable);

    qInstallMessageHandler(endWithOneLine);
    QApplication application(argc, argv);
    QCoreApplication::setApplicationName(QStringLiteral("bathside"));
    QCoreApplication::setApplicationVersion(QStringLiteral(BATHSIDE_VERSION));
    qInstallMessageHandler(nullptr);
    bathside::app::startLog(bathside::app::folderFor(bathside::app::Keeps::State));

    if (!options->play.isEmpty()) {
        const auto played = bathside::app::playDay(*options);
        return say(played ? *played : played.error(), played ? 0 : kUnusable);
    }
    bathside::app::StationApp station(*options);
    if (const auto wrong = station.start())
        return say(*wrong, kUnusable);
    return QApplication::exec();
}
