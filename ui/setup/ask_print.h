#pragma once

// Set-up of labels and sheets: which printer, which paper, and a test label. One tap a question.

#include "ui/bench/asker.h"
#include "ui/models/preferences.h"
#include "ui/models/printing.h"

namespace bathside::ui {

class AskPrint {
public:
    struct Parts {
        Asker& asker;
        Preferences& preferences;
        Printing& printing;
        std::function<BagLabel()> testLabel;
        std::function<void()> back;
    };

    explicit AskPrint(Parts parts) : m_parts(std::move(parts)) {}

    /// What is set. `title`: something to say first, else how the printers stand.
    void ask(const QString& title = {});

private:
    enum class For : std::uint8_t { Labels, Sheets };

    void askPrinter(For what, int page = 0);
    void askPaper(For what);
    void choose(const QString& id);
    void choosePrinter(For what, const QString& name);
    void choosePaper(For what, Paper paper);
    [[nodiscard]] const PrintChoice& now() const { return m_parts.preferences.now().print; }
    [[nodiscard]] const QString& printerFor(For what) const;
    [[nodiscard]] Paper paperFor(For what) const;
    [[nodiscard]] QString printerText(For what, const QStringList& installed) const;

    Parts m_parts;
};

/// One of a bag called TEST, not for birds.
[[nodiscard]] BagLabel testLabel(WallTime now, const std::string& zone);

}  // namespace bathside::ui
