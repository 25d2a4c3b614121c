#pragma once

// The record: the entries of some days, what they say exactly, whether they are sound; export and
// copy. For reading only: nothing of the record can be changed here. A shift lead may add a comment
// to a note of any day, signed by PIN.
//
// Follows the trail while it shows. Places: record.bench, .before, .after, .filter, .clear,
// .verify, .export, .copy, .page-up, .page-down, .up, .down, .exact, .linked, .comment, .turn,
// .close; choices under record.ask.X, dates and the comment as on the bench (ask.X, pad.X,
// letters.X).

#include <functional>
#include <optional>

#include "ui/frame/page.h"
#include "ui/models/printing.h"
#include "ui/models/record_source.h"
#include "ui/models/station_model.h"
#include "ui/record/day_filter.h"
#include "ui/record/field_sheet.h"
#include "ui/record/record_text.h"
#include "ui/review/signing.h"
#include "ui/text/language.h"

namespace bathside::ui {

class AskPane;
class ChoiceGrid;
class DayView;
struct Choice;
class Label;

class RecordPage final : public Page {
    Q_OBJECT

public:
    /// So many days are read whole; of more, a stretch of entries at a time, the newest first.
    static constexpr int kWholeDays = 7;

    struct Parts {
        StationModel& model;
        RecordSource& source;
        const Language& language;
        PinDesk& pins;
    };

    explicit RecordPage(Parts parts, QWidget* parent = nullptr);

    bool usesScan(const QString& text, const TapStamp& stamp) override
    {
        return takesPerson(m_signing, text, stamp);
    }

    /// The way to paper, from now on: the export offers the day sheet to it, too.
    void printBy(Printing& printing);
    [[nodiscard]] const DayModel& day() const noexcept { return m_day; }
    [[nodiscard]] const DayRange& days() const noexcept { return m_days; }

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    enum class Over : std::uint8_t { Nothing, Choices, Answer, Question };
    using Chosen = std::function<void(const QString& id)>;

    [[nodiscard]] TapButton* button(const char* name, void (RecordPage::*pressed)());
    void connectTaps();
    void connectSource();

    // the days
    void showDays(const DayRange& days, const DayWish& wished = {});
    [[nodiscard]] bool isLong() const { return m_days.count() > kWholeDays; }
    bool turnStretch(int direction);
    void moveBy(int days);
    void dayBefore();
    void dayAfter();
    void follow();
    void read();
    void askDays();
    void askFirst();
    void askLast(Date first);
    void wish(const DayWish& wish);

    // the targets
    void goToBench();
    void pressFilter();
    void pressClear();
    void askIds(std::string DayWish::*which, const std::set<std::string>& ids, int from);
    void askTyped(std::string DayWish::*which);
    void pressVerify();
    void pressExport();
    void printDay(const SheetAnswer& answer);
    void tellPrinted(const PrintOutcome& outcome);
    void pressCopy();
    void askPlace(const QString& title, const QList<Choice>& more, const Chosen& chosen);
    void pageUp();
    void pageDown();
    void rowUp();
    void rowDown();
    void pressExact();
    void pressLinked();
    void turnSheet();
    void goTo(Seq seq);

    // a shift lead's comment (record_ask.cpp)
    [[nodiscard]] bool offersComment() const;
    void pressComment(const TapStamp& stamp);
    void askCommentSigned(Seq note, const QString& text);
    void tell(const QString& sentence);
    void showRefusal(const Refusal& refusal);

    // what lies over the list
    void choose(const QString& title, const QList<Choice>& choices, Chosen chosen);
    void show(const Sheet& sheet, Seq exactOf = 0);
    void close();
    void put(Over over);

    // what is shown
    void place();
    void placeBar(const QRect& bar);
    void placeDetail(const QRect& room);
    void render();
    void renderBar();
    void renderDetail();
    void renderTitle();
    [[nodiscard]] const DayRow* picked() const;
    [[nodiscard]] QString bondTo(const DayRow& row, Seq seq) const;

    Parts m_parts;
    StationModel& m_model;
    RecordSource& m_source;
    Printing* m_printing = nullptr;
    DayModel m_day;
    DayFilter m_filter;
    DayRange m_days;
    DayWish m_wish;
    std::vector<Seq>
        m_befores;              // of many days: where each stretch left behind on the way back ends
    bool m_hasEarlier = false;  // than the stretch shown
    bool m_landsFirst = false;  // on the first row of what is read
    Seq m_exactOf = 0;          // the entry that the sheet shows; 0: another sheet
    Seq m_wanted = 0;           // to be picked once its day is read
    Seq m_recorded = 0;         // the trail's last entry as the source was asked
    bool m_reading = false;     // a question to the source stands
    bool m_again = false;       // and there is more since
    std::optional<StoreTrouble> m_trouble;

    Label *m_title, *m_empty, *m_about;
    DayView* m_list;
    ChoiceGrid* m_choices;
    FieldSheet* m_sheet;
    AskPane* m_ask;
    Signing m_signing;
    TapButton *m_bench, *m_before, *m_after, *m_filterButton, *m_clear, *m_verify, *m_export,
        *m_copy;
    TapButton *m_pageUp, *m_pageDown, *m_up, *m_down, *m_exact, *m_linked, *m_comment, *m_turn,
        *m_close;
    Chosen m_chosen;
    Over m_over = Over::Nothing;
    bool m_verifying = false, m_exporting = false, m_copying = false;
};

}  // namespace bathside::ui
