#pragma once

// Set-up of copies of the record: one now, where they go, when one is made by itself. One tap a
// question.

#include "ui/bench/asker.h"
#include "ui/models/copies.h"
#include "ui/models/preferences.h"

namespace bathside::ui {

class AskCopies {
public:
    struct Parts {
        Asker& asker;
        Preferences& preferences;
        Copies* copies;  // none: nothing is copied here
        std::function<Stamp()> now;
        std::function<void()> back;
    };

    explicit AskCopies(Parts parts) : m_parts(std::move(parts)) {}

    [[nodiscard]] bool isOffered() const { return m_parts.copies; }
    /// The choice that leads here, with how it stands.
    [[nodiscard]] Choice choice() const;
    void ask();
    /// What stands is asked anew with fresh words, if it is this question.
    void refresh();
    void leave() { m_isAsking = false; }

private:
    void choose(const QString& id);
    void askPlace();
    void askTime();
    void chooseTime(const QString& id);
    void keep(const CopyChoice& choice);
    [[nodiscard]] QString placeLine() const;
    [[nodiscard]] QString timeLine() const;
    [[nodiscard]] const CopyChoice& set() const { return m_parts.preferences.now().copies; }

    Parts m_parts;
    bool m_isAsking = false;
};

}  // namespace bathside::ui
