#pragma once

// Charts over time: one series of the record with its limits, the points that break a rule, and
// how it stands to the card's limit; by person, bench and lot, over any days. For reading only, but
// for the baseline, which a shift lead signs.
//
// A finger on a chart picks the point under it; .before and .after step from there. Places:
// trends.back, .what, .whose, .days, .rules, .limits, .save, .open, .before, .after, .whole,
// .close, .more; what is asked as on the bench (ask.X, pad.X).

#include <set>

#include "ui/bench/ask_pane.h"
#include "ui/charts/save_picture.h"
#include "ui/frame/page.h"
#include "ui/models/chart_source.h"
#include "ui/review/signing.h"
#include "ui/text/language.h"
#include "ui/trends/aliases.h"

namespace bathside::ui {

class Banner;
class Chart;
class FieldSheet;
class Label;

class TrendsPage final : public Page {
    Q_OBJECT

public:
    static constexpr auto kPage = "trends";

    struct Parts {
        StationModel& model;
        const Language& language;
        PinDesk& pins;
        ChartSource& source;
        SavePicture save;
        std::string zone;  // IANA name of the site's zone
    };

    explicit TrendsPage(Parts parts, QWidget* parent = nullptr);

    bool usesScan(const QString& text, const TapStamp& stamp) override
    {
        return takesPerson(m_signing, text, stamp);
    }

    [[nodiscard]] const Trend& trend() const noexcept { return m_trend; }

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    enum class View : std::uint8_t { Charts, Story };
    using Day = std::chrono::sys_days;

    // taps and answers (trends_page.cpp)
    [[nodiscard]] TapButton* button(const char* name);
    void connectTargets();
    void connectSource();
    void put(View view);
    void read();
    void take(const PointsAnswer& answer);
    void pick(std::optional<std::size_t> at);
    void pickNear(double x);
    void stepBy(int by);
    void pressOpen();
    void pressSave();
    void tell(Role role, const QString& sentence);
    void showRefusal(const Refusal& refusal);

    // questions (trends_ask.cpp)
    void ask(const TapStamp& stamp, const std::function<void()>& question);
    void choose(const QString& title, QList<Choice> choices, Asker::Chosen chosen);
    void askWhat();
    void askWhose();
    void askName(const QString& title, const QList<Choice>& names, int from, Asker::Chosen chosen);
    void askDays();
    void askDay(const QString& title, const std::function<void(Day)>& chosen);
    void showDays(Day first, Day last);
    void askRules();
    void askLimits();
    void askBaseline(Seq from, Seq to);
    void askWithdrawal();
    void signBaseline(const QString& what, const BaselineChosen& chosen, const QString& done);
    void wish(const TrendWish& wish);

    // what is shown (trends_render.cpp)
    void place();
    void render();
    void renderCharts();
    void renderTargets();
    void renderBar(const QList<TapButton*>& shown);
    void renderNotice();
    [[nodiscard]] std::string zoneNow() const;
    [[nodiscard]] Day today() const;
    [[nodiscard]] QString daysText() const;
    [[nodiscard]] const ChartPoint* picked() const;

    Parts m_parts;
    StationModel& m_model;
    TapButton *m_back, *m_what, *m_whose, *m_days, *m_rules, *m_limits, *m_save;
    TapButton *m_open, *m_before, *m_after, *m_close, *m_more;
    Banner* m_notice;
    Label* m_words;
    Chart *m_values, *m_ranges;
    FieldSheet* m_sheet;
    AskPane* m_ask;
    Signing m_signing;

    View m_view = View::Charts;
    TrendWish m_wish;
    Day m_first{}, m_last{};  // none chosen yet: the last 30
    std::set<RunRule> m_wanted{kUsualRules.begin(), kUsualRules.end()};
    Aliases m_people;
    TrendPoints m_points;
    Trend m_trend;
    std::optional<std::size_t> m_picked;
    int m_asked = 0;  // the newest question to the source
    bool m_isReading = false;
    std::optional<StoreTrouble> m_trouble;
    Seq m_storyOf = 0;
    std::vector<Entry> m_story;  // of the shift, as it comes
    std::optional<Stamp> m_toldAt;
    Role m_toldAs = Role::HeadsUp;
    QString m_told;
};

}  // namespace bathside::ui
