#pragma once

// What an export says about itself: which part of which trail it is, and the digest of each file.
//
// Canonical JSON in one line. `head` is the trail's head when the export was made: kept elsewhere,
// it is a witness for the whole trail later. A manifest proves nothing by itself: who can change
// the files can change it, too, unless it is kept apart or signed. A signed one names its key; the
// signature is over its very bytes and lies beside it (manifest_seal.h). Reading is strict. (Spec:
// the trail, export.)

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/base/result.h"
#include "core/trail/entry.h"
#include "core/trail/seq_range.h"

namespace bathside {

inline constexpr std::string_view kManifestFile = "manifest.json";
inline constexpr std::string_view kEventsFile = "events.jsonl";
inline constexpr std::string_view kBookFile = "record.xlsx";

struct Manifest {
    struct File {
        std::string name;
        std::int64_t bytes = 0;
        Hash sha256{};
        friend bool operator==(const File&, const File&) = default;
    };

    std::string version;  // of the program that wrote it
    std::string station;  // empty when there are no events
    bool rehearsal = false;
    std::string zone;      // IANA name by which the days were cut
    std::string firstDay;  // ISO 8601 dates, both within
    std::string lastDay;
    WallTime from{};  // first day's first instant
    WallTime to{};    // the first instant after the last day
    Head head;        // of the trail
    Head last;        // of the export: its last entry; seq 0 when there is none
    std::int64_t count = 0;
    std::vector<SeqRange> runs;
    std::vector<File> files;
    std::string key{};  // of the signature beside it, public, hex; empty: it is not signed

    friend bool operator==(const Manifest&, const Manifest&) = default;
};

struct ManifestFault {
    std::string key;  // empty: the document itself
    friend bool operator==(const ManifestFault&, const ManifestFault&) = default;
};

[[nodiscard]] std::string manifestText(const Manifest& manifest);
[[nodiscard]] Result<Manifest, ManifestFault> manifestFrom(std::string_view text);

}  // namespace bathside
