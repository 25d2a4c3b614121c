#pragma once

// The recorder's files in memory, with faults on order: what the failover is tested against.
//
// Every fault names the file's next append or opening. `Lands` is what a failed sync usually
// leaves: the error is told and the entries are there all the same.

#include <deque>
#include <map>

#include "core/trail/failover.h"

namespace bathside::test {

enum class Outcome : std::uint8_t { Stored, Refused, Lost, Lands };

struct MemoryFile {
    Head after;
    std::vector<Entry> entries;
    bool merged = false;

    [[nodiscard]] Head head() const
    {
        return entries.empty() ? after : Head{entries.back().seq, entries.back().hash};
    }
};

/// "spool-2" before "spool-10".
struct InOrderOfNumber {
    bool operator()(const std::string& a, const std::string& b) const
    {
        return a.size() != b.size() ? a.size() < b.size() : a < b;
    }
};

struct MemoryDisk {
    MemoryFile trail;
    std::map<std::string, MemoryFile, InOrderOfNumber> spools;
    std::deque<Outcome> appends;  // of the next appends to any file; then all are stored
    bool trailOpens = true;
    bool spoolsOpen = true;
    StoreFault refusal = StoreFault::NoSpace;
    int handlesOpen = 0;
};

class MemoryStore final : public TrailStore {
public:
    MemoryStore(MemoryDisk& disk, MemoryFile& file)
        : m_disk(disk), m_file(file), m_head(file.head())
    {
        ++m_disk.handlesOpen;
    }
    ~MemoryStore() override { --m_disk.handlesOpen; }

    [[nodiscard]] Head head() const override { return m_head; }

    [[nodiscard]] Result<void, StoreTrouble> append(std::span<const Entry> entries) override
    {
        if (m_spent)
            return failure(StoreTrouble{StoreFault::Unconfirmed, 5});
        if (!follows(entries))
            return failure(StoreTrouble{StoreFault::OutOfStep, 0});
        const Outcome outcome = next();
        if (outcome == Outcome::Refused)
            return failure(StoreTrouble{m_disk.refusal, 28});
        if (outcome != Outcome::Lost)
            m_file.entries.insert(m_file.entries.end(), entries.begin(), entries.end());
        m_spent = outcome != Outcome::Stored;
        if (m_spent)
            return failure(StoreTrouble{StoreFault::Unconfirmed, 5});
        m_head = m_file.head();
        return {};
    }

    [[nodiscard]] Result<void, StoreTrouble> read(
        Seq from, Seq to, const std::function<bool(const Entry&)>& take) const override
    {
        for (const Entry& entry : m_file.entries) {
            if (entry.seq >= from && entry.seq <= to && !take(entry))
                break;
        }
        return {};
    }

private:
    Outcome next()
    {
        if (m_disk.appends.empty())
            return Outcome::Stored;
        const Outcome outcome = m_disk.appends.front();
        m_disk.appends.pop_front();
        return outcome;
    }

    [[nodiscard]] bool follows(std::span<const Entry> entries) const
    {
        Head head = m_head;
        for (const Entry& entry : entries) {
            if (entry.seq != head.seq + 1 || entry.hash != chained(head.hash, canonicalText(entry)))
                return false;
            head = {entry.seq, entry.hash};
        }
        return true;
    }

    MemoryDisk& m_disk;
    MemoryFile& m_file;
    Head m_head;
    bool m_spent = false;
};

class MemoryFiles final : public TrailFiles {
public:
    explicit MemoryFiles(MemoryDisk& disk) : m_disk(disk) {}

    [[nodiscard]] Result<std::unique_ptr<TrailStore>, StoreTrouble> openTrail() override
    {
        if (!m_disk.trailOpens)
            return failure(StoreTrouble{StoreFault::WriteFailed, 5});
        return std::make_unique<MemoryStore>(m_disk, m_disk.trail);
    }

    [[nodiscard]] Result<Spool, StoreTrouble> makeSpool(const Head& after) override
    {
        if (!m_disk.spoolsOpen)
            return failure(StoreTrouble{StoreFault::NotPermitted, 13});
        const std::string name = "spool-" + std::to_string(m_disk.spools.size() + 1);
        MemoryFile& file = m_disk.spools[name];
        file.after = after;
        return Spool{name, after, std::make_unique<MemoryStore>(m_disk, file)};
    }

    [[nodiscard]] std::vector<std::string> unmerged() override
    {
        std::vector<std::string> names;
        for (const auto& [name, file] : m_disk.spools) {
            if (!file.merged)
                names.push_back(name);
        }
        return names;
    }

    [[nodiscard]] Result<Spool, StoreTrouble> openSpool(const std::string& name) override
    {
        if (!m_disk.spoolsOpen)
            return failure(StoreTrouble{StoreFault::Damaged, 0});
        MemoryFile& file = m_disk.spools.at(name);
        return Spool{name, file.after, std::make_unique<MemoryStore>(m_disk, file)};
    }

    void markMerged(const std::string& name) override { m_disk.spools.at(name).merged = true; }

private:
    MemoryDisk& m_disk;
};

}  // namespace bathside::test
