#include "ui/review/case_tile.h"

#include <QPainter>

#include "ui/review/course_picture.h"
#include "ui/text/facts.h"
#include "ui/text/review.h"
#include "ui/text/subjects.h"
#include "ui/text/words.h"
#include "ui/theme/mark.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

QString lineOf(const ReviewCase& one)
{
    QStringList parts;
    if (one.deviation)
        parts.append(QStringLiteral("+") +
                     overText(one.deviation->fact.limit, one.deviation->fact.over));
    if (one.deviation && one.about())
        parts.append(subjectText(subjectOf(*one.about())));
    if (one.isCarried)
        parts.append(entryText(one));
    else if (one.hold)
        parts.append(CaseTile::tr("blocked until a shift lead decides"));
    return parts.join(QStringLiteral(" · "));
}

}  // namespace

struct CaseTile::Rooms {
    QRectF mark, standing, words, line, course;
};

Role roleOf(const ReviewCase& one)
{
    if (!one.isOpen)
        return Role::Good;
    if (one.hold || one.severity == Severity::Critical)
        return Role::Overrun;
    return one.severity == Severity::Major ? Role::Limit : Role::HeadsUp;
}

QString standingText(const ReviewCase& one)
{
    if (one.hold)
        return CaseTile::tr("on hold");
    if (!one.isOpen)
        return CaseTile::tr("reviewed by %1").arg(idText(one.deviation->reviewed->by));
    return wordOf(one.severity);
}

void CaseTile::setCase(const ReviewCase& one, const std::optional<Course>& course,
                       const std::string& zone)
{
    m_standing = standingText(one);
    m_course = course;
    setWord(one.isCarried ? QStringLiteral("%1, %2").arg(titleOf(one), caseDay(one, zone))
                          : titleOf(one));
    setLine(lineOf(one));
    setRole(ui::roleOf(one));
    setAccessibleName(QStringList{m_standing, word(), line()}.join(QStringLiteral(", ")));
    update();
}

CaseTile::Rooms CaseTile::rooms() const
{
    constexpr double kSideMm = 20, kMarkMm = 7, kCourseMm = 1.9;
    const Metrics& metrics = theme().metrics();
    const double by = metrics.px(1.2);
    const QRectF in = QRectF(rect()).adjusted(by, by, -by, -by);
    const double side = metrics.px(kSideMm), mark = metrics.px(kMarkMm);
    const double line = heightOf(2, Metrics::kSmall, Weight::Regular) + 1;
    const double top = in.top() + (in.height() - mark - line) / 2;
    Rooms at;
    at.mark = QRectF(in.left() + (side - mark) / 2, top, mark, mark);
    at.standing = QRectF(in.left(), top + mark, side, line);
    const QRectF right = in.adjusted(side + metrics.px(1.5), 0, -metrics.px(1), 0);
    const double course = m_course ? metrics.px(kCourseMm) : 0;
    const double small = heightOf(1, Metrics::kSmall, Weight::Regular) + 1;
    at.course = QRectF(right.left(), right.bottom() - course - 1, right.width(), course);
    at.line = QRectF(right.left(), at.course.top() - small - 1, right.width(), small);
    at.words = QRectF(right.left(), right.top(), right.width(), at.line.top() - right.top());
    return at;
}

QList<PlacedText> CaseTile::texts() const
{
    const Rooms at = rooms();
    const QColor ink = shownTone().ink;
    const auto left = Qt::AlignLeft | Qt::AlignVCenter;
    const TextWish small{Metrics::kSmall, Metrics::kSmall, Weight::Regular, 1};
    return {{word(), at.words, left, {4, Metrics::kSmall, Weight::Strong, 2}, ink},
            {line(), at.line, left, small, ink},
            {m_standing,
             at.standing,
             Qt::AlignCenter,
             {Metrics::kSmall, Metrics::kSmall, Weight::Regular, 2},
             ink}};
}

void CaseTile::paintMarks(QPainter& painter) const
{
    const Rooms at = rooms();
    const Tone tone = shownTone();
    drawMark(painter, at.mark, markOf(role()), tone.ink);
    if (!m_course)
        return;
    QColor faint = tone.ink;
    faint.setAlphaF(0.35F);
    drawCourse(painter, at.course, *m_course, faint, tone.ink);
}

}  // namespace bathside::ui
