#include "tests/ui/review/review_stand.h"

#include <gtest/gtest.h>

#include "core/scan/own_code.h"
#include "core/trail/event_form.h"
#include "ui/controls/banner.h"
#include "ui/people/people_page.h"
#include "ui/review/review_page.h"

namespace bathside::test {
namespace {

using namespace std::chrono_literals;

void open(Stand& stand)
{
    stand.say(OpenShift{"Europe/Madrid", {"MK"}});
    for (const Check& check : stand.bench().card->content().checks)
        stand.say(RecordCheck{check.id, true, {}});
    stand.say(TakeReading{{"hand"}, MilliCelsius{28'000}});
}

void bag(Stand& stand, const char* name, Micros outside, MilliCelsius diluent = {22'500})
{
    stand.say(StartBag{{name}, MicroLitres{400'000}, {"D-0417"}, diluent});
    stand.say(InspectBag{BagId{name}, true});
    stand.say(DrawDiluent{BagId{name}, MicroLitres{5'000}});
    stand.say(TakeOut{{{0, {"serotype 3"}, {"K07-112"}}}});
    stand.pass(outside);
    stand.say(MoveOn{Step::Bath, {}, {}});
    stand.pass(65s);
    stand.say(MoveOn{Step::Opened, {}, {}});
    stand.pass(8s);
    stand.say(MoveOn{Step::Diluent, {}, {}});
    stand.pass(9s);
    stand.say(MoveOn{Step::Bagged, {}, {}});
    stand.pass(12s);
    stand.say(MixBag{BagId{name}});
}

}  // namespace

void KeptShifts::answer()
{
    for (const Seq of : std::exchange(asked, {})) {
        std::vector<Entry> before, shift;
        for (const Event& event : m_kept.all) {
            const bool opens = std::holds_alternative<ShiftOpened>(event.fact);
            if (opens && event.seq > of)
                break;
            if (opens) {
                before.insert(before.end(), shift.begin(), shift.end());
                shift.clear();
            }
            shift.push_back(entryOf(event, {"bench"}));
        }
        emit entriesRead(of, shift);
        emit shiftRead(of, {before, {}, trouble});
    }
}

ReviewStand::ReviewStand(const Panel& panel, const QString& language)
    : m_pages(panel, language), m_shifts(m_pages.stand().kept())
{
    Stand& stand = m_pages.stand();
    stand.frame().addPage(QString::fromLatin1(ui::Frame::kReview),
                          new ui::ReviewPage({.model = stand.model(),
                                              .language = stand.language(),
                                              .pins = m_pages.pins(),
                                              .past = m_shifts,
                                              .zone = "Europe/Madrid"}));
    stand.frame().addPage(QString::fromLatin1(ui::Frame::kPeople),
                          new ui::PeoplePage({.model = stand.model(),
                                              .language = stand.language(),
                                              .pins = m_pages.pins(),
                                              .zone = "Europe/Madrid"}));
}

void ReviewStand::pin(const char* digits)
{
    for (const char* digit = digits; *digit; ++digit)
        stand().tap(QStringLiteral("pad.") + QLatin1Char(*digit));
    stand().tap(QStringLiteral("pad.set"));
}

void ReviewStand::spell(const char* letters)
{
    for (const char* letter = letters; *letter; ++letter)
        stand().tap(*letter == ' ' ? QStringLiteral("letters.space")
                                   : QStringLiteral("letters.") + QLatin1Char(*letter));
    stand().tap(QStringLiteral("letters.set"));
}

void ReviewStand::badge(const char* initials)
{
    stand().scan(QString::fromStdString(textOf(PersonCode{{initials}})));
}

QString ReviewStand::notice(const char* name)
{
    return stand().frame().findChild<ui::Banner*>(QString::fromLatin1(name))->text();
}

void listStaff(ReviewStand& pages)
{
    Stand& stand = pages.stand();
    const auto list = [&](const char* id, const char* name, Role role, std::optional<PersonId> by) {
        stand.say(ListPerson{{.person = {id}, .name = name, .role = role, .departed = false}, by});
    };
    list("LS", "Lena Sanz", Role::ShiftLead, {});
    EXPECT_TRUE(pages.pins().keep({"LS"}, "4071"));
    stand.say(SetPin{{"LS"}});
    list("MK", "Mira Kolar", Role::Vaccinator, PersonId{"LS"});
    EXPECT_TRUE(pages.pins().keep({"MK"}, "9314"));
    stand.say(SetPin{{"MK"}, PersonId{"LS"}});
}

void listSecondLead(ReviewStand& pages)
{
    pages.stand().say(ListPerson{
        {.person = {"EF"}, .name = "Eva Font", .role = Role::ShiftLead, .departed = false},
        PersonId{"LS"}});
    EXPECT_TRUE(pages.pins().keep({"EF"}, "5180"));
    pages.stand().say(SetPin{{"EF"}, PersonId{"LS"}});
}

void liveThroughDeviations(ReviewStand& pages)
{
    Stand& stand = pages.stand();
    listStaff(pages);
    open(stand);
    bag(stand, "B1", 14s);
    stand.say(TakeBagDown{BagId{"B1"}, DownReason::Finished, {}});
    stand.say(CloseShift{});
    stand.pass(20h);
    open(stand);
    bag(stand, "B1", 5s);
    stand.say(HangBag{BagId{"B1"}, {"A"}});
    stand.pass(20min);
    stand.say(CountBirds{LineId{"A"}, 950});
    stand.pass(45min);
    stand.say(CountBirds{LineId{"A"}, 1900});
    stand.say(TakeBagDown{BagId{"B1"}, DownReason::Expired, {4'000}});
    bag(stand, "B2", 12s);
    bag(stand, "B3", 5s, {29'500});
    stand.say(HoldBag{BagId{"B3"}, HoldReason::Colour, {}});
}

}  // namespace bathside::test
