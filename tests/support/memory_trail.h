#pragma once

// A trail in memory, and a place in memory for an export.

#include <map>
#include <memory>
#include <string>
#include <utility>
#include <vector>

#include "core/record/sink.h"
#include "core/trail/ports.h"

namespace bathside::test {

class MemoryTrail final : public TrailStore {
public:
    explicit MemoryTrail(std::vector<Entry> kept = {}) : entries(std::move(kept)) {}

    Head head() const override
    {
        return entries.empty() ? Head{} : Head{entries.back().seq, entries.back().hash};
    }
    Result<void, StoreTrouble> append(std::span<const Entry> added) override
    {
        entries.insert(entries.end(), added.begin(), added.end());
        return {};
    }
    Result<void, StoreTrouble> read(Seq from, Seq to,
                                    const std::function<bool(const Entry&)>& take) const override
    {
        for (const Entry& entry : entries) {
            if (entry.seq == failsAt)
                return failure(StoreTrouble{StoreFault::Damaged, 0});
            if (entry.seq >= from && entry.seq <= to && !take(entry))
                break;
        }
        return {};
    }

    std::vector<Entry> entries;
    Seq failsAt = -1;
};

/// Keeps what was finished; can be told at which file or byte to fail.
class MemorySink final : public Sink {
public:
    Result<std::unique_ptr<SinkFile>, SinkFault> open(const std::string& name) override
    {
        if (name == refuses)
            return failure(SinkFault{name, 13});
        order.push_back(name);
        return std::make_unique<File>(*this, name);
    }

    std::map<std::string, std::string> files;  // finished ones, by name
    std::vector<std::string> order;            // as they were opened
    std::string refuses;
    std::size_t room = std::string::npos;  // bytes left, of all files together

private:
    class File final : public SinkFile {
    public:
        File(MemorySink& sink, std::string name) : m_sink(sink), m_name(std::move(name)) {}

        Result<void, SinkFault> write(std::string_view bytes) override
        {
            if (bytes.size() > m_sink.room)
                return failure(SinkFault{m_name, 28});
            m_sink.room -= bytes.size();
            m_bytes += bytes;
            return {};
        }
        Result<void, SinkFault> finish() override
        {
            m_sink.files[m_name] = m_bytes;
            return {};
        }

    private:
        MemorySink& m_sink;
        std::string m_name;
        std::string m_bytes;
    };
};

}  // namespace bathside::test
