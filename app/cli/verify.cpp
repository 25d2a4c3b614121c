#include "app/cli/verify.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <filesystem>
#include <fstream>

#include <CLI/CLI.hpp>

#include "app/cli/archive.h"
#include "app/cli/export_folder.h"
#include "app/cli/trail_file.h"
#include "app/cli/verify_answer.h"
#include "core/facts/codec.h"
#include "core/record/verify_export.h"
#include "core/scan/own_code.h"
#include "core/trail/seal.h"
#include "core/trail/store/check.h"

namespace bathside::cli {
namespace {

using Answer = VerifyAnswer;

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

/// The seal beside an archive, if there is one; nothing genuine in it: no value.
Result<std::optional<DaySealed>, Unusable> sealBeside(const VerifyOrder& order, Terminal& terminal)
{
    const std::string name = order.file + std::string(kSealEnding);
    std::error_code none;
    if (order.file == "-" || !std::filesystem::exists(name, none))
        return std::optional<DaySealed>();
    auto text = wholeOf(name, terminal);
    if (!text)
        return failure(text.error());
    while (text->ends_with('\n'))
        text->pop_back();
    const auto fact = factFrom(DaySealed::kKind, *text);
    const auto* seal = fact ? std::get_if<DaySealed>(&*fact) : nullptr;
    if (!seal || !hashFromHex(seal->head))
        return failure(Unusable{name, "", "something else", "the seal of an archive"});
    return std::optional<DaySealed>(*seal);
}

/// What is wrong with it; empty: nothing.
std::string wrongWith(const DaySealed& seal, const VerifyOrder& order)
{
    if (!isGenuine(seal))
        return "the seal beside it is not signed by the key that it names";
    if (!order.key.empty() && order.key != seal.key)
        return "the seal beside it is by another key";
    return {};
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
    std::string changedTable;
    if (!opened && opened.error().trouble.fault == StoreFault::Damaged) {
        if (opened.error().check == store::Check::Schema)
            changedTable = opened.error().detail;
        opened = store::TrailDb::open(order.file, store::Mode::Salvage);
    }
    if (!opened)
        return failure(unusable(order.file, opened.error()));
    const store::Soundness found = store::check(**opened, std::move(witnesses), keyOf(order));
    Answer answer{found.chain, {}, {}};
    if (!found.pages.empty())
        answer.also = "damaged pages: " + found.pages;
    else if (!changedTable.empty())
        answer.also = "the file's own guard was changed: " + changedTable;
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

/// An export ends before the trail does. Takes out the heads that lie beyond its last entry: one
/// may be the trail's as the export was made, another is told; empty: nothing is wrong.
std::string beyondTrouble(const Manifest& manifest, std::vector<Head>& witnesses)
{
    std::string trouble;
    std::erase_if(witnesses, [&](const Head& head) {
        if (head.seq <= manifest.last.seq)
            return false;
        if (head.seq != manifest.head.seq)
            trouble = "it ends before entry " + std::to_string(head.seq) +
                      ", whose head was kept elsewhere: verify the trail itself";
        else if (head.hash != manifest.head.hash)
            trouble = "the trail's head when it was made is not the one kept elsewhere";
        return true;
    });
    return trouble;
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
    if (trouble.empty())
        trouble = beyondTrouble((*folder)->manifest, witnesses);
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

/// Why a sound file does not go on where the damaged one is still sound; empty: it does.
Result<std::string, Unusable> notContinuing(const std::string& damaged, const Verification& chain)
{
    const auto file = store::TrailDb::open(damaged, store::Mode::Salvage);
    if (!file)
        return failure(unusable(damaged, file.error()));
    if (!chain.continues)
        return std::string("it does not go on from another file");
    const Head& from = chain.continues->head;
    const Head sound = store::soundHead(**file);
    if (sound == from)
        return std::string();
    if (sound.seq < from.seq)
        return damaged + " is sound up to event " + std::to_string(sound.seq) +
               " only: it cannot show that this goes on from it";
    bool isThere = false;
    (void)(*file)->read(from.seq, from.seq, [&](const Entry& entry) {
        isThere = entry.hash == from.hash;
        return false;
    });
    if (isThere)
        return damaged + " is sound up to event " + std::to_string(sound.seq) +
               ": the events after " + std::to_string(from.seq) + " were left out";
    return "it goes on from another event " + std::to_string(from.seq) + " than that of " + damaged;
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
    const auto seal = sealBeside(order, terminal);
    if (!seal)
        return refuse(terminal, seal.error());
    if (*seal)
        witnesses.push_back({(*seal)->count, *hashFromHex((*seal)->head)});
    auto answer = isDatabase(order.file) ? verifyDatabase(order, witnesses)
                                         : verifyExport(order, witnesses, terminal);
    if (!answer)
        return refuse(terminal, answer.error());
    if (!order.continues.empty() && answer->isSound()) {
        auto why = notContinuing(order.continues, answer->chain);
        if (!why)
            return refuse(terminal, why.error());
        answer->also = std::move(*why);
    }
    if (*seal && answer->also.empty()) {
        answer->also = wrongWith(**seal, order);
        answer->sealedBy = (*seal)->key;
    }
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
    verb->add_option("--seal", order->seal, "The code on a day sheet: its head was kept there");
    verb->add_option("--key", order->key,
                     "The public key of the seals and exports, as it was written down");
    verb->add_option("--continues", order->continues,
                     "The damaged trail that FILE goes on from: is that where it was still sound?");
    verb->add_flag("--json", order->json, "Print one JSON object");
    verb->footer("Exit: 0 sound, 1 not sound, 2 unusable input.");
    verb->callback([order, &call] {
        call.run = [order](Terminal& terminal) { return verifyVerb(*order, terminal); };
    });
}

}  // namespace bathside::cli
