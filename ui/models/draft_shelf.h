#pragma once

// Where what is typed and not yet said outlives the program. Kept by app; no part of the record.

#include <QString>
#include <string>

namespace bathside::ui {

class DraftShelf {
public:
    DraftShelf() = default;
    DraftShelf(const DraftShelf&) = delete;
    DraftShelf& operator=(const DraftShelf&) = delete;
    virtual ~DraftShelf() = default;

    /// What was kept under that name; empty: nothing.
    [[nodiscard]] virtual std::string kept(const QString& name) const = 0;
    /// In the place of what was kept there; empty: nothing more. Where it cannot be kept, it still
    /// is until the program ends.
    virtual void keep(const QString& name, const std::string& document) = 0;
};

}  // namespace bathside::ui
