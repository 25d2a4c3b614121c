// The same trails, sound and tampered with, put to Bathside's verifier and to two that share
// nothing with it: Python with its standard library, and a shell script with sqlite3 and openssl
// (README shows both to the auditor). All three must name the same first bad seq.

#include <array>
#include <cstdio>
#include <fstream>
#include <functional>
#include <string>
#include <vector>

#include <gtest/gtest.h>

#include "core/record/export.h"
#include "core/record/verify_export.h"
#include "core/trail/json_lines.h"
#include "core/trail/store/check.h"
#include "tests/core/trail/store/support.h"
#include "tests/support/local_days.h"
#include "tests/support/memory_trail.h"
#include "tests/support/sample_log.h"
#include "tests/support/temp_folder.h"

namespace bathside {
namespace {

using namespace std::chrono_literals;

constexpr Seq kCount = 30;

struct Said {
    int exitCode = -1;
    std::string text;
};

Said run(const std::string& tool, const std::filesystem::path& file, const std::string& heads = "")
{
    const std::string command =
        "'" BATHSIDE_TOOLS "/" + tool + "' '" + file.string() + "' " + heads + " 2>&1";
    Said said;
    std::FILE* pipe = popen(command.c_str(), "r");
    std::array<char, 512> piece{};
    while (std::fgets(piece.data(), piece.size(), pipe))
        said.text += piece.data();
    said.exitCode = WEXITSTATUS(pclose(pipe));
    return said;
}

std::string headText(const Head& head) { return std::to_string(head.seq) + ":" + toHex(head.hash); }

/// Both tools say what was found here.
void expectBothSay(const Verification& found, const std::filesystem::path& file,
                   const std::string& heads = "")
{
    for (const char* tool : {"verify_trail.py", "verify_trail.sh"}) {
        SCOPED_TRACE(tool);
        const Said said = run(tool, file, heads);
        const std::string sound = "sound: " + std::to_string(found.count) + " events";
        const std::string expected =
            found.flaw ? "seq " + std::to_string(found.flaw->seq) + ":" : sound;
        EXPECT_EQ(said.exitCode, found.flaw ? 1 : 0) << said.text;
        EXPECT_TRUE(said.text.starts_with(expected)) << said.text << "expected: " << expected;
    }
}

class Independent : public testing::Test {
protected:
    test::TempFolder folder;
    const std::vector<Entry> log = test::sampleLog(kCount);
    const Head witness{kCount, log.back().hash};
};

class IndependentLines : public Independent {
protected:
    std::vector<std::string> lines(Seq from, Seq to) const
    {
        std::vector<std::string> all;
        for (Seq seq = from; seq <= to; ++seq) {
            const auto at = static_cast<std::size_t>(seq - 1);
            const bool follows = seq == from && seq > 1;
            all.push_back(
                toLine({log[at], follows ? std::optional(log[at - 1].hash) : std::nullopt}));
        }
        return all;
    }

