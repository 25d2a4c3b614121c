#pragma once

// One of the views of the checks' page: what it says, and what can be tapped.
//
// A view holds what is typed until it is recorded, so that nothing is lost when the bench calls,
// and keeps what takes long on the shelf; it holds no truth.

#include <QList>
#include <functional>

#include "ui/bench/bench_context.h"
#include "ui/models/draft_shelf.h"
#include "ui/record/field_sheet.h"

namespace bathside::ui {

struct CheckSheet {
    Role role = Role::Neutral;
    QString title{};
    QList<Field> fields{};
};

struct CheckAction {
    QString place{}, word{}, line{};
    Role role = Role::Neutral;
    QString reason{};  // not empty: unavailable, and why
    std::function<void(const AnswerTap&)> press{};
};

/// What the views share with the page.
struct CheckContext {
    BenchContext& bench;
    DraftShelf& drafts;
    std::function<void()> changed;                     // what is typed: render anew
    std::function<void(const QString& words)> tell{};  // beside what is asked, until it is answered
    std::function<void()> save{};                      // the chart's picture
    LineId line{};                                     // chosen; empty: none yet

    /// The one chosen, else the only one there is.
    [[nodiscard]] LineId lineNow() const;
    /// Null where nothing was said of that line yet.
    [[nodiscard]] const Line* known() const;
    [[nodiscard]] QString lineName() const;
};

class CheckView {
public:
    explicit CheckView(CheckContext& context) : m_context(context) {}
    CheckView(const CheckView&) = delete;
    CheckView& operator=(const CheckView&) = delete;
    virtual ~CheckView() = default;

    [[nodiscard]] virtual CheckSheet sheet() const = 0;
    [[nodiscard]] virtual QList<CheckAction> actions() = 0;
    /// Its limits stand on the card; else they are common practice.
    [[nodiscard]] virtual bool isHeldToCard() const { return false; }

protected:
    [[nodiscard]] CheckContext& context() const { return m_context; }
    [[nodiscard]] const Bench& bench() const { return m_context.bench.bench(); }
    /// Asks which line is meant, and how many birds it has done.
    [[nodiscard]] CheckAction lineAction() const;
    [[nodiscard]] CheckAction birdsAction() const;
    void ask(const NumberQuestion& question, Asker::Counted counted) const;
    void choose(const QString& title, QList<Choice> choices, Asker::Chosen chosen) const;
    /// Asks nothing more, and shows what is known now.
    void done() const;

private:
    CheckContext& m_context;
};

}  // namespace bathside::ui
