#include "app/cli/export_folder.h"

#include <array>
#include <fstream>
#include <sstream>

#include "core/record/manifest_seal.h"

namespace bathside::cli {
namespace {

namespace fs = std::filesystem;

std::optional<std::string> bytesOf(const fs::path& file)
{
    std::ifstream in(file, std::ios::binary);
    std::ostringstream bytes;
    if (!in || !(bytes << in.rdbuf()))
        return std::nullopt;
    return bytes.str();
}

/// Size and digest of a file that may be larger than memory; none: it cannot be read.
std::optional<Manifest::File> listed(const fs::path& file)
{
    std::ifstream in(file, std::ios::binary);
    if (!in)
        return std::nullopt;
    Manifest::File found{.name = file.filename().string(), .bytes = 0, .sha256 = {}};
    Sha256 digest;
    std::array<char, 64UL * 1024> piece{};
    while (in.read(piece.data(), piece.size()), in.gcount() > 0) {
        digest.add({piece.data(), static_cast<std::size_t>(in.gcount())});
        found.bytes += in.gcount();
    }
    if (in.bad())
        return std::nullopt;
    found.sha256 = digest.finish();
    return found;
}

std::string sentenceOf(SignatureFlaw flaw)
{
    switch (flaw) {
        case SignatureFlaw::NotSigned:
            return "the manifest is not signed";
        case SignatureFlaw::Missing:
            return "the manifest's signature is missing";
        case SignatureFlaw::NotGenuine:
            return "the manifest is not what was signed";
        case SignatureFlaw::OtherKey:
            return "the manifest is signed by another key than it should be";
        case SignatureFlaw::OtherPem:
            return std::string(kKeyFile) + " holds another key than the one that signed";
    }
    std::unreachable();
}

}  // namespace

Result<std::optional<ExportFolder>, Unusable> exportFolderOf(const std::string& file,
                                                             Terminal& terminal)
{
    std::error_code error;
    if (file == "-")
        return std::nullopt;
    const fs::path folder =
        fs::is_directory(file, error) ? fs::path(file) : fs::path(file).parent_path();
    const fs::path path = folder / kManifestFile;
    if (!fs::exists(path, error))
        return std::nullopt;
    auto text = wholeOf(path.string(), terminal);
    const auto manifest =
        text ? manifestFrom(*text) : Result<Manifest, ManifestFault>(failure(ManifestFault{}));
    if (!manifest)
        return failure(Unusable{path.string(),
                                manifest.error().key.empty() ? "" : "key " + manifest.error().key,
                                "", "a manifest of an export"});
    return ExportFolder{folder, *manifest, std::move(*text)};
}

std::string signatureTrouble(const ExportFolder& folder, const std::string& key)
{
    const auto flaw =
        signatureFlaw(folder.manifest, folder.text,
                      {bytesOf(folder.path / kSignatureFile), bytesOf(folder.path / kKeyFile)},
                      key.empty() ? std::nullopt : std::optional(key));
    return flaw ? sentenceOf(*flaw) : std::string();
}

std::string fileTrouble(const ExportFolder& folder)
{
    for (const Manifest::File& each : folder.manifest.files) {
        const auto found = listed(folder.path / each.name);
        if (!found)
            return each.name + " is missing or cannot be read";
        if (*found != each)
            return each.name + " is not the file that the manifest lists";
    }
    return {};
}

}  // namespace bathside::cli
