#pragma once

// The review: what waits for a shift lead, worst first; each case with its course, what it touched
// and its signature; a card that waits for approval beside what it changes.
//
// Places: review.bench, .back, .more, .judge, .card, .approve, .charts; cases under review.case.N
// (the deviation's event, or that of a hold from a shift before) and review.held.B; what is asked
// as on the bench (ask.X, pad.X, letters.X).

#include <vector>

#include "ui/bench/ask_pane.h"
#include "ui/frame/page.h"
#include "ui/models/shift_source.h"
#include "ui/review/case_tile.h"
#include "ui/review/review_talk.h"
#include "ui/text/language.h"

namespace bathside::ui {

class Banner;
class CoursePicture;
class FieldSheet;
struct Field;

class ReviewPage final : public Page {
    Q_OBJECT

public:
    struct Parts {
        StationModel& model;
        const Language& language;
        PinDesk& pins;
        ShiftSource& past;
        std::string zone;  // IANA name of the site's zone
    };

    explicit ReviewPage(Parts parts, QWidget* parent = nullptr);

    bool usesScan(const QString& text, const TapStamp& stamp) override
    {
        return takesPerson(m_signing, text, stamp);
    }

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    enum class View : std::uint8_t { List, Case, Card };

    // taps (review_page.cpp)
    [[nodiscard]] TapButton* button(const char* name);
    void connectAll();
    void ask(const TapStamp& stamp, const std::function<void()>& question);
    void pressTile(std::size_t index);
    void pressMore();
    void pressJudge(const TapStamp& stamp);
    void pressApprove(const TapStamp& stamp);
    void put(View view);
    void tell(const QString& sentence);
    void showRefusal(const Refusal& refusal);

    // what is shown (review_render.cpp)
    void place();
    void makeTiles();
    void render();
    void renderTiles();
    void renderCase();
    void renderCard();
    void renderBar();
    void renderNotice();
    [[nodiscard]] std::vector<ReviewCase> cases() const;
    /// The one that is looked at, as it stands now.
    [[nodiscard]] std::optional<ReviewCase> current() const;
    [[nodiscard]] QList<Field> fieldsOf(const ReviewCase& now) const;
    [[nodiscard]] int pages() const;
    [[nodiscard]] std::string zoneNow() const;

    // of a case from a shift before (review_past.cpp)
    struct Told {
        const State& state;
        ReviewCase one;
    };
    void connectPast();
    void askPast(const ReviewCase& one);
    [[nodiscard]] Told told(const ReviewCase& one) const;
    [[nodiscard]] QString fromText(const ReviewCase& one) const;
    struct Past {
        Seq asked = 0;  // the question that stands
        Seq of = 0;     // what `state` is about
        std::vector<Entry> entries;
        std::optional<State> state;  // none: it could not be read
    };

    Parts m_parts;
    StationModel& m_model;
    std::vector<CaseTile*> m_tiles;
    TapButton *m_bench, *m_back, *m_more, *m_judge, *m_card, *m_approve, *m_charts;
    Banner* m_notice;
    CoursePicture* m_course;
    FieldSheet* m_sheet;
    AskPane* m_ask;
    Signing m_signing;
    ReviewTalk m_talk;
    View m_view = View::List;
    Seq m_seq = 0;  // the case looked at
    Past m_past;
    int m_columns = 2, m_rows = 3, m_page = 0;
    std::optional<Stamp> m_toldAt;
    QString m_told;
    QString m_shown;  // what the sheet was made of
};

}  // namespace bathside::ui
