#pragma once

// What the files of fact_sentences.h share: their context for translators, and counts.

#include <QCoreApplication>
#include <QLocale>

#include "ui/text/numbers.h"

namespace bathside::ui {

struct FactText {
    Q_DECLARE_TR_FUNCTIONS(Fact)
};

[[nodiscard]] inline QString number(std::int64_t count) { return countText(count, QLocale()); }

}  // namespace bathside::ui
