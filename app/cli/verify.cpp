#include "app/cli/verify.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <filesystem>
#include <fstream>

#include <CLI/CLI.hpp>

#include "app/cli/export_folder.h"
#include "app/cli/trail_file.h"
#include "core/record/verify_export.h"
#include "core/trail/json_text.h"
#include "core/trail/store/check.h"

namespace bathside::cli {
namespace {

struct Answer {
    Verification chain;
    std::string also;      // what else is wrong; empty: nothing
    std::string signedBy;  // the key of an export's manifest; empty: none
    [[nodiscard]] bool isSound() const { return !chain.flaw && !chain.badSeal && also.empty(); }
};

std::string sentenceOf(const Flaw& flaw)
{
    std::string text =
        "first bad event: seq " + std::to_string(flaw.seq) + ", " + std::string(nameOf(flaw.kind));
    return flaw.detail.empty() ? text : text + " (" + flaw.detail + ")";
}

std::string sentenceOf(const BadSeal& bad)
{
    const std::string seal = "the seal at seq " + std::to_string(bad.seq) + " ";
    switch (bad.flaw) {
        case SealFlaw::NotGenuine:
            return seal + "is not signed by the key that it names";
        case SealFlaw::OtherHead:
            return seal + "seals another trail than this one";
        case SealFlaw::OtherKey:
            return seal + "is by another key than it should be";
    }
    return seal;
}

std::string jsonOf(const Answer& answer)
{
    std::string text = R"({"sound":)" + std::string(answer.isSound() ? "true" : "false") +
                       R"(,"events":)" + std::to_string(answer.chain.count) + R"(,"head":{"seq":)" +
                       std::to_string(answer.chain.head.seq) + R"(,"hash":)";
    appendJsonString(text, toHex(answer.chain.head.hash));
    text += "}";
    if (const auto& flaw = answer.chain.flaw) {
        text += R"(,"seq":)" + std::to_string(flaw->seq) + R"(,"flaw":)";
        appendJsonString(text, nameOf(flaw->kind));
    }
    text += R"(,"seals":)" + std::to_string(answer.chain.seals);
    if (const auto& bad = answer.chain.badSeal) {
        text += R"(,"seal":{"seq":)" + std::to_string(bad->seq) + R"(,"flaw":)";
        appendJsonString(text, nameOf(bad->flaw));
        text += "}";
    }
    if (!answer.signedBy.empty()) {
        text += R"(,"signed_by":)";
        appendJsonString(text, answer.signedBy);
    }
    if (!answer.also.empty()) {
        text += R"(,"also":)";
        appendJsonString(text, answer.also);
    }
    return text + "}\n";
}

std::string wordsOf(const std::string& file, const Answer& answer)
{
    const std::string head =
        std::to_string(answer.chain.head.seq) + ":" + toHex(answer.chain.head.hash);
    if (answer.isSound())
        return file + ": sound, " + std::to_string(answer.chain.count) + " events, " +
               std::to_string(answer.chain.seals) + " seals.\nHead " + head + "\n" +
               (answer.signedBy.empty() ? "" : "Signed by " + answer.signedBy + "\n");
    std::string text = file + ": NOT sound";
    if (answer.chain.flaw)
        text += "; " + sentenceOf(*answer.chain.flaw);
    if (answer.chain.badSeal)
        text += "; " + sentenceOf(*answer.chain.badSeal);
    if (!answer.also.empty())
        text += "; " + answer.also;
    return text + ".\nSound up to " + head + "\n";
}

std::optional<Head> headFrom(std::string_view text)
{
    Head head;
    const auto colon = text.find(':');
    if (colon == std::string_view::npos)
        return std::nullopt;
    const auto read = std::from_chars(text.data(), text.data() + colon, head.seq);
    const auto hash = hashFromHex(text.substr(colon + 1));
    if (read.ec != std::errc{} || read.ptr != text.data() + colon || !hash)
        return std::nullopt;
    head.hash = *hash;
    return head;
}

std::optional<std::string> keyOf(const VerifyOrder& order)
{
    return order.key.empty() ? std::nullopt : std::optional(order.key);
}

bool isDatabase(const std::string& file)
{
    std::ifstream in(file, std::ios::binary);
    std::array<char, 16> start{};
    in.read(start.data(), start.size());
    return std::string_view(start.data(), static_cast<std::size_t>(in.gcount()))
        .starts_with("SQLite format 3");
}

Result<Answer, Unusable> verifyDatabase(const VerifyOrder& order, std::vector<Head> witnesses)
{
    auto opened = store::TrailDb::open(order.file, store::Mode::ReadOnly);
    if (!opened && opened.error().trouble.fault == StoreFault::Damaged)
        opened = store::TrailDb::open(order.file, store::Mode::Salvage);
    if (!opened)
        return failure(unusable(order.file, opened.error()));
    const store::Soundness found = store::check(**opened, std::move(witnesses), keyOf(order));
    Answer answer{found.chain, {}, {}};
    if (!found.pages.empty())
        answer.also = "damaged pages: " + found.pages;
    else if (found.projectionsAgree == false)
        answer.also = "the indexes do not agree with the events";
    else if (found.trouble)
        answer.also = "reading broke off: " + std::string(nameOf(found.trouble->fault));
    return answer;
}

/// The lines of an export, with what its manifest says of them where there is one.
Result<Answer, Unusable> verifyLines(const VerifyOrder& order, std::vector<Head> witnesses,
                                     const std::optional<ExportFolder>& folder, Terminal& terminal)
{
    std::error_code error;
    if (order.file != "-" && !std::filesystem::is_regular_file(order.file, error))
        return failure(
            Unusable{order.file, "", "nothing to read", "a trail or an exported events.jsonl"});
    std::ifstream file;
    if (order.file != "-") {
        file.open(order.file, std::ios::binary);
        if (!file)
            return failure(
                Unusable{order.file, "", "no permission", "a file that this user may open"});
    }
    std::istream& in = order.file == "-" ? terminal.in : file;
    auto key = keyOf(order);
    if (!key && folder && !folder->manifest.key.empty())
        key = folder->manifest.key;  // the seals within must be by the key that signs
    ExportVerifier verifier(folder ? std::optional(folder->manifest) : std::nullopt,
                            std::move(witnesses), std::move(key));
    std::array<char, 64UL * 1024> piece{};
    while (in.read(piece.data(), piece.size()), in.gcount() > 0)
        verifier.add({piece.data(), static_cast<std::size_t>(in.gcount())});
    const ExportVerification found = verifier.finish();
    return Answer{found.chain,
                  found.otherBytes ? "the file is not the one that the manifest lists" : "",
                  folder ? folder->manifest.key : ""};
}

bool isWhole(const ExportFolder& folder, const std::string& file)
{
    std::error_code error;
    return std::filesystem::is_directory(file, error) ||
           std::filesystem::equivalent(file, folder.path / kManifestFile, error);
}

bool hasLines(const ExportFolder& folder)
{
    std::error_code error;
    return std::ranges::any_of(folder.manifest.files,
                               [](const auto& file) { return file.name == kEventsFile; }) &&
           std::filesystem::exists(folder.path / kEventsFile, error);
}

/// An export of sheets alone, or one whose lines are gone.
Answer withoutLines(const ExportFolder& folder, bool hasWitness)
{
    Answer answer;
    answer.chain.count = folder.manifest.count;
    answer.chain.head = folder.manifest.last;
    answer.signedBy = folder.manifest.key;
    if (hasWitness)
        answer.also = "there is no " + std::string(kEventsFile) + " to hold the head against";
    return answer;
}

/// A folder or its manifest: every file that is listed. A file of it: that one and the signature.
Result<Answer, Unusable> verifyExport(VerifyOrder order, std::vector<Head> witnesses,
                                      Terminal& terminal)
{
    const auto folder = exportFolderOf(order.file, terminal);
    if (!folder)
        return failure(folder.error());
    if (!*folder)
        return verifyLines(order, std::move(witnesses), *folder, terminal);
    std::string trouble = signatureTrouble(**folder, order.key);
    const bool wantsAll = isWhole(**folder, order.file);
    if (wantsAll && trouble.empty())
        trouble = fileTrouble(**folder);
    if (wantsAll)
        order.file = ((*folder)->path / kEventsFile).string();
    auto answer = wantsAll && !hasLines(**folder)
                      ? Result<Answer, Unusable>(withoutLines(**folder, !witnesses.empty()))
                      : verifyLines(order, std::move(witnesses), *folder, terminal);
    if (answer && !trouble.empty())
        answer->also = trouble;
    return answer;
}

}  // namespace

Exit verifyVerb(const VerifyOrder& order, Terminal& terminal)
{
    std::vector<Head> witnesses;
    if (!order.head.empty()) {
        const auto head = headFrom(order.head);
        if (!head)
            return refuse(terminal,
                          {"--head", "", order.head, "seq:hash, the hash as 64 hex digits"});
        witnesses.push_back(*head);
    }
    if (!order.key.empty() && !hashFromHex(order.key))
        return refuse(terminal, {"--key", "", order.key, "64 lower-case hex digits"});
    const auto answer = isDatabase(order.file) ? verifyDatabase(order, witnesses)
                                               : verifyExport(order, witnesses, terminal);
    if (!answer)
        return refuse(terminal, answer.error());
    const Exit exit = answer->isSound() ? Exit::Done : Exit::No;
    return print(terminal, order.json ? jsonOf(*answer) : wordsOf(order.file, *answer), exit);
}

void addVerify(CLI::App& app, Call& call)
{
    const auto order = std::make_shared<VerifyOrder>();
    CLI::App* verb = app.add_subcommand("verify", "Check a trail or an export");
    verb->add_option("FILE", order->file,
                     "A trail no station holds open, an export's folder or its events.jsonl; - is "
                     "standard input (lines)")
        ->required();
    verb->add_option("--head", order->head, "A head that was kept elsewhere, as seq:hash");
    verb->add_option("--key", order->key,
                     "The public key of the seals and exports, as it was written down");
    verb->add_flag("--json", order->json, "Print one JSON object");
    verb->footer("Exit: 0 sound, 1 not sound, 2 unusable input.");
    verb->callback([order, &call] {
        call.run = [order](Terminal& terminal) { return verifyVerb(*order, terminal); };
    });
}

}  // namespace bathside::cli
