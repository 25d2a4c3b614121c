#pragma once

// A workbook (Office Open XML, ECMA-376) with one sheet a table, through libxlsxwriter.
//
// Numbers are numbers, instants RFC 3339 UTC as text, everything else text: no cell is ever a
// formula, whatever it begins with. What XML cannot hold is replaced, a cell of more than 32,767
// signs is cut and says so (both are whole in the JSON Lines), and a table with more rows than a
// sheet has goes on on another. The whole workbook is held until `finish`.

#include <cstdint>
#include <memory>
#include <vector>

#include "core/record/table.h"

namespace bathside::app {

class XlsxBook final : public Book {
public:
    static constexpr std::uint32_t kMostRows = 1'048'576;

    /// `rowsEach`: rows of a sheet, its head among them.
    explicit XlsxBook(std::uint32_t rowsEach = kMostRows);
    ~XlsxBook() override;

    [[nodiscard]] Table& add(std::string_view name, std::span<const TableColumn> columns) override;
    [[nodiscard]] Result<std::string, std::int64_t> finish(WallTime made) override;

private:
    class Sheet;
    struct File;

    std::unique_ptr<File> m_file;
    std::uint32_t m_rowsEach;
    std::vector<std::unique_ptr<Sheet>> m_sheets;
};

/// Text as a cell can hold it.
[[nodiscard]] std::string cellText(std::string_view text);

}  // namespace bathside::app
