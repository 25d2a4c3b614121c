#include "app/cli/replay.h"

#include <QFile>
#include <filesystem>

#include <CLI/CLI.hpp>

#include "app/cli/trail_file.h"
#include "core/card/read.h"
#include "core/replay/player.h"
#include "core/trail/json_text.h"
#include "core/trail/store/direct_recorder.h"
#include "core/trail/store/disk_files.h"
#include "core/trail/store/zone_days.h"

namespace bathside::cli {
namespace {

constexpr auto kStation = "replay";

std::string defaultCard()
{
    QFile file(QStringLiteral(":/cards/default.json"));
    (void)file.open(QIODevice::ReadOnly);
    return file.readAll().toStdString();
}

Result<std::string, Unusable> cardDocument(const std::string& file, Terminal& terminal)
{
    if (file.empty())
        return defaultCard();
    auto text = wholeOf(file, terminal);
    if (!text)
        return text;
    if (const auto card = cardFrom(*text); !card)
        return failure(unusable(file, card.error()));
    return text;
}

std::string sentenceOf(const PlayFault& fault)
{
    const std::string where = "line " + std::to_string(fault.line) + " (" + fault.verb + ") ";
    switch (fault.kind) {
        case PlayFault::Kind::GoesBack:
            return where + "goes back in time";
        case PlayFault::Kind::NotRefused:
            return where + "was taken although a refusal was expected";
        case PlayFault::Kind::UnknownEntry:
            return where + "corrects an entry that no line before it has";
        case PlayFault::Kind::Refused:
            break;
    }
    std::string why = where + "was refused: " + std::string(nameOf(fault.refusal.code));
    if (!fault.refusal.subject.id.empty())
        why += ", " + toText(fault.refusal.subject);
    if (!fault.refusal.detail.empty())
        why += ", " + fault.refusal.detail;
    return why;
}

struct Counts {
    std::int64_t events = 0, ampoules = 0, bags = 0, deviations = 0;
};

Counts countsOf(const Bench& bench)
{
    Counts counts{.events = bench.lastSeq,
                  .bags = std::ssize(bench.bags),
                  .deviations = std::ssize(bench.judgements)};
    for (const Pull& pull : bench.pulls)
        counts.ampoules += std::ssize(pull.ampoules);
    return counts;
}

std::string answer(const ReplayOrder& order, const Counts& counts,
                   const std::optional<PlayFault>& fault)
{
    const auto number = [](std::int64_t value) { return std::to_string(value); };
    if (!order.json)
        return number(counts.events) + " events in " + order.trail + ": " +
               number(counts.ampoules) + " ampoules, " + number(counts.bags) + " bags, " +
               number(counts.deviations) + " deviations that stand.\n";
    std::string text = R"({"played":)" + std::string(fault ? "false" : "true") + R"(,"events":)" +
                       number(counts.events) + R"(,"ampoules":)" + number(counts.ampoules) +
                       R"(,"bags":)" + number(counts.bags) + R"(,"deviations":)" +
                       number(counts.deviations);
    if (fault) {
        text += R"(,"line":)" + number(fault->line) + R"(,"why":)";
        appendJsonString(text, sentenceOf(*fault));
    }
    return text + "}\n";
}

Exit play(const ReplayOrder& order, const std::vector<ScriptEntry>& script, std::string card,
          Terminal& terminal)
{
    store::DiskFiles files({.trail = order.trail, .spoolFolders = {}}, store::Mode::New);
    store::DirectRecorder recorder(files, StationId{kStation});
    if (const auto started = recorder.start(); !started)
        return refuse(terminal, files.refusal() ? unusable(order.trail, *files.refusal())
                                                : unusable(order.trail, started.error()));
    const store::ZoneDays days;
    Player player(script, std::move(card), recorder, BATHSIDE_VERSION);
    player.planBy(days);
    const auto fault = player.play();
    if (const RecordState record = recorder.state(); record.health != RecordState::Health::Recorded)
        return refuse(terminal, unusable(order.trail, record.trouble));
    if (fault)
        terminal.err << "bathside-cli: " << order.script << ", " << sentenceOf(*fault) << ".\n";
    return print(terminal, answer(order, countsOf(player.station().bench()), fault),
                 fault ? Exit::No : Exit::Done);
}

}  // namespace

Exit replayVerb(const ReplayOrder& order, Terminal& terminal)
{
    const auto text = wholeOf(order.script, terminal);
    if (!text)
        return refuse(terminal, text.error());
    const auto script = scriptFrom(*text);
    if (!script) {
        Unusable what = unusable(order.script, script.error().fault);
        what.where = "line " + std::to_string(script.error().line) +
                     (what.where.empty() ? "" : ", " + what.where);
        return refuse(terminal, what);
    }
    auto card = cardDocument(order.card, terminal);
    if (!card)
        return refuse(terminal, card.error());
    std::error_code error;
    if (std::filesystem::exists(order.trail, error))
        return refuse(terminal, {order.trail, "", "a file",
                                 "a name that is free: a replay never adds to a trail"});
    return play(order, *script, std::move(*card), terminal);
}

void addReplay(CLI::App& app, Call& call)
{
    const auto order = std::make_shared<ReplayOrder>();
    CLI::App* verb = app.add_subcommand(
        "replay", "Play a script of taps into a new trail, on a simulated clock");
    verb->add_option("SCRIPT", order->script, "JSON Lines, one entry a line; - is standard input")
        ->required();
    verb->add_option("--trail", order->trail, "The trail to write; must not exist yet")->required();
    verb->add_option("--card", order->card, "Another procedure card than the default one");
    verb->add_flag("--json", order->json, "Print one JSON object");
    verb->footer("Exit: 0 played, 1 stopped at a line, 2 unusable input.");
    verb->callback([order, &call] {
        call.run = [order](Terminal& terminal) { return replayVerb(*order, terminal); };
    });
}

}  // namespace bathside::cli
