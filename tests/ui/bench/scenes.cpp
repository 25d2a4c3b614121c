#include <QDir>

#include "core/base/day.h"
#include "core/bench/next.h"
#include "tests/ui/bench/stand.h"

namespace bathside::test {
namespace {

using namespace std::chrono_literals;

constexpr MicroLitres kBag{400'000};

void openShift(Stand& stand)
{
    stand.say(OpenShift{"Europe/Madrid", {"MK"}});
    for (const Check& check : stand.bench().card->content().checks)
        stand.say(RecordCheck{check.id, true, {}});
    stand.note(ProveSound{"loudspeaker"});
    stand.say(TakeReading{{"hand"}, MilliCelsius{28'100}});
}

/// Two lots of the one component, one of the other; K07-112 goes first.
void receiveLots(Stand& stand)
{
    const auto line = [](const char* component, const char* lot, const char* expires) {
        return StoreReceived{.of = ampoulesOf({component}, {lot}),
                             .place = "cane 1",
                             .count = 6,
                             .doses = 2000,
                             .expires = dayFrom(expires)};
    };
    stand.say(Receive{{line("serotype 3", "K07-112", "2026-12-31"),
                       line("serotype 3", "K09-200", "2027-06-30"),
                       line("serotype 1", "R22-019", "2027-02-28")}});
}

void startBag(Stand& stand, const char* name)
{
    stand.say(StartBag{{name}, kBag, {"D-0417"}, MilliCelsius{22'500}});
}

void drawn(Stand& stand, const char* name)
{
    startBag(stand, name);
    stand.say(InspectBag{});
    stand.say(DrawDiluent{{}, MicroLitres{5'000}});
}

void out(Stand& stand, int count)
{
    std::vector<AmpouleTaken> ampoules;
    for (int i = 0; i < count; ++i)
        ampoules.push_back(i % 2 == 0 ? AmpouleTaken{0, {"serotype 3"}, {"K07-112"}}
                                      : AmpouleTaken{0, {"serotype 1"}, {"R22-019"}});
    stand.say(TakeOut{ampoules});
}

void inUse(Stand& stand, const char* name, const char* line)
{
    drawn(stand, name);
    out(stand, 2);
    stand.pass(4s);
    stand.say(MoveOn{Step::Bath, {}, {}});
    stand.pass(70s);
    for (const Step step : {Step::Opened, Step::Diluent, Step::Rinsed, Step::Bagged})
        stand.say(MoveOn{step, {}, {}});
    stand.pass(11s);
    stand.say(MixBag{});
    stand.say(HangBag{{}, {line}});
}

void twoInUse(Stand& stand)
{
    openShift(stand);
    inUse(stand, "B1", "A");
    stand.say(CountBirds{LineId{"A"}, 950});
    stand.pass(3min);
    inUse(stand, "B2", "B");
    stand.say(CountBirds{LineId{"B"}, 240});
}

void pullAt(Stand& stand, int count, Step step)
{
    twoInUse(stand);
    drawn(stand, "B3");
    out(stand, count);
    stand.pass(4s);
    for (const Step each : {Step::Bath, Step::Opened, Step::Diluent, Step::Rinsed}) {
        if (each > step)
            return;
        stand.say(MoveOn{each, {}, {}});
        stand.pass(each == Step::Bath ? 65s : 2s);
    }
}

void mixed(Stand& stand)
{
    pullAt(stand, 2, Step::Rinsed);
    stand.say(MoveOn{Step::Bagged, {}, {}});
    stand.pass(11s);
    stand.say(MixBag{});
}

}  // namespace

const std::vector<Scene>& scenes()
{
    static const std::vector<Scene> all{
        {"no shift", [](Stand&) {}},
        {"who", [](Stand& s) { s.tap(QStringLiteral("step")); }},
        {"set-up open",
         [](Stand& s) {
             s.say(OpenShift{"Europe/Madrid", {"MK"}});
         }},
        {"ready", openShift},
        {"new bag",
         [](Stand& s) {
             openShift(s);
             s.tap(QStringLiteral("step"));
         }},
        {"inspect",
         [](Stand& s) {
             openShift(s);
             startBag(s, "B1");
         }},
        {"draw",
         [](Stand& s) {
             openShift(s);
             startBag(s, "B1");
             s.say(InspectBag{});
         }},
        {"first pull",
         [](Stand& s) {
             openShift(s);
             drawn(s, "B1");
         }},
        {"ampoules",
         [](Stand& s) {
             openShift(s);
             drawn(s, "B1");
             s.tap(QStringLiteral("add-ampoule"));
         }},
        {"lot",
         [](Stand& s) {
             openShift(s);
             drawn(s, "B1");
             s.tap(QStringLiteral("step"));
         }},
        {"before pull",
         [](Stand& s) {
             twoInUse(s);
             drawn(s, "B3");
         }},
        {"wrong lot",
         [](Stand& s) {
             twoInUse(s);
             receiveLots(s);
             drawn(s, "B3");
             s.scan(QStringLiteral("]d2010952123450001817270630") + QStringLiteral("10K09-200"));
         }},
        {"misread",
         [](Stand& s) {
             openShift(s);
             s.scan(QStringLiteral("(01)09521234500019(10)K07"));
         }},
        {"which ampoule",
         [](Stand& s) {
             openShift(s);
             receiveLots(s);
             drawn(s, "B1");
             out(s, 2);
             s.pass(4s);
             s.say(MoveOn{Step::Bath, {}, {}});
             s.scan(QStringLiteral("(10)K09-200"));
             s.pass(70s);
             s.say(MoveOn{Step::Diluent, {}, {}});
             s.say(MoveOn{Step::Bagged, {}, {}});
             s.pass(11s);
         }},
        {"out", [](Stand& s) { pullAt(s, 3, Step::Out); }},
        {"in bath", [](Stand& s) { pullAt(s, 3, Step::Bath); }},
        {"look for slush",
         [](Stand& s) {
             pullAt(s, 3, Step::Bath);
             s.pass(18s);
         }},
        {"late",
         [](Stand& s) {
             pullAt(s, 3, Step::Bath);
             s.pass(40s);
         }},
        {"opened", [](Stand& s) { pullAt(s, 3, Step::Opened); }},
        {"in diluent", [](Stand& s) { pullAt(s, 2, Step::Diluent); }},
        {"rinsed", [](Stand& s) { pullAt(s, 2, Step::Rinsed); }},
        {"lost",
         [](Stand& s) {
             pullAt(s, 3, Step::Bath);
             s.say(LoseAmpoule{2, LossReason::Broken});
         }},
        {"ends open",
         [](Stand& s) {
             pullAt(s, 3, Step::Bath);
             s.tap(QStringLiteral("lane.2.end"));
         }},
        {"five lanes", [](Stand& s) { pullAt(s, 5, Step::Bath); }},
        {"refused",
         [](Stand& s) {
             pullAt(s, 3, Step::Bath);
             s.say(LoseAmpoule{2, LossReason::Broken});
             s.tap(QStringLiteral("lane.2"));
         }},
        {"no sound",
         [](Stand& s) {
             pullAt(s, 3, Step::Bath);
             s.note(LoseSound{"loudspeaker"});
             s.pass(18s);
         }},
        {"not recorded",
         [](Stand& s) {
             pullAt(s, 2, Step::Bath);
             s.record(RecordState::Health::NotRecorded);
         }},
        {"not confirmed",
         [](Stand& s) {
             twoInUse(s);
             s.record(RecordState::Health::NotConfirmed);
         }},
        {"behind",
         [](Stand& s) {
             pullAt(s, 2, Step::Opened);
             s.record(RecordState::Health::Behind);
         }},
        {"question",
         [](Stand& s) {
             pullAt(s, 2, Step::Bath);
             s.pass(40s);
             for (const Step step : {Step::Opened, Step::Diluent, Step::Rinsed, Step::Bagged})
                 s.say(MoveOn{step, {}, {}});
             s.pass(11s);
         }},
        {"mix",
         [](Stand& s) {
             pullAt(s, 2, Step::Rinsed);
             s.say(MoveOn{Step::Bagged, {}, {}});
             s.pass(11s);
         }},
        {"idle", twoInUse},
        {"next pull",
         [](Stand& s) {
             twoInUse(s);
             s.say(PlanPull{s.model().now().wall + 4min});
         }},
        {"alarms",
         [](Stand& s) {
             twoInUse(s);
             s.say(CountBirds{LineId{"A"}, 2'300});
             s.pass(58min);
         }},
        {"held",
         [](Stand& s) {
             twoInUse(s);
             s.say(HoldBag{BagId{"B1"}, HoldReason::Leak, {}});
         }},
        {"bag",
         [](Stand& s) {
             twoInUse(s);
             s.tap(QStringLiteral("bag.1"));
         }},
        {"bag down",
         [](Stand& s) {
             twoInUse(s);
             s.taps({"bag.1", "ask.down"});
         }},
        {"volume left",
         [](Stand& s) {
             twoInUse(s);
             s.taps({"bag.1", "ask.down", "ask.discarded"});
         }},
        {"hold",
         [](Stand& s) {
             twoInUse(s);
             s.taps({"bag.1", "ask.held"});
         }},
        {"line",
         [](Stand& s) {
             twoInUse(s);
             s.tap(QStringLiteral("lines.A"));
         }},
        {"birds",
         [](Stand& s) {
             twoInUse(s);
             s.taps({"lines.A", "ask.birds"});
         }},
        {"more",
         [](Stand& s) {
             twoInUse(s);
             s.tap(QStringLiteral("more"));
         }},
        {"reading",
         [](Stand& s) {
             twoInUse(s);
             s.taps({"more", "ask.reading"});
         }},
        {"plan",
         [](Stand& s) {
             twoInUse(s);
             s.taps({"more", "ask.next-pull"});
         }},
        {"note",
         [](Stand& s) {
             twoInUse(s);
             s.taps({"more", "ask.note"});
         }},
        {"correct",
         [](Stand& s) {
             twoInUse(s);
             s.taps({"more", "ask.mend"});
         }},
        {"take back why",
         [](Stand& s) {
             twoInUse(s);
             s.pass(30s);
             s.tap(QStringLiteral("take-back"));
         }},
        {"hang",
         [](Stand& s) {
             pullAt(s, 2, Step::Rinsed);
             s.say(MoveOn{Step::Bagged, {}, {}});
             s.pass(11s);
             s.say(MixBag{});
             s.tap(QStringLiteral("step"));
         }},
        {"label", [](Stand& s) { mixed(s); }},
        {"label saved",
         [](Stand& s) {
             mixed(s);
             s.papers().outcome.file =
                 QDir::homePath() +
                 QStringLiteral("/.local/share/bathside/labels/2026-03-05-B3.pdf");
             s.tap(QStringLiteral("side"));
         }},
        {"label refused",
         [](Stand& s) {
             mixed(s);
             s.papers().outcome = {
                 {},
                 QStringLiteral("Label printer, bench 2"),
                 QDir::homePath() + QStringLiteral("/.local/share/bathside/labels/"
                                                   "2026-03-05-B3.pdf"),
                 ui::PrintFault::PrinterRefused};
             s.tap(QStringLiteral("side"));
         }},
        {"label lost",
         [](Stand& s) {
             mixed(s);
             s.papers().outcome = {{}, {}, {}, ui::PrintFault::CannotWrite};
             s.tap(QStringLiteral("side"));
         }},
    };
    return all;
}

}  // namespace bathside::test
