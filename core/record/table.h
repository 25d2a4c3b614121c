#pragma once

// Tables, written cell by cell: what the sheets of a record are before they are CSV or a workbook.
//
// A row has one cell for each column, in their order. What a person or a device wrote comes as
// `text`, so that no kind of table ever takes it for a formula.

#include <chrono>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>

#include "core/base/result.h"
#include "core/base/time.h"

namespace bathside {

struct TableColumn {
    std::string_view name;  // words joined by '_'
    std::string_view unit;  // empty: none; kInstant: an instant
};
inline constexpr std::string_view kInstant = "instant";

/// The column's head for programs: `age_at_down_s`, `started_utc`.
[[nodiscard]] std::string headOf(const TableColumn& column);

/// An instant with the offset of local time in force then.
struct LocalInstant {
    WallTime at{};
    std::chrono::seconds offset{};
};

/// `+01:00`; seconds, which only zones of long ago have, are cut off.
[[nodiscard]] std::string offsetText(std::chrono::seconds offset);

class Table {
public:
    virtual ~Table() = default;

    virtual void text(std::string_view free) = 0;  // what a person or a device wrote
    virtual void word(std::string_view ours) = 0;  // a word or an id that this program made
    virtual void whole(std::int64_t value) = 0;
    /// `count` of a unit of 10^-decimals: 400000 with 3 is 400.000.
    virtual void scaled(std::int64_t count, int decimals) = 0;
    virtual void instant(const LocalInstant& at) = 0;
    virtual void offset(const LocalInstant& at) = 0;
    virtual void none() = 0;
    virtual void endRow() = 0;

    void yesNo(bool value) { word(value ? "yes" : "no"); }

protected:
    Table() = default;
    Table(const Table&) = default;
    Table(Table&&) = default;
    Table& operator=(const Table&) = default;
    Table& operator=(Table&&) = default;
};

/// Several tables in one file, made at the rim.
class Book {
public:
    Book() = default;
    Book(const Book&) = delete;
    Book& operator=(const Book&) = delete;
    virtual ~Book() = default;

    /// A further table, its head written; it lives as long as the book.
    [[nodiscard]] virtual Table& add(std::string_view name,
                                     std::span<const TableColumn> columns) = 0;
    /// The file's bytes, or the system's error number; nothing is written afterwards. `made`: the
    /// time that the file says it was made.
    [[nodiscard]] virtual Result<std::string, std::int64_t> finish(WallTime made) = 0;
};

}  // namespace bathside
