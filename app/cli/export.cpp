#include "app/cli/export.h"

#include <algorithm>
#include <array>
#include <cstring>
#include <filesystem>
#include <memory>

#include <CLI/CLI.hpp>

#include "app/cli/trail_file.h"
#include "app/system/key_file.h"
#include "app/system/xlsx_book.h"
#include "core/base/day.h"
#include "core/record/copied_day.h"
#include "core/trail/store/day_order.h"
#include "core/trail/store/earlier_days.h"
#include "core/trail/store/folder_sink.h"
#include "core/trail/store/zone_days.h"

namespace bathside::cli {
namespace {

struct Wanted {
    store::DaysWanted days;
    std::unique_ptr<Book> book;
    bool sheet = false;  // the day sheet as PDF
};

struct Form {
    std::string_view word;
    void (*want)(Wanted&);
};

constexpr std::array kForms{
    Form{"csv",
         [](Wanted& wanted) {
             wanted.days.sheets = {CsvDialect::forPrograms(), CsvDialect::forSpreadsheets(',')};
         }},
    Form{"jsonl", [](Wanted& wanted) { wanted.days.lines = true; }},
    Form{"xlsx", [](Wanted& wanted) { wanted.book = std::make_unique<app::XlsxBook>(); }},
    Form{"pdf", [](Wanted& wanted) { wanted.sheet = true; }},
};

std::string formsText()
{
    std::string text;
    for (const Form& form : kForms)
        text.append(text.empty() ? "" : ", ").append(form.word);
    return text;
}

/// Sets what is wanted from "csv,jsonl,pdf"; the word that is no form, or nothing.
std::string readForms(std::string_view text, Wanted& wanted)
{
    while (true) {
        const auto comma = text.find(',');
        const auto word = text.substr(0, comma);
        const auto form = std::ranges::find(kForms, word, &Form::word);
        if (form == kForms.end())
            return std::string(word);
        form->want(wanted);
        if (comma == std::string_view::npos)
            return {};
        text.remove_prefix(comma + 1);
    }
}

/// The key that the manifest is signed with; null where there is none beside the trail. One that
/// was asked for and cannot be used is an error, one beside the trail is said and left.
Result<std::shared_ptr<const SealKey>, Unusable> keyFor(const ExportCall& order, Terminal& terminal)
{
    namespace fs = std::filesystem;
    const bool isAsked = !order.key.empty();
    const fs::path file =
        isAsked ? fs::path(order.key) : fs::path(order.trail).replace_filename("seal.key");
    std::error_code error;
    if (!isAsked && !fs::exists(file, error))
        return nullptr;
    auto key = app::keyIn(file);
    if (key)
        return std::make_shared<const SealKey>(std::move(*key));
    const Unusable why{file.string(), "",
                       key.error() == app::KeyFault::Open ? "a key that others may read"
                                                          : "no key that can be read",
                       "a key that seals, for its owner only"};
    if (isAsked)
        return failure(why);
    terminal.err << "bathside-cli: the manifest is not signed. " << sentence(why) << "\n";
    return nullptr;
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
    return text + (manifest.key.empty() ? "The manifest is not signed.\n"
                                        : "The manifest is signed by " + manifest.key + ".\n");
}

/// The files that this one goes on from, up to where it does.
Result<std::vector<store::SoundPart>, Unusable> partsBefore(const ExportCall& order,
                                                            const store::TrailDb& trail)
{
    std::vector<std::filesystem::path> files(order.continues.begin(), order.continues.end());
    files.emplace_back(order.trail);
    const auto parts = store::soundParts(files, trail.origin());
    const Head& from = trail.origin().after;
    const auto last = store::TrailDb::open(order.continues.back(), store::Mode::Salvage);
    if (!last)
        return failure(cli::unusable(order.continues.back(), last.error()));
    bool isThere = false;
    std::ignore = (*last)->read(from.seq, from.seq, [&](const Entry& entry) {
        isThere = entry.hash == from.hash;
        return false;
    });
    if (!isThere)
        return failure(Unusable{order.continues.back(), "seq " + std::to_string(from.seq),
                                "another event, or none",
                                "the one that " + order.trail + " goes on from"});
    return parts;
}

/// What is read, and what of it: the trail's days alone, or with what earlier files have of them.
struct Source {
    ExportOrder order;
    std::unique_ptr<const CopiedDay> copied;
};

Result<Source, Unusable> sourceFor(const ExportCall& call, const store::TrailDb& trail,
                                   store::DaysWanted wanted,
                                   const std::vector<store::SoundPart>& parts)
{
    const store::ZoneDays days;
    if (!parts.empty() && store::openingOfLastShift(trail).value_or(0) == 0)
        wanted.zone = store::zoneOf(parts);
    auto order = store::orderFor(trail, days, wanted);
    if (!order)
        return failure(unusable(call, order.error()));
    Source source{std::move(*order), {}};
    if (parts.empty())
        return source;
    const auto period = periodOf(days, source.order.zone, wanted.first, wanted.last);
    store::EarlierDays earlier = store::earlierDays(parts, period.value_or(LocalDay{}));
    std::vector<Entry>& entries = earlier.entries;
    for (const SeqRange& run : source.order.runs) {
        const auto read = trail.read(run.first - 1, run.last, [&](const Entry& entry) {
            entries.push_back(entry);
            return true;
        });
        if (!read)
            return failure(cli::unusable(call.trail, read.error()));
    }
    if (const auto done = store::prepend(earlier, trail, source.order); !done)
        return failure(cli::unusable(call.trail, done.error()));
    source.copied = std::make_unique<const CopiedDay>(trail.head(), std::move(entries));
    return source;
}

/// The sheets are without what these said; that of a shift's opening is the whole shift.
void warnOf(const std::vector<Seq>& damaged, Terminal& terminal)
{
    if (!damaged.empty())
        terminal.err << "bathside-cli: " << damaged.size()
                     << (damaged.size() == 1 ? " entry" : " entries")
                     << " cannot be read, the first is " << damaged.front()
                     << ": the sheets are without what they said. Verify the trail.\n";
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
    Wanted wanted{.days = {.first = *first,
                           .last = *last,
                           .version = BATHSIDE_VERSION,
                           .lines = false,
                           .sheets = {}},
                  .book = {},
                  .sheet = false};
    if (const auto word = readForms(order.as, wanted); !word.empty())
        return refuse(terminal, {"--as", "", word, formsText() + ", or several with commas"});
    if (wanted.sheet && drawing.handOver)
        return drawing.handOver(terminal);
    auto key = keyFor(order, terminal);
    if (!key)
        return refuse(terminal, key.error());
    wanted.days.key = std::move(*key);
    const auto trail = openTrail(order.trail);
    if (!trail)
        return refuse(terminal, trail.error());
    const bool goesOn = (*trail)->origin().after.seq > 0;
    if (goesOn && order.continues.empty())
        terminal.err << "bathside-cli: " << order.trail
                     << " goes on from an earlier file, which has cards, people and whether this "
                        "is a rehearsal. Give it by --continues.\n";
    std::vector<store::SoundPart> parts;
    if (goesOn && !order.continues.empty()) {
        auto before = partsBefore(order, **trail);
        if (!before)
            return refuse(terminal, before.error());
        parts = std::move(*before);
    }
    auto source = sourceFor(order, **trail, wanted.days, parts);
    if (!source)
        return refuse(terminal, source.error());
    const TrailStore& read =
        source->copied ? static_cast<const TrailStore&>(*source->copied) : **trail;
    ExportOrder& what = source->order;
    what.book = wanted.book.get();
    if (what.runs.empty()) {
        terminal.err << "bathside-cli: " << order.trail << " has no record of " << order.day
                     << ".\n";
        return Exit::No;
    }
    if (wanted.sheet) {
        if (const auto added = addSheet(order, read, drawing, what); !added)
            return refuse(terminal, added.error());
    }
    std::vector<Seq> damaged;
    what.damaged = &damaged;
    store::FolderSink sink(order.folder);
    const auto manifest = exportRecord(read, what, store::ZoneDays(), sink);
    warnOf(damaged, terminal);
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
    verb->add_option("--as", order->as, formsText() + ", or several with commas");
    verb->add_option("--continues", order->continues,
                     "The files that the trail goes on from, oldest first");
    verb->add_option("--seal-key", order->key,
                     "The key that signs the manifest; seal.key beside the trail when left out");
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
