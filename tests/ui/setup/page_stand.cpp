#include "tests/ui/setup/page_stand.h"

#include <QApplication>
#include <QSet>
#include <cmath>

#include <gtest/gtest.h>

#include "core/trail/event_form.h"
#include "ui/controls/control.h"
#include "ui/controls/tap_button.h"
#include "ui/record/record_page.h"
#include "ui/setup/setup_page.h"
#include "ui/theme/theme.h"

namespace bathside::test {
namespace {

using namespace std::chrono_literals;

constexpr double kHairMm = 0.02;  // a rounded half pixel

QRectF inFrame(const QWidget& widget, const QWidget& frame)
{
    return {widget.mapTo(&frame, QPoint(0, 0)), QSizeF(widget.size())};
}

double gapBetween(const QRectF& a, const QRectF& b)
{
    const double across = std::max({a.left() - b.right(), b.left() - a.right(), 0.0});
    const double down = std::max({a.top() - b.bottom(), b.top() - a.bottom(), 0.0});
    return std::hypot(across, down);
}

std::vector<ui::TapButton*> targetsOf(ui::Frame& frame)
{
    std::vector<ui::TapButton*> found;
    for (auto* each : frame.findChildren<ui::TapButton*>()) {
        if (each->isVisible())
            found.push_back(each);
    }
    return found;
}

void pull(Stand& stand, const char* bag, Micros outside)
{
    stand.say(StartBag{{bag}, MicroLitres{400'000}, {"D-0417"}, MilliCelsius{22'500}});
    stand.say(InspectBag{});
    stand.say(DrawDiluent{{}, MicroLitres{5'000}});
    stand.say(TakeOut{{{0, {"serotype 3"}, {"K07-112"}}, {0, {"serotype 1"}, {"R22-019"}}}});
    stand.pass(outside);
    stand.say(MoveOn{Step::Bath, {}, {}});
    stand.pass(70s);
    for (const Step step : {Step::Opened, Step::Diluent, Step::Rinsed, Step::Bagged})
        stand.say(MoveOn{step, {}, {}});
    stand.pass(11s);
    stand.say(MixBag{});
}

}  // namespace

bool Pins::isRight(const PersonId& person, const std::string& pin) const
{
    const auto known = all.find(person);
    return known != all.end() && bathside::isRight(pin, known->second);
}

bool Pins::keep(const PersonId& person, const std::string& pin)
{
    const auto hash = hashOf(pin, PinSalt{static_cast<std::uint8_t>(all.size() + 1)});
    if (diskIsFull || !hash)
        return false;
    all[person] = *hash;
    return true;
}

void Trail::answer()
{
    for (const Asked& one : std::exchange(asked, {})) {
        std::vector<Entry> found;
        for (const Entry& entry : entries()) {
            if (one.days.first <= today && today <= one.days.last && entry.seq > one.after)
                found.push_back(entry);
        }
        if (!found.empty())
            emit entriesRead(one.days, found);
        emit dayRead(one.days, std::nullopt);
    }
}

std::vector<Entry> Trail::entries() const
{
    std::vector<Entry> all;
    Hash before{};
    for (const Event& event : m_kept.all) {
        all.push_back(entryOf(event, {"bench"}));
        chain(all.back(), before);
        before = all.back().hash;
    }
    return all;
}

PageStand::PageStand(const Panel& panel, const QString& language, Stand::As day)
    : m_preferences({.language = language,
                     .dark = false,
                     .pitchCorrection = 1,
                     .soundDevice = {},
                     .print = {}}),
      m_stand(panel, language, day),
      m_trail(m_stand.kept())
{
    m_stand.frame().addPage(QString::fromLatin1(ui::Frame::kSetUp),
                            new ui::SetUpPage({.model = m_stand.model(),
                                               .language = m_stand.language(),
                                               .preferences = m_preferences,
                                               .sound = m_loud,
                                               .printing = m_stand.papers(),
                                               .zone = "Europe/Madrid",
                                               .copies = &m_copies}));
    auto* record = new ui::RecordPage({.model = m_stand.model(),
                                       .source = m_trail,
                                       .language = m_stand.language(),
                                       .pins = m_pins});
    record->printBy(m_stand.papers());
    m_stand.frame().addPage(QString::fromLatin1(ui::Frame::kRecord), record);
}

void PageStand::show(const char* page)
{
    EXPECT_TRUE(m_stand.frame().showPage(QString::fromLatin1(page)));
    m_trail.answer();
    QApplication::processEvents();
}

void liveThroughAMorning(Stand& stand)
{
    stand.say(OpenShift{"Europe/Madrid", {"MK"}});
    for (const Check& check : stand.bench().card->content().checks)
        stand.say(RecordCheck{check.id, true, {}});
    stand.say(TakeReading{{"hand"}, MilliCelsius{28'100}});
    pull(stand, "B1", 4s);
    stand.say(HangBag{{}, {"A"}});
    stand.say(CountBirds{LineId{"A"}, 950});
    stand.say(CountBirds{LineId{"A"}, 9500});
    stand.say(TakeBack{});
    stand.pass(3min);
    pull(stand, "B2", 12s);
    const auto hung = std::ranges::find_if(stand.kept().all, [](const Event& event) {
        return std::holds_alternative<BirdsCounted>(event.fact);
    });
    ASSERT_NE(hung, stand.kept().all.end());
    stand.say(Correct{{hung->seq}, "count", "940", "misread"});
}

void expectTargetsAsTheyMustBe(ui::Frame& frame)
{
    const ui::Metrics& metrics = ui::theme().metrics();
    const auto all = targetsOf(frame);
    ASSERT_FALSE(all.empty());
    QSet<QString> seen;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const std::string place = all[i]->place().toStdString();
        EXPECT_GE(metrics.mm(all[i]->width()), 20 - kHairMm) << place;
        EXPECT_GE(metrics.mm(all[i]->height()), 20 - kHairMm) << place;
        EXPECT_FALSE(place.empty());
        EXPECT_FALSE(all[i]->accessibleName().isEmpty()) << place;
        EXPECT_FALSE(seen.contains(all[i]->place())) << place;
        seen.insert(all[i]->place());
        const QRectF here = inFrame(*all[i], frame);
        EXPECT_TRUE(QRectF(frame.rect()).contains(here)) << place;
        for (std::size_t j = i + 1; j < all.size(); ++j)
            EXPECT_GE(metrics.mm(gapBetween(here, inFrame(*all[j], frame))), 5 - kHairMm)
                << place << " and " << all[j]->place().toStdString();
    }
    for (const auto* each : frame.current()->findChildren<ui::Control*>()) {
        if (each->isVisible()) {
            EXPECT_TRUE(each->fits())
                << each->objectName().toStdString() << ": " << each->clipped().toStdString();
        }
    }
}

}  // namespace bathside::test
