#pragma once

// A folder of a test's own, removed with everything in it.

#include <QTemporaryDir>
#include <filesystem>

namespace bathside::app::test {

class TemporaryFolder {
public:
    [[nodiscard]] std::filesystem::path path() const { return m_folder.path().toStdString(); }

private:
    QTemporaryDir m_folder;
};

}  // namespace bathside::app::test
