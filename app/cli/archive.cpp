#include "app/cli/archive.h"

#include <filesystem>
#include <fstream>

#include <CLI/CLI.hpp>

#include "app/cli/trail_file.h"
#include "app/cli/verify_answer.h"
#include "app/system/key_file.h"
#include "core/facts/codec.h"
#include "core/trail/store/check.h"
#include "core/trail/store/day_order.h"
#include "core/trail/store/disk.h"
#include "core/trail/store/folder_sink.h"
#include "core/trail/store/zone_days.h"

namespace bathside::cli {
namespace {

namespace fs = std::filesystem;
using store::TrailDb;

constexpr Seq kTogether = 1000;  // entries in one append

Exit sayNo(Terminal& terminal, const std::string& why)
{
    terminal.err << "bathside-cli: nothing was archived. " << shown(why) << "\n";
    return Exit::No;
}

/// All entries between the year's first and its last, whatever their time says.
Result<SeqRange, StoreTrouble> rangeOf(const TrailDb& trail, int year)
{
    using namespace std::chrono;
    const store::ZoneDays days;
    const auto order = store::orderFor(trail, days,
                                       {.first = std::chrono::year(year) / January / 1,
                                        .last = std::chrono::year(year) / December / 31,
                                        .version = {},
                                        .lines = false,
                                        .sheets = {}});
    if (!order)
        return failure(order.error().trouble);
    return order->runs.empty() ? SeqRange{0, 0}
                               : SeqRange{order->runs.front().first, order->runs.back().last};
}

Result<Head, StoreTrouble> headBefore(const TrailDb& trail, Seq first)
{
    Head head = trail.origin().after;
    const auto read = trail.read(first - 1, first - 1, [&](const Entry& entry) {
        head = {entry.seq, entry.hash};
        return false;
    });
    if (!read)
        return failure(read.error());
    return head;
}

Result<void, StoreTrouble> fill(TrailDb& archive, const TrailDb& trail, SeqRange range)
{
    for (Seq from = range.first; from <= range.last; from += kTogether) {
        std::vector<Entry> entries;
        const auto read =
            trail.read(from, std::min(range.last, from + kTogether - 1), [&](const Entry& entry) {
                entries.push_back(entry);
                return true;
            });
        if (!read)
            return read;
        if (const auto kept = archive.append(entries); !kept)
            return kept;
    }
    return {};
}

void removePart(const fs::path& part)
{
    std::error_code none;
    for (const char* const suffix : {"", "-wal", "-journal"})
        fs::remove(part.string() + suffix, none);
}

/// Under another name until it is whole.
Result<void, Unusable> writeArchive(const ArchiveOrder& order, const TrailDb& trail, SeqRange range)
{
    const auto before = headBefore(trail, range.first);
    if (!before)
        return failure(unusable(order.trail, before.error()));
    const fs::path part = order.file + ".partial";
    removePart(part);
    Result<void, StoreTrouble> done;
    {
        auto archive = TrailDb::open(part, store::Mode::New,
                                     {.role = store::Role::Trail,
                                      .after = *before,
                                      .continues = trail.file().filename().string()});
        if (!archive)
            return failure(unusable(order.file, archive.error()));
        done = fill(**archive, trail, range);
    }
    if (done)
        done = store::syncPath(part);
    if (done)
        done = store::renameDurably(part, order.file);
    if (!done) {
        removePart(part);
        return failure(unusable(order.file, done.error()));
    }
    std::error_code none;
    fs::permissions(order.file, fs::perms::owner_read | fs::perms::group_read, none);
    return {};
}

Result<Verification, Unusable> readBack(const ArchiveOrder& order, const Head& head)
{
    const auto archive = TrailDb::open(order.file, store::Mode::ReadOnly);
    if (!archive)
        return failure(unusable(order.file, archive.error()));
    const store::Soundness found = store::check(**archive, {head});
    if (!found.isSound())
        return failure(Unusable{order.file, "", "another content than was written",
                                "a disk that keeps what is written to it"});
    return found.chain;
}

/// Never makes a key: a new one would say nothing.
Result<std::optional<SealKey>, Unusable> keyOf(const ArchiveOrder& order)
{
    if (order.key.empty())
        return std::optional<SealKey>();
    std::error_code none;
    if (fs::exists(order.key, none)) {
        if (auto key = app::keyAt(order.key))
            return std::optional<SealKey>(std::move(*key));
    }
    return failure(Unusable{order.key, "", "no key that can be read by its owner alone",
                            "the station's seal.key, mode 0600"});
}

Result<void, Unusable> writeSeal(const ArchiveOrder& order, const Head& head, const SealKey& key)
{
    const fs::path file = fs::absolute(order.file);
    const std::string name = file.filename().string() + std::string(kSealEnding);
    const std::string text = payloadOf(Fact(sealOf(head, key))) + "\n";
    store::FolderSink sink(file.parent_path());
    const auto out = sink.open(name);
    if (out && (*out)->write(text) && (*out)->finish())
        return {};
    return failure(Unusable{order.file + std::string(kSealEnding), "", "a write that failed",
                            "a folder that can be written to"});
}

std::string answer(const ArchiveOrder& order, const Verification& chain, bool isSealed)
{
    const std::string count = std::to_string(chain.count),
                      first = std::to_string(chain.first.value_or(0)),
                      last = std::to_string(chain.head.seq), hash = toHex(chain.head.hash);
    if (order.json)
        return R"({"archived":true,"year":)" + std::to_string(order.year) + R"(,"events":)" +
               count + R"(,"first":)" + first + R"(,"head":{"seq":)" + last + R"(,"hash":")" +
               hash + R"("},"sealed":)" + (isSealed ? "true" : "false") + "}\n";
    return order.file + ": " + std::to_string(order.year) + ", " + count + " events from " + first +
           " to " + last + ", " + std::to_string(chain.seals) + " seals, read back and sound" +
           (isSealed ? ", sealed." : ".") + "\nHead " + last + ":" + hash + "\n";
}

