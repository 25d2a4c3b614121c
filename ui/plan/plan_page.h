#pragma once

// The day's plan: a timeline, the bags as a list, and what has to be said about it in words; each
// line's figures are entered with the number pad, and the plan is there at once.
//
// Derived by the station, shown here, kept nowhere. Places: plan.bench, .more, .lines, .list,
// .words, .print; what is asked as on the bench (ask.X, pad.X).

#include "ui/bench/ask_pane.h"
#include "ui/bench/bench_context.h"
#include "ui/frame/page.h"
#include "ui/models/printing.h"
#include "ui/text/plan_clock.h"

namespace bathside::ui {

class BagTable;
class Banner;
class FieldSheet;
class TimelineView;
struct Sheet;

class PlanPage final : public Page {
    Q_OBJECT

public:
    struct Parts {
        StationModel& model;
        const Language& language;
        Printing& printing;
        std::string zone;  // IANA name of the site's zone
    };

    explicit PlanPage(Parts parts, QWidget* parent = nullptr);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    enum class View : std::uint8_t { Timeline, List, Words, Printed };

    // taps (plan_page.cpp)
    [[nodiscard]] TapButton* button(const char* name);
    void connectAll();
    void pressLines(const TapStamp& stamp);
    void pressMore();
    void pressPrint();
    void tellPrinted(const PrintOutcome& outcome);
    void put(View view);
    void showRefusal(const Refusal& refusal);

    // what is shown (plan_render.cpp)
    void place();
    void placeBar();
    void render();
    void renderView();
    void renderNotice();
    void renderBar();
    void showWords(const Sheet& sheet);
    [[nodiscard]] const std::optional<DayPlan>& day() const { return m_model.day(); }
    [[nodiscard]] PlanClock clock() const;
    [[nodiscard]] int pages() const;
    [[nodiscard]] int pageNow() const;

    Parts m_parts;
    StationModel& m_model;
    PullDraft m_draft;  // what is asked at the bench wants one
    TapButton *m_bench, *m_more, *m_lines, *m_list, *m_words, *m_print;
    Banner* m_notice;
    TimelineView* m_timeline;
    BagTable* m_bags;
    FieldSheet* m_sheet;
    AskPane* m_ask;
    BenchContext m_context;
    View m_view = View::Timeline;
    std::optional<Stamp> m_refusedAt;
    QString m_refusal;
};

}  // namespace bathside::ui
