#pragma once

// An export's files in a folder, each whole or not at all.
//
// A file is written aside as `.<name>.part`, synced, renamed over what had its name, and the folder
// is synced. What was not finished is removed. The folder is made where it is missing.

#include <filesystem>

#include "core/record/sink.h"

namespace bathside::store {

class FolderSink final : public Sink {
public:
    explicit FolderSink(std::filesystem::path folder) : m_folder(std::move(folder)) {}

    [[nodiscard]] Result<std::unique_ptr<SinkFile>, SinkFault> open(
        const std::string& name) override;

private:
    std::filesystem::path m_folder;
};

}  // namespace bathside::store