Exit write(const ArchiveOrder& order, const TrailDb& trail, SeqRange range, Terminal& terminal)
{
    const auto key = keyOf(order);
    if (!key)
        return refuse(terminal, key.error());
    std::error_code none;
    if (fs::exists(order.file, none))
        return refuse(terminal, {order.file, "", "a file",
                                 "a name that is free: an archive is never written over"});
    if (const auto written = writeArchive(order, trail, range); !written)
        return refuse(terminal, written.error());
    const auto last = headBefore(trail, range.last + 1);
    const auto chain = last ? readBack(order, *last) : failure(unusable(order.trail, last.error()));
    if (!chain)
        return refuse(terminal, chain.error());
    if (*key) {
        if (const auto sealed = writeSeal(order, chain->head, **key); !sealed)
            return refuse(terminal, sealed.error());
    }
    return print(terminal, answer(order, *chain, key->has_value()), Exit::Done);
}

}  // namespace

Exit archiveVerb(const ArchiveOrder& order, Terminal& terminal)
{
    const auto trail = openTrail(order.trail);
    if (!trail)
        return refuse(terminal, trail.error());
    const auto range = rangeOf(**trail, order.year);
    if (!range)
        return refuse(terminal, unusable(order.trail, range.error()));
    const std::string year = std::to_string(order.year);
    if (range->last == 0)
        return sayNo(terminal, order.trail + " has no record of " + year + ".");
    if ((*trail)->head().seq <= range->last)
        return sayNo(terminal, order.trail + " has nothing after " + year +
                                   ": a year is archived once it is over.");
    const store::Soundness found = store::check(**trail);
    if (!found.isSound() || found.chain.badSeal)
        return sayNo(terminal, wordsOf(order.trail, {found.chain, {}}));
    return write(order, **trail, *range, terminal);
}

void addArchive(CLI::App& app, Call& call)
{
    const auto order = std::make_shared<ArchiveOrder>();
    CLI::App* verb = app.add_subcommand("archive", "Write a closed year as a file of its own");
    verb->add_option("TRAIL", order->trail, "A trail no station holds open")->required();
    verb->add_option("--year", order->year, "Which, by the local days of the site")
        ->required()
        ->check(CLI::Range(2000, 9999));
    verb->add_option("--to", order->file, "The file to make; must not be there yet")->required();
    verb->add_option("--key", order->key, "The station's seal.key: seals the archive");
    verb->add_flag("--json", order->json, "Print one JSON object");
    verb->footer("The trail keeps everything. Exit: 0 archived, 1 not, 2 unusable input.");
    verb->callback([order, &call] {
        call.run = [order](Terminal& terminal) { return archiveVerb(*order, terminal); };
    });
}

}  // namespace bathside::cli
