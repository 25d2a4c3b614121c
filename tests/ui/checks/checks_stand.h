#pragma once

// The checks' page beside the others, driven by presses.

#include "tests/ui/bench/stand.h"
#include "ui/models/draft_shelf.h"
#include "ui/models/preferences.h"
#include "ui/record/field_sheet.h"

namespace bathside::test {

class FakeBalance final : public ui::WeightSource {
public:
    [[nodiscard]] std::vector<std::string> ports() const override { return plugged; }
    [[nodiscard]] std::optional<std::string> lastLine() const override { return line; }

    std::vector<std::string> plugged;
    std::optional<std::string> line;
};

class KeptDrafts final : public ui::DraftShelf {
public:
    [[nodiscard]] std::string kept(const QString& name) const override
    {
        const auto found = all.find(name);
        return found == all.end() ? std::string() : found->second;
    }
    void keep(const QString& name, const std::string& document) override { all[name] = document; }

    std::map<QString, std::string> all;
};

class ChecksStand {
public:
    /// `left`: drafts of a program that ended.
    ChecksStand(const Panel& panel, const QString& language,
                std::map<QString, std::string> left = {});

    [[nodiscard]] Stand& stand() { return m_stand; }
    [[nodiscard]] FakeBalance& balance() { return m_balance; }
    [[nodiscard]] ui::Preferences& preferences() { return m_preferences; }
    /// What the balance that is set sends, as it is.
    void weigh(const std::vector<Weighed>& weights);
    void show();
    void tap(const char* place) { stand().tap(QString::fromLatin1(place)); }
    /// Digits and a point, then set.
    void type(const char* number);
    /// One after the other, as a pad that asks again takes them.
    void typeAll(const std::vector<const char*>& numbers);
    void spell(const char* text);

    [[nodiscard]] const ui::FieldSheet& sheet();
    [[nodiscard]] QString title() { return sheet().title(); }
    /// All of it, a line a field.
    [[nodiscard]] QString fields();

    std::vector<QString> saved;  // names of pictures
    KeptDrafts drafts;

private:
    ui::Preferences m_preferences{{}};
    FakeBalance m_balance;
    Stand m_stand;
};

/// A shift with line A at work: 3,200 birds done.
void openWithALine(Stand& stand);
/// Ten shots of a dose that is right.
extern const std::vector<const char*> kTenWeights;
/// A vessel that has been dipped every day for a week, and loses what it may or three times that.
void keepAVessel(Stand& stand, std::int64_t millimetresPerDay);

}  // namespace bathside::test