    void expectAgreement(const std::vector<std::string>& all, const std::string& heads = "",
                         std::vector<Head> witnesses = {})
    {
        const auto file = folder / "events.jsonl";
        std::ofstream out(file, std::ios::binary);
        ExportVerifier verifier(std::nullopt, std::move(witnesses));
        for (const std::string& line : all) {
            out << line << '\n';
            verifier.add(line + "\n");
        }
        out.close();
        expectBothSay(verifier.finish().chain, file, heads);
    }
};

TEST_F(IndependentLines, soundOnesAreSound)
{
    expectAgreement(lines(1, kCount));
    expectAgreement(lines(10, 20));
    expectAgreement(lines(1, kCount), headText(witness), {witness});
    expectAgreement(lines(7, 7));
}

TEST_F(IndependentLines, tamperedOnesAreFoundAtTheSameSeq)
{
    using Lines = std::vector<std::string>;
    const auto changed = [](std::string& line, const std::string& what, const std::string& by) {
        const auto at = line.find(what);
        ASSERT_NE(at, std::string::npos) << line;
        line.replace(at, what.size(), by);
    };
    const std::vector<std::function<void(Lines&, std::size_t)>> tampers{
        [&](Lines& all, std::size_t at) { changed(all[at], "\"at\":\"2026", "\"at\":\"2025"); },
        [&](Lines& all, std::size_t at) { changed(all[at], "\"boot_us\":", "\"boot_us\":1"); },
        [&](Lines& all, std::size_t at) { changed(all[at], "\"tap\":\"tap", "\"tap\":\"tape"); },
        [&](Lines& all, std::size_t at) {
            changed(all[at], "\"payload\":{", "\"payload\":{\"\":0,");
        },
        [&](Lines& all, std::size_t at) { changed(all[at], "\"kind\":\"", "\"kind\":\"x"); },
        [&](Lines& all, std::size_t at) { all[at].resize(40); },
        [](Lines& all, std::size_t at) {
            all.erase(all.begin() + static_cast<std::ptrdiff_t>(at));
        },
        [](Lines& all, std::size_t at) {
            all.insert(all.begin() + static_cast<std::ptrdiff_t>(at), all[at]);
        },
        [](Lines& all, std::size_t at) { all.resize(at); },
    };
    for (const std::size_t at :
         {std::size_t(0), std::size_t(kCount / 2), std::size_t(kCount - 1)}) {
        for (std::size_t i = 0; i < tampers.size(); ++i) {
            SCOPED_TRACE("tamper " + std::to_string(i) + " at line " + std::to_string(at + 1));
            auto all = lines(1, kCount);
            tampers[i](all, at);
            if (i == 5 && at == 0)
                continue;  // a first line of which nothing can be read names no seq
            expectAgreement(all, headText(witness), {witness});
        }
    }
}

TEST_F(IndependentLines, aTrailWrittenAnewIsFoundByTheWitness)
{
    auto anew = log;
    anew[10].payload = R"({"text":"all was well"})";
    std::vector<std::string> all;
    for (std::size_t i = 0; i < anew.size(); ++i) {
        chain(anew[i], i == 0 ? Hash{} : anew[i - 1].hash);
        all.push_back(toLine({anew[i], std::nullopt}));
    }
    expectAgreement(all);
    expectAgreement(all, headText(witness), {witness});
}

TEST_F(Independent, aManifestBesideTheLinesIsUsed)
{
    const test::MemoryTrail trail(log);
    const auto day = 2026y / std::chrono::March / 5;
    const ExportOrder order{.zone = "UTC",
                            .firstDay = day,
                            .lastDay = day,
                            .version = "0.1.0",
                            .runs = {{5, 20}, {25, 30}},
                            .context = {},
                            .origin = {},
                            .lines = true,
                            .sheets = {CsvDialect::forPrograms()}};
    test::MemorySink sink;
    ASSERT_TRUE(exportRecord(trail, order, test::TableDays(), sink));
    for (const auto& [name, bytes] : sink.files)
        std::ofstream(folder / name, std::ios::binary) << bytes;
    EXPECT_EQ(run("verify_trail.py", folder / "events.jsonl").exitCode, 0);
    std::ofstream(folder / "bags.csv", std::ios::binary | std::ios::app) << "x";
    EXPECT_EQ(run("verify_trail.py", folder / "events.jsonl").text.substr(0, 9), "bags.csv:");
}

TEST_F(Independent, databasesAreReadAsTheyAre)
{
    const auto file = store::written(folder / "trail.db", log);
    expectBothSay(store::verifyChain(*store::opened(file, store::Mode::ReadOnly)).value(), file,
                  headText(witness));
}

TEST_F(Independent, tamperedDatabasesAreFoundAtTheSameSeq)
{
    const std::vector<std::string> tampers{
        "UPDATE event SET at = '2025-03-05T06:00:00.000Z' WHERE seq = @",
        "UPDATE event SET boot_us = boot_us + 1 WHERE seq = @",
        "UPDATE event SET boot_id = '00000000-0000-0000-0000-000000000000' WHERE seq = @",
        "UPDATE event SET person = 'ZZ', proof = 'proven' WHERE seq = @",
        "UPDATE event SET tap = tap || 'x' WHERE seq = @",
        "UPDATE event SET place = 'elsewhere' WHERE seq = @",
        "UPDATE event SET by_receipt = 1 - by_receipt WHERE seq = @",
        "UPDATE event SET card = 'other' WHERE seq = @",
        "UPDATE event SET kind = kind || 's' WHERE seq = @",
        "UPDATE event SET payload = '{\"text\":\"all was well\"}' WHERE seq = @",
        "UPDATE event SET spool_seq = 1, spool_hash = zeroblob(32) WHERE seq = @",
        "UPDATE event SET hash = randomblob(32) WHERE seq = @",
        "DELETE FROM event WHERE seq = @",
        "DELETE FROM event WHERE seq >= @",
    };
    const auto sound = store::written(folder / "sound.db", log);
    const auto file = folder / "trail.db";
    for (const Seq seq : {Seq(1), kCount / 2, kCount}) {
        for (const std::string& sql : tampers) {
            SCOPED_TRACE(sql + " " + std::to_string(seq));
            std::filesystem::copy_file(sound, file,
                                       std::filesystem::copy_options::overwrite_existing);
            ASSERT_EQ(
                store::tamper(file, std::string(sql).replace(sql.find('@'), 1, std::to_string(seq)))
                    .first,
                0);
            const auto trail = store::TrailDb::open(file, store::Mode::Salvage);
            ASSERT_TRUE(trail);
            const Verification found = store::verifyChain(**trail, {witness}).value();
            ASSERT_TRUE(found.flaw);
            EXPECT_EQ(found.flaw->seq, seq);
            expectBothSay(found, file, headText(witness));
        }
    }
}

TEST_F(Independent, whatIsNoTrailIsUnusable)
{
    std::ofstream(folder / "other.db", std::ios::binary)
        << std::string("SQLite format 3\0", 16) << "nothing";
    EXPECT_EQ(run("verify_trail.py", folder / "other.db").exitCode, 2);
    EXPECT_EQ(run("verify_trail.py", folder / "not there").exitCode, 2);
    EXPECT_NE(run("verify_trail.sh", folder / "not there").exitCode, 0);
}

}  // namespace
}  // namespace bathside
