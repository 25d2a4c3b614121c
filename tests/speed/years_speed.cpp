// What ten years of trail cost: starting up, a day's view, a day's export and verifying, each
// beside the same on a trail of one day, or beside a peer of the same run. Printed, not asserted.
//
// Peers: the sqlite3 shell writing the same rows as CSV, and libcrypto's SHA-256 over the same
// bytes. Files are read back from the page cache in both, so that it is work that is compared.

#include <QCoreApplication>
#include <QProcess>
#include <algorithm>
#include <cstdio>

#include "core/record/days.h"
#include "core/record/export.h"
#include "core/station/station.h"
#include "core/trail/store/check.h"
#include "core/trail/store/day_order.h"
#include "core/trail/store/folder_sink.h"
#include "core/trail/store/search.h"
#include "core/trail/store/zone_days.h"
#include "tests/support/big_trail.h"
#include "tests/support/temp_folder.h"

namespace {

using namespace bathside;
using namespace bathside::store;
using Steady = std::chrono::steady_clock;
using File = std::filesystem::path;

constexpr int kRounds = 7;

double since(Steady::time_point start)
{
    return std::chrono::duration<double>(Steady::now() - start).count();
}

[[noreturn]] void failed(const char* what)
{
    std::printf("  failed: %s\n", what);
    std::exit(1);
}

template <typename T>
T must(T&& result, const char* what)
{
    if (!result)
        failed(what);
    return std::forward<T>(result);
}

/// The middle one of several runs, in ms.
template <typename Work>
double middle(Work work)
{
    std::vector<double> ms;
    for (int i = 0; i < kRounds; ++i) {
        const auto start = Steady::now();
        work();
        ms.push_back(since(start) * 1e3);
    }
    std::ranges::nth_element(ms, ms.begin() + kRounds / 2);
    return ms[kRounds / 2];
}

std::unique_ptr<TrailDb> opened(const File& file)
{
    return std::move(*must(TrailDb::open(file, Mode::Existing), "open"));
}

void printPair(const char* name, double few, double many)
{
    std::printf("  %-38s one day %8.1f ms, the long trail %8.1f ms; ratio %.2f\n", name, few, many,
                many / few);
}

/// As a session opens: the file checked, and all events read that the state is folded from.
void startUp(const File& file)
{
    const auto trail = opened(file);
    const Seq opening = *must(openingOfLastShift(*trail), "last opening");
    std::ignore = must(entriesFrom(*trail, std::max<Seq>(1, opening)), "entries");
    std::ignore = must(carried(*trail, carriedKinds(), opening), "what is carried");
}

struct Day {
    WallTime from, to;
};

Day dayOf(const TrailDb& trail, Seq seq)
{
    const auto shifts =
        must(shiftsOpened(trail, WallTime{}, WallTime(Millis(4102444800000))), "shifts");
    const auto next = std::ranges::upper_bound(*shifts, seq, {}, &ShiftSpan::opened);
    if (next == shifts->begin())
        failed("no shift there");
    const WallTime opened = std::prev(next)->openedAt;
    return {opened - std::chrono::hours(2), opened + std::chrono::hours(22)};
}

/// As the Record page reads a day, with what later days said of it.
Seq viewOf(const TrailDb& trail, const Day& day)
{
    Seq seen = 0;
    const auto ranges = must(rangesOf(trail, day.from, day.to), "ranges");
    for (const SeqRange& range : *ranges) {
        std::ignore = must(trail.read(range.first, range.last,
                                      [&](const Entry& entry) {
                                          seen += eventOf(entry).has_value() ? 1 : 0;
                                          return true;
                                      }),
                           "read");
    }
    std::ignore = must(pointingBackAt(trail, *ranges), "what was said later");
    return seen;
}

std::chrono::year_month_day dateOf(WallTime at)
{
    return std::chrono::floor<std::chrono::days>(std::chrono::sys_time<Millis>(at));
}

/// As the Record page reads a stretch of all days.
void stretchOf(const TrailDb& trail, const Search& wanted, bool isThere)
{
    constexpr int kStretch = 1000;
    constexpr WallTime kEver{Millis(4102444800000)};
    const auto runs = must(rangesOf(trail, WallTime{}, kEver), "ranges");
    const auto seqs = must(search(trail, wanted, *runs, trail.head().seq + 1, kStretch), "search");
    if (seqs->empty() == isThere)
        failed("a search does not find what there is");
    std::ignore = must(entriesAt(trail, *seqs), "entries");
    std::ignore = must(pointingAt(trail, *seqs), "what points at them");
}

void compareStretches(const File& few, const File& many)
{
    struct Case {
        const char* name;
        Search wanted;
        bool isThere = true;
    };
    const std::vector<Case> cases{
        {"all days' newest 1000", {}},
        {"all days by kind", {.kinds = {"bag.mixed"}}},
        {"all days by person", {.person = "AB"}},
        {"all days by bag", {.bag = "B2"}},
        {"all days by lot", {.lot = "K07"}},
        {"all days by bag, lot, person, kind",
         {.kinds = {"ampoule.out"}, .person = "AB", .bag = "B2", .lot = "K07"}},
        {"all days by a lot that never was", {.lot = "none"}, false},
    };
    const auto one = opened(few), all = opened(many);
    for (const Case& each : cases)
        printPair(each.name, middle([&] { stretchOf(*one, each.wanted, each.isThere); }),
                  middle([&] { stretchOf(*all, each.wanted, each.isThere); }));
}

void exportOf(const TrailDb& trail, const Day& day, const File& folder)
{
    std::filesystem::remove_all(folder);
    const ZoneDays days;
    const DaysWanted wanted{
        dateOf(day.from), dateOf(day.from), "speed", false, {CsvDialect::forPrograms()}};
    const auto order = must(orderFor(trail, days, wanted), "order");
    FolderSink sink(folder);
    if (!exportRecord(trail, *order, days, sink))
        failed("export");
}

/// The peer: the rows of the same day, as the shell writes them.
void shellExportOf(const File& file, const std::vector<SeqRange>& ranges, const File& to)
{
    QProcess shell;
    shell.setStandardOutputFile(QString::fromStdString(to.string()));
    const QString rows = QStringLiteral("SELECT * FROM event WHERE seq BETWEEN %1 AND %2")
                             .arg(ranges.front().first)
                             .arg(ranges.back().last);
    shell.start(QStringLiteral("sqlite3"),
                {QStringLiteral("-readonly"), QStringLiteral("-csv"), QStringLiteral("-header"),
                 QString::fromStdString(file.string()), rows});
    if (!shell.waitForFinished(-1) || shell.exitCode() != 0)
        failed("the sqlite3 shell");
}

void verifyBesideHashing(TrailDb& trail)
{
    const auto start = Steady::now();
    const auto verified = must(verifyChain(trail), "verify");
    const double verifying = since(start);
    if (verified->flaw)
        failed("the trail is not sound");
    std::vector<std::string> texts;
    std::ignore = must(trail.read(1, 200'000,
                                  [&](const Entry& entry) {
                                      texts.push_back(canonicalText(entry));
                                      return true;
                                  }),
                       "read");
    const auto hashingStart = Steady::now();
    Hash hash{};
    for (const std::string& text : texts)
        hash = chained(hash, text);
    const double bound = static_cast<double>(texts.size()) / since(hashingStart);
    const double rate = static_cast<double>(verified->count) / verifying;
    std::printf(
        "  verify %.0f events/s over %lld events; libcrypto over the same bytes (bound) %.0f "
        "events/s; ratio %.2f\n",
        rate, static_cast<long long>(verified->count), bound, rate / bound);
}

void sizes(const File& file, Seq events)
{
    std::printf("  on disk %.0f bytes an event, indexes and all (%lld events, %.2f GB)\n",
                static_cast<double>(std::filesystem::file_size(file)) / static_cast<double>(events),
                static_cast<long long>(events),
                static_cast<double>(std::filesystem::file_size(file)) / 1e9);
}

void compare(const File& few, const File& many, const test::TempFolder& folder)
{
    printPair("start-up", middle([&] { startUp(few); }), middle([&] { startUp(many); }));
    double view[2] = {}, old = 0, out[2] = {};
    std::vector<SeqRange> ranges;
    const File* files[] = {&few, &many};
    for (int i = 0; i < 2; ++i) {
        const auto trail = opened(*files[i]);
        const Day day = dayOf(*trail, trail->head().seq);
        Seq seen = 0;
        const Day middleDay = dayOf(*trail, trail->head().seq / 2);
        old = middle([&] { seen = viewOf(*trail, middleDay); });
        if (seen < test::kEventsADay)
            failed("an old day's view is not the whole day");
        view[i] = middle([&] { seen = viewOf(*trail, day); });
        if (seen < test::kEventsADay)
            failed("a day's view is not the whole day");
        out[i] = middle([&] { exportOf(*trail, day, folder / "export"); });
        ranges = *must(rangesOf(*trail, day.from, day.to), "ranges");
    }
    printPair("the last day's view", view[0], view[1]);
    printPair("an old day's view", view[0], old);
    printPair("a day's export, all sheets", out[0], out[1]);
    compareStretches(few, many);
    const double shell = middle([&] { shellExportOf(many, ranges, folder / "shell.csv"); });
    std::printf(
        "  the sqlite3 shell, the same rows as one CSV (peer) %.1f ms; our six files with hashes "
        "cost %.1f times as much\n",
        shell, out[1] / shell);
}

}  // namespace

int main(int argc, char** argv)
{
    const QCoreApplication app(argc, argv);
    const test::TempFolder folder;
    const bool isLong = std::getenv("BATHSIDE_LONG") != nullptr;
    const File few = folder / "day.db", many = folder / "years.db";
    std::ignore = test::writeBigTrail(few, 1);
    const auto start = Steady::now();
    const Seq events = test::writeBigTrail(many, isLong ? 10'000'000 : 200'000);
    if (events == 0)
        failed("the disk would not take the trail");
    std::printf("years of trail (written in %.0f s)\n", since(start));
    sizes(many, events);
    compare(few, many, folder);
    const auto trail = opened(many);
    verifyBesideHashing(*trail);
    return 0;
}
