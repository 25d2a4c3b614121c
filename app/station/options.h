#pragma once

// What the station was started with.

#include <QString>
#include <QStringList>
#include <optional>

#include "core/base/result.h"

namespace bathside::app {

enum class Day : std::uint8_t { Asked, Real, Rehearsal };

struct Options {
    Day day = Day::Asked;  // Asked: the start page offers both
    QString trail;         // empty: where the day's trail is kept
    QString card;          // empty: the card in the trail, else the default one
    QString station;       // its name in the record; empty: as set up
    QString language;      // empty: as set up, else the system's
    std::optional<bool> dark;
    std::optional<double> pxPerMm;
    bool windowed = false;
    QString play;      // a script to play through the window, on a clock of its own
    QString pictures;  // folders for what the playing leaves; empty: none
    QString exports;
};

/// What to print instead of starting: help or version (exit 0), or what is wrong (exit 2).
struct Instead {
    QString text;
    int exitCode = 2;
};

[[nodiscard]] Result<Options, Instead> optionsFrom(const QStringList& arguments);

}  // namespace bathside::app
