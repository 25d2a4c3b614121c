#include "app/system/file_log.h"

#include <QString>
#include <QtGlobal>

#include <spdlog/pattern_formatter.h>
#include <spdlog/sinks/rotating_file_sink.h>
#include <spdlog/sinks/stdout_sinks.h>
#include <spdlog/spdlog.h>

namespace bathside::app {
namespace {

constexpr std::size_t kLargestFile = 1024UL * 1024UL;
constexpr std::size_t kOlderFiles = 4;

spdlog::sink_ptr openFile(const std::filesystem::path& folder)
{
    return std::make_shared<spdlog::sinks::rotating_file_sink_mt>(
        (folder / "bathside.log").string(), kLargestFile, kOlderFiles);
}

void useSink(spdlog::sink_ptr sink)
{
    auto logger = std::make_shared<spdlog::logger>("bathside", std::move(sink));
    logger->set_formatter(std::make_unique<spdlog::pattern_formatter>(
        "%Y-%m-%dT%H:%M:%S.%eZ %l [%t] %v", spdlog::pattern_time_type::utc));
    logger->set_error_handler([](const std::string&) {});  // a full disk is the trail's to report
    logger->flush_on(spdlog::level::info);
    spdlog::set_default_logger(std::move(logger));
}

spdlog::level::level_enum levelOf(QtMsgType type)
{
    switch (type) {
        case QtDebugMsg:
            return spdlog::level::debug;
        case QtInfoMsg:
            return spdlog::level::info;
        case QtWarningMsg:
            return spdlog::level::warn;
        case QtCriticalMsg:
            return spdlog::level::err;
        case QtFatalMsg:
            return spdlog::level::critical;
    }
    return spdlog::level::warn;
}

void onQtMessage(QtMsgType type, const QMessageLogContext& context, const QString& text)
{
    const char* category = context.category == nullptr ? "" : context.category;
    spdlog::log(levelOf(type), "qt {}: {}", category, text.toStdString());
}

}  // namespace

LogsTo startLog(const std::filesystem::path& folder)
{
    LogsTo place = LogsTo::File;
    try {
        useSink(openFile(folder));
    } catch (const std::exception& fault) {  // spdlog reports by exception; ours stop here
        useSink(std::make_shared<spdlog::sinks::stderr_sink_mt>());
        spdlog::warn("the technical log goes to standard error: {}", fault.what());
        place = LogsTo::StandardError;
    }
    qInstallMessageHandler(onQtMessage);
    return place;
}

void logInfo(std::string_view text) { spdlog::info("{}", text); }
void logWarning(std::string_view text) { spdlog::warn("{}", text); }
void logError(std::string_view text) { spdlog::error("{}", text); }

}  // namespace bathside::app
