#pragma once

// The record page at its stand, with what its tests look at.

#include <gtest/gtest.h>

#include "tests/ui/setup/page_stand.h"
#include "ui/controls/label.h"
#include "ui/record/day_view.h"
#include "ui/record/field_sheet.h"
#include "ui/record/record_page.h"

namespace bathside::test {

class Record : public testing::Test {
protected:
    void begin()
    {
        liveThroughAMorning(m_pages.stand());
        m_pages.show(ui::Frame::kRecord);
    }
    [[nodiscard]] Stand& stand() { return m_pages.stand(); }
    [[nodiscard]] Trail& trail() { return m_pages.trail(); }
    [[nodiscard]] ui::RecordPage& page()
    {
        return *qobject_cast<ui::RecordPage*>(
            stand().frame().page(QString::fromLatin1(ui::Frame::kRecord)));
    }
    [[nodiscard]] ui::DayView& list() { return *page().findChild<ui::DayView*>(); }
    [[nodiscard]] ui::FieldSheet& sheet() { return *page().findChild<ui::FieldSheet*>(); }
    [[nodiscard]] QString valueOf(const char* name)
    {
        for (const ui::Field& field : sheet().fields()) {
            if (field.name == QLatin1String(name))
                return field.value;
        }
        return {};
    }
    [[nodiscard]] Seq picked()
    {
        return list().currentIndex().data(ui::DayModel::SeqRole).toLongLong();
    }
    [[nodiscard]] const std::vector<Event>& kept() { return stand().kept().all; }
    [[nodiscard]] QString title()
    {
        return page().findChild<ui::Label*>(QStringLiteral("record.title"))->text();
    }
    [[nodiscard]] ui::Date day(int after) { return ui::daysAfter(trail().today, after); }
    [[nodiscard]] ui::DayRange oneDay(int after) { return {day(after), day(after)}; }
    void digits(const char* text)
    {
        for (const char* digit = text; *digit; ++digit)
            stand().tap(QStringLiteral("pad.") + QLatin1Char(*digit));
        stand().tap(QStringLiteral("pad.set"));
    }
    void goTo(Seq seq)
    {
        for (int i = 0; i < 500 && picked() > seq; ++i)
            stand().tap(QStringLiteral("record.up"));
        EXPECT_EQ(picked(), seq);
    }

    PageStand m_pages{kTenInch, QStringLiteral("en")};
};

}  // namespace bathside::test
