#pragma once

// Set-up and record beside the bench: the bench's stand with the two pages in its frame, a
// loudspeaker that only counts, PINs kept in memory and checked as the real ones are, and a record
// that is answered from what the stand kept.

#include <map>
#include <vector>

#include "core/trail/entry.h"
#include "tests/ui/bench/stand.h"
#include "ui/models/copies.h"
#include "ui/models/pin_desk.h"
#include "ui/models/preferences.h"
#include "ui/models/record_source.h"
#include "ui/models/sound_test.h"

namespace bathside::test {

class Loud final : public ui::SoundTest {
public:
    void play() override { ++played; }
    [[nodiscard]] QString device() const override { return name; }
    [[nodiscard]] std::vector<ui::Loudspeaker> devices() const override
    {
        return {{QStringLiteral("a"), QStringLiteral("Built-in speaker")},
                {QStringLiteral("b"), QStringLiteral("USB speaker")}};
    }
    void use(const QString& id) override { used = id; }
    void heard() override { ++heardTimes; }

    QString name = QStringLiteral("Built-in speaker");
    QString used;
    int played = 0, heardTimes = 0;
};

/// Copies nothing and says what it is told to.
class Copying final : public ui::Copies {
    Q_OBJECT

public:
    [[nodiscard]] ui::CopyNews news() const override { return told; }
    [[nodiscard]] std::vector<ui::RecordPlace> places() const override { return where; }
    void copyNow() override { ++copied; }
    void tell(const ui::CopyNews& news)
    {
        told = news;
        emit changed();
    }

    ui::CopyNews told;
    std::vector<ui::RecordPlace> where{
        {QStringLiteral("/documents/bathside"), {}},
        {QStringLiteral("/media/stick/bathside"), QStringLiteral("STICK")}};
    int copied = 0;
};

/// Answers when told to, not before.
class Trail final : public ui::RecordSource {
    Q_OBJECT

public:
    explicit Trail(const Kept& kept) : m_kept(kept) {}

    [[nodiscard]] std::string zone() const override { return "Europe/Madrid"; }
    [[nodiscard]] ui::Date currentDay() const override { return today; }
    [[nodiscard]] std::vector<ui::RecordPlace> places() const override { return where; }

    void readDays(const ui::DayRange& days, Seq after) override { asked.push_back({days, after}); }
    void readStretch(const ui::DayRange& days, const ui::EntryWish& wish, Seq before) override
    {
        stretches.push_back({days, wish, before});
    }
    [[nodiscard]] Seq beginsAfter() const override { return earlier; }
    void findDay(Seq seq) override { sought.push_back(seq); }
    void verify() override { ++verifications; }
    void exportDays(const ui::DayRange& days, const QString& folder, char sign) override
    {
        exports.push_back({days, folder, sign});
    }
    void copyTrail(const QString& folder) override { copies.push_back(folder); }
    void askSheet(ui::Date date) override { sheets.push_back(date); }
    void witness(const SealCode& code) override { seals.push_back(code); }

    /// All questions about days; today has what was kept, any other day nothing.
    void answer();
    /// What was kept, as entries of a sound chain.
    [[nodiscard]] std::vector<Entry> entries() const;

    struct Asked {
        ui::DayRange days;
        Seq after;
    };
    struct Stretch {
        ui::DayRange days;
        ui::EntryWish wish;
        Seq before;
    };
    struct Wanted {
        ui::DayRange days;
        QString folder;
        char sign;
    };
    ui::Date today{std::chrono::year(2026), std::chrono::March, std::chrono::day(5)};
    std::vector<ui::RecordPlace> where{
        {QStringLiteral("/documents/bathside"), {}},
        {QStringLiteral("/media/stick/bathside"), QStringLiteral("STICK")}};
    std::vector<Asked> asked;
    std::vector<Stretch> stretches;
    Seq earlier = 0;
    std::vector<Seq> sought;
    std::vector<Wanted> exports;
    std::vector<QString> copies;
    std::vector<ui::Date> sheets;
    std::vector<SealCode> seals;
    int verifications = 0;

private:
    const Kept& m_kept;
};

class Pins final : public ui::PinDesk {
public:
    [[nodiscard]] bool knows(const PersonId& person) const override { return all.contains(person); }
    [[nodiscard]] bool isRight(const PersonId& person, const std::string& pin) const override;
    [[nodiscard]] bool keep(const PersonId& person, const std::string& pin) override;

    std::map<PersonId, PinHash> all;
    bool diskIsFull = false;
};

class PageStand {
public:
    PageStand(const Panel& panel, const QString& language, Stand::As day = Stand::As::Rehearsal);

    [[nodiscard]] Stand& stand() { return m_stand; }
    [[nodiscard]] Loud& loud() { return m_loud; }
    [[nodiscard]] Trail& trail() { return m_trail; }
    [[nodiscard]] Copying& copies() { return m_copies; }
    [[nodiscard]] Pins& pins() { return m_pins; }
    [[nodiscard]] ui::Preferences& preferences() { return m_preferences; }
    void show(const char* page);

private:
    ui::Preferences m_preferences;
    Loud m_loud;
    Copying m_copies;
    Pins m_pins;
    Stand m_stand;
    Trail m_trail;
};

/// A morning worth reading: checks, a bag, a pull with a late ampoule, a correction, a take-back.
void liveThroughAMorning(Stand& stand);

/// Sizes, gaps, clipping and names of every visible target. (Sources:
/// tests/ui/bench/walk_test.cpp.)
void expectTargetsAsTheyMustBe(ui::Frame& frame);

}  // namespace bathside::test
