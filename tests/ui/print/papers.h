#pragma once

// Labels and sheets of a made-up day, for tests and for pictures to look at.

#include <string>
#include <vector>

#include "ui/print/bag_label_pages.h"
#include "ui/print/plan_sheet.h"

namespace bathside::test {

struct PaperCase {
    std::string name;
    ui::PaperPages pages;
};

[[nodiscard]] ui::BagLabel usualLabel();
/// Four components with long names, a long bag name and the like.
[[nodiscard]] ui::BagLabel fullLabel();
[[nodiscard]] ui::PlanSheet usualSheet();
/// Three pages and more, past midnight.
[[nodiscard]] ui::PlanSheet longSheet();

/// Everything on every paper that it goes on, in the language that holds now.
[[nodiscard]] std::vector<PaperCase> paperCases();

}  // namespace bathside::test
