#pragma once

// A folder of its own for one test, gone with it.

#include <cstdlib>
#include <filesystem>
#include <stdexcept>
#include <string>

namespace bathside::test {

class TempFolder {
public:
    TempFolder()
    {
        std::string name = (std::filesystem::temp_directory_path() / "bathside-XXXXXX").string();
        if (!mkdtemp(name.data()))
            throw std::runtime_error("no folder for the test: " + name);
        m_path = name;
    }
    TempFolder(const TempFolder&) = delete;
    TempFolder& operator=(const TempFolder&) = delete;
    ~TempFolder()
    {
        std::error_code none;
        std::filesystem::remove_all(m_path, none);
    }

    [[nodiscard]] const std::filesystem::path& path() const { return m_path; }
    [[nodiscard]] std::filesystem::path operator/(const std::string& name) const
    {
        return m_path / name;
    }

private:
    std::filesystem::path m_path;
};

}  // namespace bathside::test
