#pragma once

// A disk that fails on order and can lose its power: SQLite's default VFS while it lives.
//
// Files are real; what is written but not synced is kept apart, so that a crash can drop it, keep a
// part of it or tear it. A sync that fails behaves as Linux file systems do: what was to be synced
// counts as clean afterwards and no later sync brings it to the disk, unless it is written again
// (Rebello et al., "Can Applications Recover from fsync Failures?", USENIX ATC 2020). Only one
// lives at a time; one thread. Method: SQLite, "How SQLite Is Tested", I/O error and crash testing.

#include <cstdint>
#include <filesystem>
#include <map>
#include <random>
#include <string>
#include <vector>

#include <sqlite3.h>

namespace bathside::test {

enum class DiskOp : std::uint8_t { Write, Sync, Truncate, Open };

struct Fault {
    DiskOp op{};
    int nth = 0;              // of this kind since the plan was made, from 1
    bool always = false;      // and all of this kind after it
    int error = 0;            // EIO, ENOSPC …
    std::string onlyIn = {};  // a part of the file's name; empty: everywhere
};

class FaultDisk {
public:
    FaultDisk();
    ~FaultDisk();
    FaultDisk(const FaultDisk&) = delete;
    FaultDisk& operator=(const FaultDisk&) = delete;

    void plan(Fault fault);
    void heal();
    /// Whether the planned fault has happened.
    [[nodiscard]] bool struck() const { return m_struck; }

    /// From the so manyth operation of any kind on, the power is off: nothing more gets to the
    /// disk.
    void cutPowerAt(int operation) { m_powerUntil = m_operations + operation; }
    [[nodiscard]] bool isDead() const { return m_operations >= m_powerUntil; }

    /// What the disk holds after a power cut, as files in `folder`. Of what was not synced anything
    /// may be there, whole, torn at a sector or not at all.
    void leaveTo(const std::filesystem::path& folder, std::mt19937& random) const;

    /// Answers a pragma itself, whatever SQLite would say.
    void answer(const std::string& pragma, const std::string& value) { m_answers[pragma] = value; }

    struct Change {
        std::int64_t at = 0;
        std::string bytes;  // empty: cut off at `at`
    };
    struct Image {
        std::string durable;
        std::vector<Change> pending;
    };

    // For the VFS below.
    [[nodiscard]] bool fails(DiskOp op, const std::string& name);
    [[nodiscard]] Image& image(const std::string& path) { return m_images[path]; }
    void remove(const std::string& path) { m_images.erase(path); }
    [[nodiscard]] int error() const { return m_fault.error; }
    [[nodiscard]] const std::string* answerTo(const std::string& pragma) const;
    void loseSync(Image& image);

private:
    sqlite3_vfs* m_before = nullptr;
    sqlite3_vfs m_vfs{};
    Fault m_fault{.nth = 0};
    int m_seen = 0;
    bool m_struck = false;
    int m_operations = 0;
    int m_powerUntil = 1 << 30;
    std::map<std::string, Image> m_images;
    std::map<std::string, std::string> m_answers;
    std::mt19937 m_random{7};
};

}  // namespace bathside::test
