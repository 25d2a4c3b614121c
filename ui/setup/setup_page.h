#pragma once

// Set-up: the card's checks, the cautions, the alarm heard, who is on duty, the bath, the screen,
// the printers, copies of the record.
//
// A tap on a check says that it is ok. "Not ok" or an override: the target for it first, then the
// check; that way nothing is said by the first tap. The check that proves the sound stands in the
// bar and is asked after the alarm was played. Places: setup.check.X, setup.bench, .more, .other,
// .sound, .reading, .duty, .screen; what is asked as on the bench (ask.X, pad.X,
// letters.X).

#include <vector>

#include "ui/bench/ask_pane.h"
#include "ui/bench/bench_context.h"
#include "ui/frame/page.h"
#include "ui/models/preferences.h"
#include "ui/models/printing.h"
#include "ui/models/sound_test.h"
#include "ui/setup/ask_copies.h"
#include "ui/setup/ask_print.h"
#include "ui/setup/check_tile.h"

namespace bathside::ui {

class Banner;
class CardGauge;
class Cautions;

class SetUpPage final : public Page {
    Q_OBJECT

public:
    struct Parts {
        StationModel& model;
        const Language& language;
        Preferences& preferences;
        SoundTest& sound;
        Printing& printing;
        std::string zone;          // IANA name of the site's zone, for a new shift
        Copies* copies = nullptr;  // none: nothing is copied here
    };

    explicit SetUpPage(Parts parts, QWidget* parent = nullptr);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    // taps (setup_page.cpp)
    [[nodiscard]] TapButton* button(const char* name);
    void connectAll();
    void ask(const TapStamp& stamp, const std::function<void()>& question);
    void pressTile(std::size_t index, const TapStamp& stamp);
    void pressOther();
    void pressSound(const TapStamp& stamp);
    void pressDuty(const TapStamp& stamp);
    void askOutcome(const CheckId& check);
    void askWhy(const CheckId& check);
    void askHeard();
    void askLoudspeaker();
    void askStation();
    void askName();
    void chooseStation(const QString& id);
    void tellPrinted(const PrintOutcome& outcome);
    void showRefusal(const Refusal& refusal);
    void closeAll();

    // what is shown (setup_render.cpp)
    void place();
    void placeTiles(const QRect& room);
    void render();
    void renderTiles();
    void renderBar();
    void renderCopies();
    [[nodiscard]] std::vector<Check> checks() const;  // without the one in the bar
    [[nodiscard]] QString wordsOf(const CheckId& check) const;
    [[nodiscard]] bool hasSoundCheck() const;
    [[nodiscard]] int pages() const;
    void makeTiles();

    Parts m_parts;
    StationModel& m_model;
    PullDraft m_draft;  // what is asked at the bench wants one; nothing is planned here
    Cautions* m_cautions;
    std::vector<CheckTile*> m_tiles;
    TapButton *m_bench, *m_more, *m_other, *m_sound, *m_reading, *m_duty, *m_screen;
    Banner* m_refusal;
    CardGauge* m_gauge;
    AskPane* m_ask;
    BenchContext m_context;
    AskPrint m_print;
    AskCopies m_copies;
    int m_columns = 2, m_rows = 2, m_page = 0;
    bool m_asksOutcome = false;  // the next tapped check is asked about
    std::optional<Stamp> m_refusedAt;
};

}  // namespace bathside::ui
