#pragma once

// The way to copies of the record: by a tap, and by themselves as `Preferences` has it.
//
// Nobody waits for one. It is written beside no other, read back and checked; a sound one is noted
// in the record. What goes wrong is told until a copy succeeds, and tried again. None is ever
// removed. UI thread.

#include <optional>

#include "ui/models/record_source.h"

namespace bathside::ui {

/// How it stands with copies.
struct CopyNews {
    enum class Doing : std::uint8_t {
        Nothing,
        Copying,
        Waiting,  // until the pull is done
    };
    enum class Wrong : std::uint8_t {
        Nothing,
        NotThere,  // the place that was chosen
        NotWritten,
        NotSound,  // written and read back, and not what the record is
    };

    Doing doing{};
    Wrong wrong{};                // with the last one that was tried
    CopyAnswer last;              // the last one that was tried
    std::optional<Stamp> madeAt;  // the last good one, on record
    bool isLate = false;          // that one is older than was set
};

class Copies : public QObject {
    Q_OBJECT

public:
    [[nodiscard]] virtual CopyNews news() const = 0;
    /// Where copies may go now; never empty.
    [[nodiscard]] virtual std::vector<RecordPlace> places() const = 0;
    /// One now, or as soon as the pull is done.
    virtual void copyNow() = 0;

signals:
    void changed();
};

}  // namespace bathside::ui
