#include "ui/text/facts.h"

#include <QCoreApplication>
#include <QLocale>

#include "ui/text/fact_sentences.h"
#include "ui/text/numbers.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"

namespace bathside::ui {
namespace {

struct OverText {
    Q_DECLARE_TR_FUNCTIONS(Fact)
};

}  // namespace

QString factText(const Fact& fact)
{
    return std::visit([](const auto& one) { return sentenceOf(one); }, fact);
}

QString overText(LimitName limit, std::int64_t over)
{
    switch (limit) {
        case LimitName::BathAtPull:
        case LimitName::Diluent:
        case LimitName::BathBetweenPulls:
            return temperatureText(MilliCelsius{over});
        case LimitName::Needle:
            return OverText::tr("%n bird(s)", "by how many a limit was passed",
                                static_cast<int>(over));
        case LimitName::Exposure:
        case LimitName::Thaw:
        case LimitName::InUse:
        case LimitName::Reading:
        case LimitName::Swirl:
        case LimitName::DoseCheck:
        case LimitName::NextPull:
            return durationText(Millis(over));
    }
    Q_UNREACHABLE();
}

QString eventText(const Event& event, const std::string& zone)
{
    const QString person = event.person ? idText(event.person->id) : QStringLiteral("–");
    return QStringLiteral("%1  %2  %3")
        .arg(localTimeText(event.at.wall, zone), person, factText(event.fact));
}

}  // namespace bathside::ui
