#pragma once

// What this machine prints on: a printer and a paper for labels, and for sheets.

#include <QString>

#include "ui/print/paper.h"

namespace bathside::ui {

struct PrintChoice {
    QString labelPrinter;  // the system's name; empty: none, PDFs are saved
    Paper labelPaper = Paper::Label;
    QString sheetPrinter;  // the same
    Paper sheetPaper = Paper::A4;
    friend bool operator==(const PrintChoice&, const PrintChoice&) = default;
};

}  // namespace bathside::ui
