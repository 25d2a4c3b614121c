// Replays a corpus and then a fixed sequence of mutations of it: the same inputs in every run.
//
// Usage: <target> CORPUS-FOLDER [RUNS]. RUNS is 20,000, or 500,000 where BATHSIDE_LONG is set. When
// an input brings the target down, it is left as `crash-input` in the working folder. The signature
// of the target is libFuzzer's, so the same sources run under it as they are.

#include <algorithm>
#include <array>
#include <csignal>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <random>
#include <string>
#include <string_view>
#include <vector>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);
extern "C" [[gnu::weak]] void __sanitizer_set_death_callback(void (*callback)());

namespace {

constexpr std::size_t kLongestInput = 64 * 1024;
constexpr unsigned kSeed = 1;

// Pieces that parsers of our formats stumble over.
constexpr std::array<std::string_view, 20> kPieces{"{",     "}",
                                                   "[",     "]",
                                                   "\"",    ",",
                                                   ":",     "null",
                                                   "-1",    "0",
                                                   "-0",    "1e9",
                                                   "1.5e3", "\\u0",
                                                   "\r\n",  "\xff",
                                                   "\xc0",  "\xed\xa0\x80",
                                                   "=",     "9223372036854775808"};

std::string g_input;

void keepInput()
{
    if (std::FILE* file = std::fopen("crash-input", "wb")) {
        std::fwrite(g_input.data(), 1, g_input.size(), file);
        std::fclose(file);
    }
}

void onSignal(int signal)
{
    keepInput();
    std::signal(signal, SIG_DFL);
    std::raise(signal);
}

void watchForDeath()
{
    if (__sanitizer_set_death_callback != nullptr)
        __sanitizer_set_death_callback(keepInput);
    else
        std::signal(SIGSEGV, onSignal);
    for (const int fatal : {SIGABRT, SIGILL, SIGFPE, SIGBUS})
        std::signal(fatal, onSignal);
}

void tryInput(std::string input)
{
    g_input = std::move(input);
    const std::vector<std::uint8_t> bytes(g_input.begin(), g_input.end());  // no spare byte behind
    LLVMFuzzerTestOneInput(bytes.data(), bytes.size());
}

std::vector<std::string> readCorpus(const std::filesystem::path& folder)
{
    std::vector<std::filesystem::path> files;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(folder))
        if (entry.is_regular_file())
            files.push_back(entry.path());
    std::ranges::sort(files);
    std::vector<std::string> corpus;
    for (const auto& file : files) {
        std::ifstream in(file, std::ios::binary);
        corpus.emplace_back(std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>());
    }
    return corpus;
}

class Mutator {
public:
    explicit Mutator(const std::vector<std::string>& corpus) : m_corpus(corpus) {}

    std::string next()
    {
        std::string text = any(m_corpus);
        for (std::size_t left = 1 + below(4); left > 0; --left)
            change(text);
        text.resize(std::min(text.size(), kLongestInput));
        return text;
    }

private:
    // Not a std distribution: their sequences differ between libraries.
    std::size_t below(std::size_t bound) { return bound == 0 ? 0 : m_random() % bound; }

    const std::string& any(const std::vector<std::string>& from)
    {
        return from[below(from.size())];
    }

    void change(std::string& text)
    {
        const std::size_t at = below(text.size() + 1);
        const std::size_t length = below(std::min<std::size_t>(text.size() - at, 32) + 1);
        switch (below(6)) {
            case 0:
                return flipBit(text);
            case 1:
                text.erase(at, length);
                return;
            case 2:
                text.insert(at, text.substr(at, length));
                return;
            case 3:
                text.insert(at, kPieces[below(kPieces.size())]);
                return;
            case 4:
                text.replace(at, length, kPieces[below(kPieces.size())]);
                return;
            default:
                return splice(text, at);
        }
    }

    void flipBit(std::string& text)
    {
        if (!text.empty())
            text[below(text.size())] ^= static_cast<char>(1U << below(8));
    }

    void splice(std::string& text, std::size_t at)
    {
        const std::string& other = any(m_corpus);
        text.replace(at, std::string::npos, other, below(other.size() + 1), std::string::npos);
    }

    const std::vector<std::string>& m_corpus;
    std::mt19937_64 m_random{kSeed};
};

}  // namespace

int main(int argc, char** argv)
{
    const std::vector<std::string> corpus =
        argc > 1 ? readCorpus(argv[1]) : std::vector<std::string>{};
    if (corpus.empty()) {
        std::fputs("usage: target CORPUS-FOLDER [RUNS]; the folder must hold a file\n", stderr);
        return 2;
    }
    watchForDeath();
    for (const auto& input : corpus)
        tryInput(input);
    const long usual = std::getenv("BATHSIDE_LONG") != nullptr ? 500'000 : 20'000;
    const long runs = argc > 2 ? std::atol(argv[2]) : usual;
    Mutator mutator(corpus);
    for (long run = 0; run < runs; ++run)
        tryInput(mutator.next());
    std::printf("%zu inputs of the corpus and %ld mutations, seed %u\n", corpus.size(), runs,
                kSeed);
}
