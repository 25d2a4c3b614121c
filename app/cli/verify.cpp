#include "app/cli/verify.h"

#include <array>
#include <charconv>
#include <filesystem>
#include <fstream>

#include <CLI/CLI.hpp>

#include "app/cli/trail_file.h"
#include "core/record/verify_export.h"
#include "core/scan/own_code.h"
#include "core/trail/json_text.h"
#include "core/trail/store/check.h"

namespace bathside::cli {
namespace {

struct Answer {
    Verification chain;
    std::string also;  // what else is wrong; empty: nothing
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
               std::to_string(answer.chain.seals) + " seals.\nHead " + head + "\n";
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

/// The head that the code of a day sheet says.
std::optional<Head> headOf(const std::string& code)
{
    const auto read = ownCodeFrom(code);
    const auto* seal = read ? std::get_if<SealCode>(&*read) : nullptr;
    return seal ? headFrom(std::to_string(seal->count) + ":" + seal->head) : std::nullopt;
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
    Answer answer{found.chain, {}};
    if (!found.pages.empty())
        answer.also = "damaged pages: " + found.pages;
    else if (found.projectionsAgree == false)
        answer.also = "the indexes do not agree with the events";
    else if (found.trouble)
        answer.also = "reading broke off: " + std::string(nameOf(found.trouble->fault));
    return answer;
}

std::optional<Manifest> manifestBeside(const std::string& file, Terminal& terminal,
                                       std::optional<Unusable>& why)
{
    const auto path = std::filesystem::path(file).parent_path() / kManifestFile;
    std::error_code error;
    if (file == "-" || !std::filesystem::exists(path, error))
        return std::nullopt;
    const auto text = wholeOf(path.string(), terminal);
    const auto manifest =
        text ? manifestFrom(*text) : Result<Manifest, ManifestFault>(failure(ManifestFault{}));
    if (manifest)
        return *manifest;
    why = Unusable{path.string(), manifest.error().key.empty() ? "" : "key " + manifest.error().key,
                   "", "a manifest of an export"};
    return std::nullopt;
}

Result<Answer, Unusable> verifyLines(const VerifyOrder& order, std::vector<Head> witnesses,
                                     Terminal& terminal)
{
    std::optional<Unusable> badManifest;
    auto manifest = manifestBeside(order.file, terminal, badManifest);
    if (badManifest)
        return failure(*badManifest);
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
    ExportVerifier verifier(std::move(manifest), std::move(witnesses), keyOf(order));
    std::array<char, 64UL * 1024> piece{};
    while (in.read(piece.data(), piece.size()), in.gcount() > 0)
        verifier.add({piece.data(), static_cast<std::size_t>(in.gcount())});
    const ExportVerification found = verifier.finish();
    return Answer{found.chain,
                  found.otherBytes ? "the file is not the one that the manifest lists" : ""};
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
    if (!order.seal.empty()) {
        const auto head = headOf(order.seal);
        if (!head)
            return refuse(terminal, {"--seal", "", order.seal, "the code of a day sheet, BSS.…"});
        witnesses.push_back(*head);
    }
    if (!order.key.empty() && !hashFromHex(order.key))
        return refuse(terminal, {"--key", "", order.key, "64 lower-case hex digits"});
    const auto answer = isDatabase(order.file) ? verifyDatabase(order, witnesses)
                                               : verifyLines(order, witnesses, terminal);
    if (!answer)
        return refuse(terminal, answer.error());
    const Exit exit = answer->isSound() ? Exit::Done : Exit::No;
    return print(terminal, order.json ? jsonOf(*answer) : wordsOf(order.file, *answer), exit);
}

void addVerify(CLI::App& app, Call& call)
{
    const auto order = std::make_shared<VerifyOrder>();
    CLI::App* verb = app.add_subcommand("verify", "Check a trail or an exported events.jsonl");
    verb->add_option("FILE", order->file,
                     "A trail no station holds open, or events.jsonl; - is standard input (lines)")
        ->required();
    verb->add_option("--head", order->head, "A head that was kept elsewhere, as seq:hash");
    verb->add_option("--seal", order->seal, "The code on a day sheet: its head was kept there");
    verb->add_option("--key", order->key, "The public key of the seals, as it was written down");
    verb->add_flag("--json", order->json, "Print one JSON object");
    verb->footer("Exit: 0 sound, 1 not sound, 2 unusable input.");
    verb->callback([order, &call] {
        call.run = [order](Terminal& terminal) { return verifyVerb(*order, terminal); };
    });
}

}  // namespace bathside::cli
