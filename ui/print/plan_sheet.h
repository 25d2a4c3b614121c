#pragma once

// The day's plan for the wall: per line its bags in order, with their times. A plain value: whoever
// plans fills it in.

#include <chrono>
#include <cstdint>
#include <string>
#include <vector>

#include "core/base/time.h"
#include "core/base/units.h"
#include "ui/print/paper.h"

namespace bathside::ui {

struct PlanSheet {
    struct Lot {
        std::string component;
        std::string lot;
        int ampoules = 0;
    };
    /// Times since the day's local midnight; past the next one they go on: 24:10.
    struct Bag {
        MicroLitres volume;
        std::vector<Lot> lots;
        Millis pullStart{}, mixedBy{}, firstBird{}, lastBird{};
        std::int64_t birds = 0;
    };
    struct Line {
        std::string name;
        std::vector<Bag> bags;
    };

    std::chrono::year_month_day day{};
    std::string site;
    WallTime made{};   // when it was reckoned: an old sheet on the wall must show
    std::string zone;  // of the site
    std::vector<Line> lines;
    bool rehearsal = false;
};

/// As many pages as it takes, in the language of the screen. `paper` is a sheet, not a label.
[[nodiscard]] PaperPages pagesOf(const PlanSheet& sheet, Paper paper);

}  // namespace bathside::ui
