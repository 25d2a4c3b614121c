#include "app/station/bench_day.h"

#include <QTimeZone>

#include "app/station/balance.h"
#include "app/station/copy_desk.h"
#include "app/station/picture_file.h"
#include "app/station/trail_charts.h"
#include "app/station/trail_record.h"
#include "ui/bench/bench_page.h"
#include "ui/checks/checks_page.h"
#include "ui/frame/seal_witness.h"
#include "ui/people/people_page.h"
#include "ui/plan/plan_page.h"
#include "ui/record/record_page.h"
#include "ui/review/review_page.h"
#include "ui/setup/setup_page.h"
#include "ui/stores/stores_page.h"
#include "ui/thermometers/thermometers_page.h"
#include "ui/trends/trends_page.h"

namespace bathside::app {

ui::Frame* frameFor(Session& session, const Surroundings& around)
{
    const auto& [language, preferences, sound, deliveries, printing] = around;
    auto* frame = new ui::Frame(session.model(), language);
    const std::string zone = QTimeZone::systemTimeZoneId().toStdString();
    // A rehearsal is not worth a copy.
    auto* copies = session.isRehearsal() ? nullptr : new CopyDesk(session, preferences, frame);
    frame->addPage(QString::fromLatin1(ui::Frame::kBench),
                   new ui::BenchPage(session.model(), language, printing, zone));
    frame->addPage(QString::fromLatin1(ui::Frame::kSetUp),
                   new ui::SetUpPage({.model = session.model(),
                                      .language = language,
                                      .preferences = preferences,
                                      .sound = sound,
                                      .printing = printing,
                                      .zone = zone,
                                      .copies = copies}));
    frame->addPage(QString::fromLatin1(ui::ThermometersPage::kPage),
                   new ui::ThermometersPage(
                       {.model = session.model(),
                        .language = language,
                        .live = session.probes(),
                        .save = savePicture,
                        .zone = zone,
                        .balancePort = [&preferences] { return preferences.now().balance.port; }}));
    frame->addPage(
        QString::fromLatin1(ui::Frame::kPlan),
        new ui::PlanPage(
            {.model = session.model(), .language = language, .printing = printing, .zone = zone}));
    frame->addPage(QString::fromLatin1(ui::Frame::kStores),
                   new ui::StoresPage({.model = session.model(),
                                       .language = language,
                                       .deliveries = deliveries,
                                       .pins = session.pins(),
                                       .zone = zone}));
    const ui::StationModel& model = session.model();
    auto* balance = new Balance(
        preferences, [&model] { return model.now(); }, "/dev", frame);
    frame->addPage(QString::fromLatin1(ui::Frame::kChecks),
                   new ui::ChecksPage({.model = session.model(),
                                       .language = language,
                                       .balance = {*balance, preferences},
                                       .drafts = session.drafts(),
                                       .save = savePicture,
                                       .zone = zone}));
    auto* charts = new TrailCharts(session, frame);
    frame->addPage(QString::fromLatin1(ui::Frame::kReview),
                   new ui::ReviewPage({.model = session.model(),
                                       .language = language,
                                       .pins = session.pins(),
                                       .past = *charts,
                                       .zone = zone}));
    frame->addPage(QString::fromLatin1(ui::TrendsPage::kPage),
                   new ui::TrendsPage({.model = session.model(),
                                       .language = language,
                                       .pins = session.pins(),
                                       .source = *charts,
                                       .save = savePicture,
                                       .zone = zone}));
    frame->addPage(QString::fromLatin1(ui::Frame::kPeople),
                   new ui::PeoplePage({.model = session.model(),
                                       .language = language,
                                       .pins = session.pins(),
                                       .zone = zone}));
    auto* source = new TrailRecord(session, frame);
    source->drawBy(preferences);
    auto* record = new ui::RecordPage({.model = session.model(),
                                       .source = *source,
                                       .language = language,
                                       .pins = session.pins()});
    record->printBy(printing);
    frame->addPage(QString::fromLatin1(ui::Frame::kRecord), record);
    new ui::SealWitness(session.model(), *source, *frame);
    return frame;
}

}  // namespace bathside::app
