#pragma once

// Plays the entries of a script through the real window: which places a person would press for each
// statement.
//
// The same script through `bathside-cli replay` gives the same events, but for ids and places.
// Between entries the clock stops wherever an alarm can change. A probe's description and a scan
// come from no button and are said to the service directly. UI thread.

#include <functional>
#include <map>
#include <optional>

#include "app/station/hand.h"
#include "core/base/simulated_clock.h"
#include "core/replay/script.h"
#include "core/station/station.h"
#include "ui/bench/bench_page.h"
#include "ui/models/station_model.h"

namespace bathside::app {

class WindowPlayer {
public:
    struct Stage {
        SimulatedClock& clock;
        Station& station;
        ui::StationModel& model;
        QWidget& window;
        const ui::BenchPage& bench;
    };

    explicit WindowPlayer(Stage stage) : m_stage(stage), m_hand(stage.window) {}

    /// One entry; its time is reached first. What went wrong, or nothing.
    [[nodiscard]] std::optional<QString> play(const ScriptEntry& entry);
    void runTo(WallTime wall);

private:
    // window_player.cpp
    void say(const Statement& statement);
    void openShift(const OpenShiftEntry& open);
    void correct(const CorrectEntry& correction);
    void clearAway();
    void pressCheck(const CheckId& check);
    void fromMenu(const QString& item);
    void ask(const QString& id);
    void onBag(const std::optional<BagId>& bag, const QString& saying);
    void onLine(const std::optional<LineId>& line, const QString& saying);
    [[nodiscard]] QString tileOf(const BagId& bag) const;
    [[nodiscard]] const Bench& bench() const { return m_stage.station.bench(); }

    // window_player_stores.cpp
    void toPage(const char* page);
    void deliver(const DeliveryEntry& delivery);
    void onLot(const Stock& of, const QString& deed);
    void atPlace(const std::string& place);
    void countStock(const CountStock& meant);
    void discardStock(const DiscardStock& meant);
    void chooseLot(const ChooseLot& meant);
    void planLine(const LinePlanned& plan);
    void changeLine(const LinePlanned& known, const LinePlanned& plan);

    // window_player_pull.cpp
    void takeOut(const TakeOut& meant);
    void compose(const std::vector<AmpouleTaken>& wanted);
    void choose(const AmpouleTaken& wanted);
    void moveOn(const MoveOn& meant);
    void startBag(const StartBag& meant);
    void hangBag(const HangBag& meant);
    [[nodiscard]] QString laneOf(int ampoule) const;

    friend struct Sayer;

    Stage m_stage;
    Hand m_hand;
    std::map<std::string, Taken> m_taken;  // what the entries with an id became
};

}  // namespace bathside::app
