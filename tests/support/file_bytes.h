#pragma once

// What a file holds, whole; empty where there is none.

#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

namespace bathside::test {

[[nodiscard]] inline std::string bytesOf(const std::filesystem::path& file)
{
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

}  // namespace bathside::test
