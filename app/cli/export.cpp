#include "app/cli/export.h"

#include <cstring>

#include <CLI/CLI.hpp>

#include "app/cli/trail_file.h"
#include "core/base/day.h"
#include "core/trail/store/day_order.h"
#include "core/trail/store/folder_sink.h"
#include "core/trail/store/zone_days.h"

namespace bathside::cli {
namespace {

struct Forms {
    store::DaysWanted wanted;
    bool sheet = false;  // the day sheet as PDF
};

/// Sets what is wanted from "csv,jsonl,pdf"; the word that is none of these, or nothing.
std::string readForms(std::string_view text, Forms& forms)
{
    store::DaysWanted& wanted = forms.wanted;
    wanted.lines = false;
    while (true) {
        const auto comma = text.find(',');
        const auto word = text.substr(0, comma);
        if (word == "jsonl")
            wanted.lines = true;
        else if (word == "pdf")
            forms.sheet = true;
        else if (word == "csv")
            wanted.sheets = {CsvDialect::forPrograms(), CsvDialect::forSpreadsheets(',')};
        else
            return std::string(word);
        if (comma == std::string_view::npos)
            return {};
        text.remove_prefix(comma + 1);
    }
}

Unusable unusable(const ExportCall& order, const ExportFault& fault)
{
    switch (fault.kind) {
        case ExportFault::Kind::NoSuchZone:
            return {order.trail, "", "a time zone that this machine does not know",
                    "one of its tz database"};
        case ExportFault::Kind::NoSuchDay:
            return {"--day", "", order.day + (order.until.empty() ? "" : " to " + order.until),
                    "days that there are, in order"};
        case ExportFault::Kind::Incomplete:
            return {order.trail, "seq " + std::to_string(fault.seq), "no event", "a whole trail"};
        case ExportFault::Kind::Trail:
            return cli::unusable(order.trail, fault.trouble);
        case ExportFault::Kind::Sink:
            break;
    }
    const std::string why = fault.sink.errorNumber == 0
                                ? "a write error"
                                : std::strerror(static_cast<int>(fault.sink.errorNumber));
    return {order.folder, fault.sink.file, why, "a folder that can be written to"};
}

std::string wordsOf(const ExportCall& order, const Manifest& manifest)
{
    std::string text = std::to_string(manifest.count) + " events from " + manifest.firstDay +
                       " to " + manifest.lastDay + " (" + manifest.zone + ") in " + order.folder +
                       ":\n";
    for (const auto& file : manifest.files)
        text += "  " + file.name + "  " + std::to_string(file.bytes) + " bytes  " +
                toHex(file.sha256) + "\n";
    return text;
}

/// The day sheet, drawn, among the files to be written.
Result<void, Unusable> addSheet(const ExportCall& call, const TrailStore& trail,
                                const SheetDrawing& drawing, ExportOrder& order)
{
    if (!drawing.draw)
        return failure(Unusable{"--as", "", "pdf", "the program bathside-paper beside this one"});
    const auto sheet = daySheetOf(trail, order);
    if (!sheet)
        return failure(unusable(call, sheet.error()));
    auto bytes = drawing.draw(*sheet, {call.paper, call.language});
    if (!bytes)
        return failure(bytes.error());
    order.also.push_back({std::string(kSheetFile), std::move(*bytes)});
    return {};
}

}  // namespace

Exit exportVerb(const ExportCall& order, Terminal& terminal, const SheetDrawing& drawing)
{
    const auto first = dayFrom(order.day);
    const auto last = order.until.empty() ? first : dayFrom(order.until);
    if (!first || !last)
        return refuse(terminal, {first ? "--until" : "--day", "", first ? order.until : order.day,
                                 "a date as YYYY-MM-DD"});
    Forms forms{{.first = *first, .last = *last, .version = BATHSIDE_VERSION, .sheets = {}}};
    if (const auto word = readForms(order.as, forms); !word.empty())
        return refuse(terminal, {"--as", "", word, "csv, jsonl or pdf, or several with commas"});
    if (forms.sheet && drawing.handOver)
        return drawing.handOver(terminal);
    const auto trail = openTrail(order.trail);
    if (!trail)
        return refuse(terminal, trail.error());
    const store::ZoneDays days;
    auto what = store::orderFor(**trail, days, forms.wanted);
    if (!what)
        return refuse(terminal, unusable(order, what.error()));
    if (what->runs.empty()) {
        terminal.err << "bathside-cli: " << order.trail << " has no record of " << order.day
                     << ".\n";
        return Exit::No;
    }
    if (forms.sheet) {
        if (const auto added = addSheet(order, **trail, drawing, *what); !added)
            return refuse(terminal, added.error());
    }
    store::FolderSink sink(order.folder);
    const auto manifest = exportRecord(**trail, *what, days, sink);
    if (!manifest)
        return refuse(terminal, unusable(order, manifest.error()));
    return print(terminal, order.json ? manifestText(*manifest) + "\n" : wordsOf(order, *manifest),
                 Exit::Done);
}

void addExport(CLI::App& app, Call& call, const SheetDrawing& drawing)
{
    const auto order = std::make_shared<ExportCall>();
    CLI::App* verb =
        app.add_subcommand("export", "Write the record of a local day or a range as files");
    verb->add_option("--trail", order->trail, "A trail no station holds open")->required();
    verb->add_option("--day", order->day, "The first local day, YYYY-MM-DD")->required();
    verb->add_option("--until", order->until, "The last local day; the same when left out");
    verb->add_option("--to", order->folder, "The folder for the files")->required();
    verb->add_option("--as", order->as, "csv, jsonl, pdf (the day sheet), or several with commas");
    verb->add_option("--paper", order->paper, "Of the day sheet: a4 or letter");
    verb->add_option("--language", order->language, "Of the day sheet: en or es");
    verb->add_flag("--json", order->json, "Print the manifest");
    verb->footer("Exit: 0 written, 1 nothing on these days, 2 unusable input.");
    verb->callback([order, &call, drawing] {
        call.run = [order, drawing](Terminal& terminal) {
            return exportVerb(*order, terminal, drawing);
        };
    });
}

}  // namespace bathside::cli
