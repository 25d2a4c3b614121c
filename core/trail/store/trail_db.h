#pragma once

// A trail kept in one SQLite file: the only place that writes it.
//
// Lives and dies on one thread and needs a QCoreApplication. A file that is written to is held
// exclusively: a second program is told InUse. Opening checks what costs the same however long the
// trail is: the place, the header, the settings as read back, the schema, and the hashes of the
// last `kTail` entries; what a crash left in the log is written again and synced before it counts.
// The whole chain, the pages and the projections are checked on demand (check.h). Nothing is ever
// deleted. (Spec: the trail; DEVELOPERS.md on what is checked when.)

#include <optional>

#include "core/trail/store/connection.h"
#include "core/trail/store/event_rows.h"
#include "core/trail/store/projections.h"

namespace bathside::store {

enum class Mode : std::uint8_t {
    Station,   // read and write; made where there is none
    New,       // read and write; must not be there yet
    Existing,  // read and write; must be there
    ReadOnly,  // a copy, or a trail that no station holds
    Salvage,   // read only; neither the tables nor the end need be sound
};

enum class Role : std::uint8_t { Trail, Spool };

/// Where the chain of a file begins.
struct Origin {
    Role role = Role::Trail;
    Head after;  // what its first entry follows; nothing in a whole trail
    std::string
        continues;  // the name of the file that `after` is the last good head of; empty: none
    friend bool operator==(const Origin&, const Origin&) = default;
};

/// What was being looked at when a file was refused.
enum class Check : std::uint8_t { Place, Access, Header, Settings, Schema, Tail };

struct OpenFault {
    StoreTrouble trouble;
    Check check{};
    std::string detail;  // Settings: which; Schema: which table or trigger; Tail: which seq; Place:
                         // which file system
};

class TrailDb final : public TrailStore {
public:
    static constexpr Seq kTail = 256;
    static constexpr int kLongLog = 1000;  // pages: SQLite's own measure for a checkpoint

    /// `origin` is for a file that is made; another's is read from it.
    [[nodiscard]] static Result<std::unique_ptr<TrailDb>, OpenFault> open(
        const std::filesystem::path& file, Mode mode, const Origin& origin = {});
    ~TrailDb() override;

    [[nodiscard]] Head head() const override { return m_head; }
    [[nodiscard]] Result<void, StoreTrouble> append(std::span<const Entry> entries) override;
    [[nodiscard]] Result<void, StoreTrouble> read(
        Seq from, Seq to, const std::function<bool(const Entry&)>& take) const override;

    [[nodiscard]] const std::filesystem::path& file() const noexcept { return m_file; }
    [[nodiscard]] const Origin& origin() const noexcept { return m_origin; }

    /// Empties the log into the file if it holds more than so many pages; call when idle.
    void tidy(int pages);
    /// A consistent copy in one file that must not be there yet; synced, with its folder.
    [[nodiscard]] Result<void, StoreTrouble> copyTo(const std::filesystem::path& target);

    /// For this room's queries and checks.
    [[nodiscard]] Connection& connection() const noexcept { return *m_db; }

private:
    TrailDb(std::filesystem::path file, std::unique_ptr<Connection> db);
    [[nodiscard]] Result<void, OpenFault> start(Mode mode, const Origin& origin);
    [[nodiscard]] Result<void, OpenFault> make(const Origin& origin);
    [[nodiscard]] Result<void, OpenFault> readOrigin();
    [[nodiscard]] Result<void, OpenFault> readTail(Mode mode);
    [[nodiscard]] bool continuesHead(std::span<const Entry> entries) const;
    [[nodiscard]] Result<void, StoreTrouble> write(std::span<const Entry> entries);

    std::filesystem::path m_file;
    std::unique_ptr<Connection> m_db;
    Projector m_projector;
    std::optional<RowWriter> m_writer;
    Origin m_origin;
    Head m_head;
    bool m_writes = false;
    std::optional<StoreTrouble> m_spent;  // after a failed sync: why nothing more is done here
};

}  // namespace bathside::store
