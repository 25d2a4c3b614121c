#pragma once

// Where an export goes: a place that takes named files as streams of bytes.
//
// Whether the files then appear whole or not at all is the rim's job (written aside, synced,
// renamed, folder synced); the manifest is opened last and finished last, so a set with a manifest
// is complete.

#include <cstdint>
#include <memory>
#include <string>
#include <string_view>

#include "core/base/result.h"

namespace bathside {

struct SinkFault {
    std::string file;
    std::int64_t errorNumber = 0;  // the system's; 0 where there is none
    friend bool operator==(const SinkFault&, const SinkFault&) = default;
};

class SinkFile {
public:
    SinkFile() = default;
    SinkFile(const SinkFile&) = delete;
    SinkFile& operator=(const SinkFile&) = delete;
    virtual ~SinkFile() = default;

    [[nodiscard]] virtual Result<void, SinkFault> write(std::string_view bytes) = 0;
    /// All has been written. A file destroyed without it must not stay.
    [[nodiscard]] virtual Result<void, SinkFault> finish() = 0;
};

class Sink {
public:
    Sink() = default;
    Sink(const Sink&) = delete;
    Sink& operator=(const Sink&) = delete;
    virtual ~Sink() = default;

    /// Several may be open at a time. `name` is a plain file name.
    [[nodiscard]] virtual Result<std::unique_ptr<SinkFile>, SinkFault> open(
        const std::string& name) = 0;
};

}  // namespace bathside
