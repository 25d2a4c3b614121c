#pragma once

// The bench: what to do next, how long is left, which ampoule, what else is due, whether it is
// written down.
//
// Renders the model and forwards taps; keeps no truth but the pull being planned. In the critical
// window nothing moves, asks or leads away: what is not needed fades back. Places are the object
// names of its targets: step, side, lane.N (and its ends), take-back, heard, bag.N, more, lines.X,
// ask.X, pad.X, letters.X.

#include <vector>

#include "core/scan/own_code.h"
#include "ui/bench/ask_pane.h"
#include "ui/bench/bench_context.h"
#include "ui/bench/bench_layout.h"
#include "ui/frame/page.h"
#include "ui/models/big_step.h"
#include "ui/models/lanes.h"
#include "ui/models/printing.h"

namespace bathside::ui {

class BagTile;
class Banner;
class BigClock;
class FactList;
class Label;
class LineTiles;
class PullLanes;
class StepButton;

class BenchPage final : public Page {
    Q_OBJECT

public:
    /// `zone`: IANA name of the site's time zone, for a new shift.
    BenchPage(StationModel& model, const Language& language, Printing& printing, std::string zone,
              QWidget* parent = nullptr);

    [[nodiscard]] TapButton* step() override;
    /// A bag's code opens its pane; a lot that is planned on the screen is chosen by being scanned.
    bool usesScan(const QString& text, const TapStamp& stamp) override;
    [[nodiscard]] const PullDraft& draft() const noexcept { return m_draft; }

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    enum class Left : std::uint8_t { Lanes, Lines, Hint };

    // taps (bench_page.cpp)
    void connectAll();
    void connectLanes();
    void pressStep(const TapStamp& stamp);
    void pressSide(const TapStamp& stamp);
    void askFor(const BigStep& step);
    void printLabel(const BagId& bag);
    [[nodiscard]] bool isPrintBounce(quint64 inputMs);
    void moveLane(const Lane& lane, const QString& place, const TapStamp& stamp);
    void endLane(const Lane& lane, const QString& end, const QString& place, const TapStamp& stamp);
    void takeOutPlanned(const Lane& lane, const QString& place, const TapStamp& stamp);
    void pressTile(std::size_t index, const TapStamp& stamp);
    void ask(const TapStamp& stamp, const std::function<void()>& question);
    void putOff();
    void showRefusal(const Refusal& refusal);

    // scans (bench_scan.cpp)
    void showScannedBag(const BagCode& code, const QString& text, const TapStamp& stamp);
    void planScanned(const Stock& of, const QString& text, const TapStamp& stamp);

    // what is shown (bench_render.cpp)
    void place();
    void placeAsked(const BenchLayout& at);
    void placeStep();
    void makeTiles(std::size_t count);
    void follow();
    void render();
    void followWindow();
    void renderStep();
    void renderClock();
    void renderNote();
    void renderLeft();
    void renderHint();
    void renderFacts();
    void renderBottom();
    void renderTiles();
    void renderRefusal();
    void renderPrinted();
    [[nodiscard]] bool tellsPrinted() const;
    [[nodiscard]] Left left() const;
    [[nodiscard]] bool isBeforePull() const;
    [[nodiscard]] bool stepIsWide() const;

    StationModel& m_model;
    const Language& m_language;
    Printing& m_printing;
    PullDraft m_draft;
    StepButton* m_step;
    TapButton* m_side;
    BigClock* m_clock;
    Label *m_noteTitle, *m_note, *m_hintTitle, *m_hint;
    PullLanes* m_lanes;
    LineTiles* m_lines;
    std::vector<FactList*> m_facts;
    TapButton *m_takeBack, *m_heard, *m_more;
    std::vector<BagTile*> m_tiles;
    Banner* m_refusal;
    AskPane* m_ask;
    BenchContext m_context;
    BenchLayout m_at;
    std::optional<Stamp> m_refusedAt;
    std::optional<PrintOutcome> m_printed;  // to be told, or being told
    std::optional<Stamp> m_printedAt;       // told since
    quint64 m_printPressedMs = 0;
    bool m_questionsWait = false;  // put off until the next pull has ended
};

}  // namespace bathside::ui
