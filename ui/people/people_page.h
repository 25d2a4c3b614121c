#pragma once

// Who works here: listed, given a role and a PIN, has left.
//
// The first one listed is a shift lead and sets a PIN at once; from then on every change is signed
// by a shift lead. A PIN is typed twice; the old one is asked for before, or a shift lead signs.
// Places: people.setup, .more, .add; persons under people.person.X; what is asked as on the bench.

#include <vector>

#include "ui/bench/ask_pane.h"
#include "ui/frame/page.h"
#include "ui/review/signing.h"
#include "ui/text/language.h"

namespace bathside::ui {

class Banner;

class PeoplePage final : public Page {
    Q_OBJECT

public:
    struct Parts {
        StationModel& model;
        const Language& language;
        PinDesk& pins;
        std::string zone;  // IANA name of the site's zone
    };

    explicit PeoplePage(Parts parts, QWidget* parent = nullptr);

    bool usesScan(const QString& text, const TapStamp& stamp) override
    {
        return takesPerson(m_signing, text, stamp);
    }

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    // what is asked (people_ask.cpp)
    void askPerson(const PersonId& person);
    void askAdd();
    void askName(const PersonId& person);
    void askRole(const PersonId& person, const std::string& name);
    void list(const PersonListed& as, const AnswerTap& tap);
    void askPin(const PersonId& person);
    void askLeadForPin(const PersonId& person);
    /// `by`: who has proved it; none: a lead begins.
    void askNewPin(const PersonId& person, std::optional<PersonId> by);
    void askAgain(const PersonId& person, std::optional<PersonId> by, const QString& first);
    void keepPin(const PersonId& person, const std::optional<PersonId>& by, const QString& pin,
                 const AnswerTap& tap);

    // people_page.cpp
    [[nodiscard]] TapButton* button(const QString& place);
    void ask(const TapStamp& stamp, const std::function<void()>& question);
    void pressTile(std::size_t index, const TapStamp& stamp);
    void tell(const QString& sentence);
    void place();
    void addTile();
    void render();
    void renderTiles();
    void renderNotice();
    [[nodiscard]] std::vector<Member> members() const;
    [[nodiscard]] int pages() const;

    Parts m_parts;
    StationModel& m_model;
    std::vector<TapButton*> m_tiles;
    TapButton *m_bench, *m_setUp, *m_more, *m_add;
    Banner* m_notice;
    AskPane* m_ask;
    Signing m_signing;
    int m_page = 0;
    std::optional<Stamp> m_toldAt;
    QString m_told;
};

}  // namespace bathside::ui
