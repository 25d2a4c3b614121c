#pragma once

// Asks in place, one question at a time; a new one takes the place of the one before. No dialog,
// and nothing of it in the critical window: whoever owns it closes it there.

#include <QList>
#include <QString>
#include <functional>
#include <optional>

#include "ui/controls/choice_grid.h"
#include "ui/controls/letter_pad.h"
#include "ui/controls/number_pad.h"

namespace bathside::ui {

struct ChartContent;

/// Where and when an answer was tapped: what an intent made of it is stamped with.
struct AnswerTap {
    quint64 inputMs = 0;
    QString place;
};

class Asker {
public:
    using Chosen = std::function<void(const QString& id, const AnswerTap&)>;
    using Counted = std::function<void(qint64 value, const AnswerTap&)>;
    using Left = std::function<void(const AnswerTap&)>;
    using Written = std::function<void(const QString& text, const AnswerTap&)>;

    /// What the big button says while a question stands, and does.
    struct Step {
        QString word, line, reason;
        std::function<void(const AnswerTap&)> done;
    };

    Asker() = default;
    Asker(const Asker&) = delete;
    Asker& operator=(const Asker&) = delete;
    virtual ~Asker() = default;

    virtual void choose(const QString& title, const QList<Choice>& choices, Chosen chosen,
                        std::optional<Step> step = {}) = 0;
    virtual void number(const NumberQuestion& question, Counted counted) = 0;
    virtual void text(const TextQuestion& question, Written written) = 0;
    /// A PIN, its digits hidden; `note` stands beside it.
    virtual void secret(const QString& title, const QString& note, Written given) = 0;
    /// Nothing is asked: words, a picture where there is one, and a way back.
    virtual void look(const QString& words, const std::optional<ChartContent>& picture,
                      Left left) = 0;
    virtual void close() = 0;

    /// The ids of the choices that stand and can be tapped.
    [[nodiscard]] virtual QStringList offered() const = 0;
    /// As a tap on that choice, one of those offered.
    virtual void pick(const QString& id, quint64 inputMs) = 0;
};

}  // namespace bathside::ui
