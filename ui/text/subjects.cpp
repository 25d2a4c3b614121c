#include "ui/text/subjects.h"

#include <QCoreApplication>

namespace bathside::ui {
namespace {

struct SubjectText {
    Q_DECLARE_TR_FUNCTIONS(Subject)
};

QString otherThanAmpoule(const Subject& subject)
{
    const QString id = fromCore(subject.id);
    switch (subject.kind) {
        case SubjectKind::Ampoule:
            return SubjectText::tr("ampoule %1").arg(id);
        case SubjectKind::Pull:
            return SubjectText::tr("pull %1", "a set of ampoules taken out together").arg(id);
        case SubjectKind::Bag:
            return SubjectText::tr("bag %1").arg(id);
        case SubjectKind::Line:
            return SubjectText::tr("line %1", "where birds are vaccinated").arg(id);
        case SubjectKind::Bath:
            return SubjectText::tr("the bath");
        case SubjectKind::Bench:
            return SubjectText::tr("the bench");
        case SubjectKind::Station:
            // a vessel of its own is known by its name
            return id.isEmpty() ? SubjectText::tr("the station", "this computer") : id;
    }
    Q_UNREACHABLE();
}

}  // namespace

QString fromCore(const std::string& text) { return QString::fromStdString(text); }

QString subjectText(const Subject& subject)
{
    const AmpouleRef ampoule = ampouleOf(subject);
    return ampoule.no == 0 ? otherThanAmpoule(subject)
                           : SubjectText::tr("ampoule %1").arg(ampoule.no);
}

QString fullSubjectText(const Subject& subject)
{
    const AmpouleRef ampoule = ampouleOf(subject);
    if (ampoule.no == 0)
        return otherThanAmpoule(subject);
    return SubjectText::tr("ampoule %1 of pull %2").arg(ampoule.no).arg(ampoule.pull);
}

}  // namespace bathside::ui
