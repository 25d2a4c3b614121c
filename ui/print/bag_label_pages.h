#pragma once

// A bag's label, laid out: lying on a 100 × 50 mm label, standing on a 62 mm roll or, larger, on a
// sheet. In the language of the screen.
//
// Largest is what is read at the line: the bag and when it is over. The code is a Data Matrix.

#include "ui/print/bag_label.h"
#include "ui/print/paper.h"

namespace bathside::ui {

/// One page. Where there is too much for the paper, `allFit` says so.
[[nodiscard]] PaperPages pagesOf(const BagLabel& label, Paper paper);

}  // namespace bathside::ui
