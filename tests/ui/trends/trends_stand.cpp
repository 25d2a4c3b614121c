#include "tests/ui/trends/trends_stand.h"

#include <QApplication>
#include <cmath>

#include <gtest/gtest.h>

#include "core/checks/dose_measured.h"
#include "core/trail/event_form.h"

namespace bathside::test {
namespace {

using namespace std::chrono_literals;

constexpr auto kSaying = 400ms;  // that Stand::say takes by itself

void pull(Stand& stand, const std::string& bag, double outside, const char* lot)
{
    stand.say(TakeReading{{"hand"}, MilliCelsius{28'000 + std::llround(outside * 20)}});
    stand.say(StartBag{{bag}, MicroLitres{400'000}, {"D-0417"}, MilliCelsius{22'500}});
    stand.say(InspectBag{BagId{bag}, true});
    stand.say(DrawDiluent{BagId{bag}, MicroLitres{5'000}});
    stand.say(TakeOut{{{0, {"serotype 3"}, {lot}}}});
    stand.pass(Micros(std::llround(outside * 1e6)) - kSaying);
    stand.say(MoveOn{Step::Bath, {}, {}});
    stand.pass(65s - kSaying);
    stand.say(MoveOn{Step::Opened, {}, {}});
    stand.pass(8s - kSaying);
    for (const Step step : {Step::Diluent, Step::Bagged})
        stand.say(MoveOn{step, {}, {}});
    stand.pass(12s);
    stand.say(MixBag{BagId{bag}});
    stand.say(TakeBagDown{BagId{bag}, DownReason::Finished, {}});
    stand.pass(30s);
}

}  // namespace

void KeptCharts::answer()
{
    ChartFold fold;
    std::vector<Entry> entries;
    for (const Event& event : m_kept.all) {
        fold.take(event, {"bench 1"});
        entries.push_back(entryOf(event, {"bench 1"}));
    }
    const auto points = fold.finish();
    for (const ui::PointsWanted& wanted : std::exchange(asked, {}))
        emit pointsRead({wanted.ask, {points, {{1, m_kept.all.back().seq}}}, trouble});
    for (const Seq of : std::exchange(shifts, {})) {
        emit entriesRead(of, entries);
        emit shiftRead(of, {{}, {}, trouble});
    }
}

TrendsStand::TrendsStand(const Panel& panel, const QString& language)
    : m_pages(panel, language),
      m_charts(stand().kept()),
      m_page(new ui::TrendsPage(
          {.model = stand().model(),
           .language = stand().language(),
           .pins = m_pages.pins(),
           .source = m_charts,
           .save = [this](const QImage&, const QString& name) -> Result<QString, ui::PrintFault> {
               if (diskIsFull)
                   return failure(ui::PrintFault::CannotWrite);
               saved.push_back(name);
               return QStringLiteral("/documents/") + name;
           },
           .zone = "Europe/Madrid"}))
{
    stand().frame().addPage(QString::fromLatin1(ui::TrendsPage::kPage), m_page);
}

void TrendsStand::show()
{
    m_pages.show(ui::TrendsPage::kPage);
    m_charts.answer();
    QApplication::processEvents();
}

void TrendsStand::tap(const char* place)
{
    stand().tap(QString::fromLatin1(place));
    m_charts.answer();
    QApplication::processEvents();
}

void liveThroughPulls(TrendsStand& pages)
{
    Stand& stand = pages.stand();
    listStaff(pages.pages());
    stand.say(ListPerson{
        {.person = {"OB"}, .name = "Ona Bel", .role = Role::Vaccinator, .departed = false},
        PersonId{"LS"}});
    stand.say(OpenShift{"Europe/Madrid", {"MK"}});
    for (const Check& check : stand.bench().card->content().checks)
        stand.say(RecordCheck{check.id, true, {}});
    int no = 0;
    for (const double outside : kOutside) {
        if (++no == 7)
            stand.say(TakeDuty{{"OB"}});
        pull(stand, "B" + std::to_string(no), outside, no < 7 ? "K07-112" : "K08-001");
    }
    const DoseMeasured measured{.dose = {200}, .how = CollectedShots{10, {2'050}, {100}}};
    stand.say(CheckDose{LineId{"A"}, true, documentOf(measured)});
}

}  // namespace bathside::test
