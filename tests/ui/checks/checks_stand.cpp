#include "tests/ui/checks/checks_stand.h"

#include <QApplication>

#include <gtest/gtest.h>

#include "core/base/day.h"
#include "core/checks/vessel_described.h"
#include "ui/checks/checks_page.h"

namespace bathside::test {

ChecksStand::ChecksStand(const Panel& panel, const QString& language,
                         std::map<QString, std::string> left)
    : m_stand(panel, language)
{
    drafts.all = std::move(left);
    stand().frame().addPage(
        QString::fromLatin1(ui::Frame::kChecks),
        new ui::ChecksPage(
            {.model = stand().model(),
             .language = stand().language(),
             .balance = {m_balance, m_preferences},
             .drafts = drafts,
             .save = [this](const QImage&, const QString& name) -> Result<QString, ui::PrintFault> {
                 saved.push_back(name);
                 return QStringLiteral("/pictures/") + name;
             },
             .zone = "Europe/Madrid"}));
}

void ChecksStand::weigh(const std::vector<Weighed>& weights)
{
    for (const Weighed& weight : weights)
        emit m_balance.said(weight);
}

void ChecksStand::show()
{
    EXPECT_TRUE(m_stand.frame().showPage(QString::fromLatin1(ui::Frame::kChecks)));
    QApplication::processEvents();
}

void ChecksStand::type(const char* number)
{
    for (const char* sign = number; *sign; ++sign)
        stand().tap(QStringLiteral("pad.") +
                    (*sign == '.' ? QStringLiteral("sign") : QString(QLatin1Char(*sign))));
    tap("pad.set");
}

void ChecksStand::typeAll(const std::vector<const char*>& numbers)
{
    for (const char* number : numbers)
        type(number);
}

void ChecksStand::spell(const char* text)
{
    for (const char* letter = text; *letter; ++letter)
        stand().tap(QStringLiteral("letters.") + QLatin1Char(*letter));
    tap("letters.set");
}

const ui::FieldSheet& ChecksStand::sheet()
{
    return *stand().frame().findChild<ui::FieldSheet*>(QStringLiteral("checks.sheet"));
}

QString ChecksStand::fields()
{
    QString all;
    for (const ui::Field& field : sheet().fields())
        all += field.name + QStringLiteral(": ") + field.value + QLatin1Char('\n');
    return all;
}

void openWithALine(Stand& stand)
{
    stand.say(OpenShift{"Europe/Madrid", {"MK"}, dayFrom("2026-03-05")});
    stand.say(CountBirds{LineId{"A"}, 3'200});
}

const std::vector<const char*> kTenWeights{"199.1", "199.6", "198.9", "199.4", "199.2",
                                           "200.1", "199",   "198.7", "199.5", "199.3"};

void keepAVessel(Stand& stand, std::int64_t millimetresPerDay)
{
    const VesselId vessel{"1"};
    stand.say(DescribeVessel{vessel, documentOf({.name = "1",
                                                 .dipstick = {{0, 0}, {240, 168}, {480, 348}},
                                                 .minimumDecilitres = 80,
                                                 .usualPerDay = {250'000},
                                                 .room = VesselDescription::Room{48, 20}})});
    std::int64_t level = 300;
    for (int day = 0; day < 7; ++day) {
        const bool filled = day == 3;
        level = filled ? 460 : level - millimetresPerDay;
        stand.say(DipVessel{vessel, level, filled});
        if (day < 6)
            stand.pass(std::chrono::hours(24));
    }
}

}  // namespace bathside::test
