#pragma once

// An export as it lies in a folder: its manifest, the signature beside it, and the files it lists.

#include <filesystem>
#include <optional>
#include <string>

#include "app/cli/verb.h"
#include "core/record/manifest.h"

namespace bathside::cli {

struct ExportFolder {
    std::filesystem::path path;
    Manifest manifest;
    std::string text;  // the manifest's bytes
};

/// The folder of that export: `file` is the folder itself, its manifest, or one of its files. None
/// where no manifest lies there.
[[nodiscard]] Result<std::optional<ExportFolder>, Unusable> exportFolderOf(const std::string& file,
                                                                           Terminal& terminal);

/// What is wrong with the signature, in words; empty: nothing, or there is none and none was
/// expected. `key`: the one known from elsewhere, hex; empty: none.
[[nodiscard]] std::string signatureTrouble(const ExportFolder& folder, const std::string& key);

/// The first listed file that is missing or another, in words; empty: none.
[[nodiscard]] std::string fileTrouble(const ExportFolder& folder);

}  // namespace bathside::cli
