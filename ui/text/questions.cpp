#include "ui/text/questions.h"

#include <QCoreApplication>
#include <array>
#include <string_view>

#include "ui/text/subjects.h"
#include "ui/text/words.h"

namespace bathside::ui {
namespace {

struct QuestionText {
    Q_DECLARE_TR_FUNCTIONS(Question)
};

struct FixedChoice {
    std::string_view word;  // as in the trail
    const char* text;
};

constexpr std::array kFixed{
    FixedChoice{"interrupted", QT_TRANSLATE_NOOP("Question", "I was interrupted")},
    FixedChoice{"too many at once", QT_TRANSLATE_NOOP("Question", "Too many at once")},
    FixedChoice{"hard to open", QT_TRANSLATE_NOOP("Question", "Hard to open")},
    FixedChoice{"tapped late", QT_TRANSLATE_NOOP("Question", "Done in time, tapped late")},
    FixedChoice{"small ampoule", QT_TRANSLATE_NOOP("Question", "A small ampoule")},
    FixedChoice{"warm bath", QT_TRANSLATE_NOOP("Question", "The bath was warm")},
    FixedChoice{"other", QT_TRANSLATE_NOOP("Question", "Something else")},
    FixedChoice{"yes", QT_TRANSLATE_NOOP("Question", "Yes")},
    FixedChoice{"no", QT_TRANSLATE_NOOP("Question", "No")},
    FixedChoice{"none", QT_TRANSLATE_NOOP("Question", "None of these")},
};

QString whyLate(const Question& question)
{
    const QString what = fullSubjectText(question.subject);
    if (question.limit == LimitName::Exposure)
        return QuestionText::tr("Why was %1 late into the bath?", "%1 is an ampoule").arg(what);
    if (question.limit == LimitName::Thaw)
        return QuestionText::tr("Why was %1 late into the diluent?", "%1 is an ampoule").arg(what);
    return QuestionText::tr("%1: why was this limit passed? %2", "limit, subject")
        .arg(wordOf(question.limit), what);
}

}  // namespace

QString questionText(const Question& question)
{
    const QString what = fullSubjectText(question.subject);
    switch (question.kind) {
        case QuestionKind::WhyLate:
            return whyLate(question);
        case QuestionKind::ThawedShort:
            return QuestionText::tr("Why was %1 so short in the bath?", "%1 is an ampoule")
                .arg(what);
        case QuestionKind::WhichBroke:
            return QuestionText::tr("Which ampoule broke? Recorded is %1.").arg(what);
        case QuestionKind::AnyoneHurt:
            return QuestionText::tr("Was anybody hurt?");
        case QuestionKind::WaterChanged:
            return QuestionText::tr("Has the bath water been changed?");
        case QuestionKind::WhichAmpoule:
            return QuestionText::tr("Lot %1 was scanned. Which ampoule was it?")
                .arg(idText(question.lot));
    }
    Q_UNREACHABLE();
}

QString choiceText(QuestionKind kind, const std::string& choice)
{
    for (const FixedChoice& fixed : kFixed) {
        if (fixed.word == choice)
            return QuestionText::tr(fixed.text);
    }
    if (kind == QuestionKind::WhichBroke || kind == QuestionKind::WhichAmpoule)
        return QuestionText::tr("ampoule %1").arg(fromCore(choice));
    return fromCore(choice);
}

}  // namespace bathside::ui
