#include "app/cli/verb.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <istream>
#include <ostream>
#include <utility>

namespace bathside::cli {
namespace {

constexpr std::size_t kLargest = 64UL * 1024 * 1024;

std::string nameOf(const std::string& file) { return file == "-" ? "standard input" : file; }

Result<std::string, Unusable> allOf(std::istream& in, const std::string& file)
{
    std::string text;
    std::array<char, 64UL * 1024> piece{};
    while (in.read(piece.data(), piece.size()), in.gcount() > 0) {
        text.append(piece.data(), static_cast<std::size_t>(in.gcount()));
        if (text.size() > kLargest)
            return failure(Unusable{file, "", "more than 64 MiB", "a smaller file"});
    }
    if (in.bad())
        return failure(Unusable{file, "", "a read error", "a readable file"});
    return text;
}

}  // namespace

Unusable unusable(const std::string& file, const DocumentFault& fault)
{
    return {file, fault.key.empty() ? "" : "key " + fault.key, fault.found, fault.expected};
}

std::string sentence(const Unusable& what)
{
    std::string text = nameOf(what.file);
    if (!what.where.empty())
        text += ", " + what.where;
    text += ": ";
    if (!what.found.empty())
        text += "found " + what.found;
    if (!what.expected.empty())
        text += (what.found.empty() ? "expected " : ", expected ") + what.expected;
    return shown(text) + ".";
}

std::string shown(std::string text)
{
    std::ranges::replace_if(
        text, [](char c) { return static_cast<unsigned char>(c) < 0x20U || c == '\x7f'; }, '?');
    return text;
}

Exit refuse(Terminal& terminal, const Unusable& what)
{
    terminal.err << "bathside-cli: " << sentence(what) << "\n";
    return Exit::Unusable;
}

Result<std::string, Unusable> wholeOf(const std::string& file, Terminal& terminal)
{
    if (file == "-")
        return allOf(terminal.in, file);
    std::error_code error;
    if (std::filesystem::is_directory(file, error))
        return failure(Unusable{file, "", "a folder", "a file"});
    errno = 0;
    std::ifstream in(file, std::ios::binary);
    if (!in)
        return failure(Unusable{
            file, "", "nothing to read (" + std::string(std::strerror(errno)) + ")", "a file"});
    return allOf(in, file);
}

Exit print(Terminal& terminal, std::string_view text, Exit ifPrinted)
{
    terminal.out << text << std::flush;
    if (terminal.out)
        return ifPrinted;
    return refuse(terminal, {"standard output", "", "a write error", "room for the answer"});
}

}  // namespace bathside::cli
