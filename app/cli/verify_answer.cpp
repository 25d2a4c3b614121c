#include "app/cli/verify_answer.h"

#include <utility>

#include "core/trail/json_text.h"

namespace bathside::cli {
namespace {

std::string_view plainWords(const Flaw& flaw)
{
    switch (flaw.kind) {
        case FlawKind::Unreadable:
            return "it cannot be read";
        case FlawKind::NotCanonical:
            return "it is not written the way the station writes";
        case FlawKind::BadTime:
            return "its time is no time";
        case FlawKind::BadHash:
            return "it was changed after it was written, or the one before it was";
        case FlawKind::Missing:
            return "it is not there any more";
        case FlawKind::Reordered:
            return "it is not in its place";
        case FlawKind::Duplicate:
            return "it is there twice";
        case FlawKind::ForeignStation:
            return "it comes from another station";
        case FlawKind::Unlisted:
            return "it is not on the list that came with the export";
        case FlawKind::HeadMismatch:
            return flaw.detail.empty() ? "it is not the one that was noted elsewhere"
                                       : "it does not go on from what it says";
        case FlawKind::Truncated:
            return "the trail ends before it: its end was cut off, or this is an older copy";
    }
    std::unreachable();
}

std::string sentenceOf(const Flaw& flaw)
{
    std::string text =
        "first bad event: seq " + std::to_string(flaw.seq) + ", " + std::string(nameOf(flaw.kind));
    if (!flaw.detail.empty())
        text += " (" + flaw.detail + ")";
    return text + ": " + std::string(plainWords(flaw));
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
            return seal +
                   "is by another key than it should be: the key was replaced, or somebody else "
                   "sealed it";
    }
    std::unreachable();
}

std::string headText(const Head& head) { return std::to_string(head.seq) + ":" + toHex(head.hash); }

void appendHead(std::string& text, const Head& head)
{
    text += R"({"seq":)" + std::to_string(head.seq) + R"(,"hash":)";
    appendJsonString(text, toHex(head.hash));
}

/// What is no flaw and yet worth knowing.
std::string notesOn(const Verification& chain)
{
    std::string text;
    if (const auto& from = chain.continues)
        text += "It goes on from " + from->file + ", which was damaged after event " +
                std::to_string(from->head.seq) + ".\n";
    if (chain.setBacks > 0)
        text += "The computer's clock was set back " +
                (chain.setBacks == 1 ? std::string("once")
                                     : std::to_string(chain.setBacks) + " times, first") +
                " at seq " + std::to_string(chain.firstSetBack) +
                "; the order of the events is not touched by it.\n";
    return text;
}

}  // namespace

std::string jsonOf(const VerifyAnswer& answer)
{
    const Verification& chain = answer.chain;
    std::string text = R"({"sound":)" + std::string(answer.isSound() ? "true" : "false") +
                       R"(,"events":)" + std::to_string(chain.count) + R"(,"head":)";
    appendHead(text, chain.head);
    text += "}";
    if (const auto& flaw = chain.flaw) {
        text += R"(,"seq":)" + std::to_string(flaw->seq) + R"(,"flaw":)";
        appendJsonString(text, nameOf(flaw->kind));
    }
    text += R"(,"seals":)" + std::to_string(chain.seals);
    if (const auto& bad = chain.badSeal) {
        text += R"(,"seal":{"seq":)" + std::to_string(bad->seq) + R"(,"flaw":)";
        appendJsonString(text, nameOf(bad->flaw));
        text += "}";
    }
    if (const auto& from = chain.continues) {
        text += R"(,"continues":)";
        appendHead(text, from->head);
        text += R"(,"file":)";
        appendJsonString(text, from->file);
        text += "}";
    }
    if (chain.setBacks > 0)
        text += R"(,"clock_set_back":{"times":)" + std::to_string(chain.setBacks) + R"(,"seq":)" +
                std::to_string(chain.firstSetBack) + "}";
    if (!answer.signedBy.empty()) {
        text += R"(,"signed_by":)";
        appendJsonString(text, answer.signedBy);
    }
    if (!answer.sealedBy.empty()) {
        text += R"(,"sealed_by":)";
        appendJsonString(text, answer.sealedBy);
    }
    if (!answer.also.empty()) {
        text += R"(,"also":)";
        appendJsonString(text, answer.also);
    }
    return text + "}\n";
}

std::string wordsOf(const std::string& file, const VerifyAnswer& answer)
{
    const Verification& chain = answer.chain;
    if (answer.isSound())
        return file + ": sound, " + std::to_string(chain.count) + " events, " +
               std::to_string(chain.seals) + " seals.\n" + notesOn(chain) +
               (answer.sealedBy.empty() ? ""
                                        : "Sealed as a whole by key " + answer.sealedBy + "\n") +
               "Head " + headText(chain.head) + "\n" +
               (answer.signedBy.empty() ? "" : "Signed by " + answer.signedBy + "\n");
    std::string text = file + ": NOT sound";
    if (chain.flaw)
        text += "; " + sentenceOf(*chain.flaw);
    if (chain.badSeal)
        text += "; " + sentenceOf(*chain.badSeal);
    if (!answer.also.empty())
        text += "; " + answer.also;
    return text + ".\n" + notesOn(chain) + "Sound up to " + headText(chain.head) + "\n";
}

}  // namespace bathside::cli
