#pragma once

// What is asked of a shift lead about one case, a question at a time: cause, what was done, what
// becomes of the bag, and the signature, with which all of it is said. Nothing is said before.

#include "core/record/cases.h"
#include "core/review/causes.h"
#include "ui/review/signing.h"

namespace bathside::ui {

class ReviewTalk {
public:
    explicit ReviewTalk(Signing& signing) : m_signing(signing) {}

    /// `language`: of the card's own words.
    void begin(const ReviewCase& one, const std::string& language);

private:
    void askCause();
    void askRemedy();
    void askBag();
    void askNote();
    void askLeft();
    void askWords(const QString& title, std::string* into, void (ReviewTalk::*then)());
    void askSigned();
    void write(const Proven& by, const AnswerTap& tap);
    [[nodiscard]] const Bag* bag() const;       // of this shift; null: none
    [[nodiscard]] bool isOnItsWay() const;      // the bag: something can still become of it
    [[nodiscard]] std::string becomes() const;  // of the bag, as the trail says it
    [[nodiscard]] QString signedSentence() const;
    [[nodiscard]] std::vector<Intent> intents(const PersonId& by) const;

    Signing& m_signing;
    ReviewCase m_case;
    std::string m_language;
    std::string m_cause, m_words, m_remedy, m_note;
    std::optional<Disposition> m_disposition;
    MicroLitres m_left;
};

}  // namespace bathside::ui
