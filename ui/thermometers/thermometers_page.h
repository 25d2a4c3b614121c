#pragma once

// Thermometers: which there are, how each stands, its last minutes; adding, changing, calibrating;
// and what pulls will do to the bath.
//
// A tap on a thermometer looks at it; the bar says what is done about it. Places:
// thermometers.probe.X, thermometers.back, .more, .add, .change, .calibrate, .forecast, .whole,
// .save; what is asked as on the bench (ask.X, pad.X, letters.X).

#include <QImage>
#include <functional>
#include <vector>

#include "core/bath/forecast.h"
#include "ui/bench/ask_pane.h"
#include "ui/charts/save_picture.h"
#include "ui/frame/page.h"
#include "ui/thermometers/bath_reckoner.h"
#include "ui/thermometers/thermo_context.h"

namespace bathside::ui {

class Banner;
class Chart;
class Label;

class ThermometersPage final : public Page {
    Q_OBJECT

public:
    static constexpr auto kPage = "thermometers";

    struct Parts {
        StationModel& model;
        const Language& language;
        LiveProbes& live;
        SavePicture save;
        std::string zone;         // IANA name of the site's zone
        BathReckoner::Run run{};  // what takes long; none: on a thread of its own
        std::function<std::string()> balancePort{};  // none: nothing is known of a balance
    };

    explicit ThermometersPage(Parts parts, QWidget* parent = nullptr);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    enum class View : std::uint8_t { Probes, Forecast };

    // taps (thermometers_page.cpp)
    [[nodiscard]] TapButton* button(const char* name);
    void connectAll();
    void ask(const TapStamp& stamp, const std::function<void()>& question);
    void pressTile(std::size_t index);
    void pressBack();
    void pressForecast();
    void pressWhole();
    void pressSave();
    void put(View view);
    void look(const ProbeId& probe);
    void refuse(const QString& why);
    void showRefusal(const Refusal& refusal);
    void say(Role role, const QString& words);

    // what is shown (thermometers_layout.cpp, thermometers_render.cpp)
    void place();
    void placeProbes(const QRect& room);
    void placeForecast(const QRect& room);
    void placeBar();
    void makeTiles(std::size_t count);
    void render();
    void renderTiles();
    void renderDetail();
    void renderForecast();
    void renderReckoned();
    void renderBar();
    void renderNotice();
    [[nodiscard]] QString forecastNotice() const;
    [[nodiscard]] HeatRules heatNow() const;
    [[nodiscard]] std::vector<Probe> probes() const;
    [[nodiscard]] std::optional<Probe> looked() const;
    [[nodiscard]] int pages() const;
    [[nodiscard]] std::chrono::sys_days today() const;
    [[nodiscard]] BathNow bathNow() const;
    [[nodiscard]] QList<Chart*> charts() const;

    Parts m_parts;
    StationModel& m_model;
    PullDraft m_draft;  // what is asked at the bench wants one; nothing is planned here
    std::vector<TapButton*> m_tiles;
    TapButton *m_back, *m_more, *m_add, *m_change, *m_calibrate, *m_forecast, *m_whole, *m_save;
    Banner* m_notice;
    Label *m_title, *m_words, *m_reckoned;
    Chart *m_trace, *m_dip, *m_slush;
    AskPane* m_ask;
    BenchContext m_bench;
    ThermoContext m_context;
    View m_view = View::Probes;
    std::optional<ProbeId> m_looked;
    int m_page = 0;
    QString m_why;                      // of a refusal, in its own words
    std::pair<Role, QString> m_said{};  // in the notice, for a while
    std::optional<Stamp> m_saidAt;
    std::optional<CardHash> m_curveOf;  // the card whose slush curve is drawn; none: no curve is
    BathReckoner m_reckoner;
};

}  // namespace bathside::ui
