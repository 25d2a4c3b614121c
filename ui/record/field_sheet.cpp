#include "ui/record/field_sheet.h"

#include <QFontMetricsF>
#include <QPainter>

#include "ui/controls/paint.h"
#include "ui/theme/mark.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr double kTitleMm = 12, kTitleCap = 4.4;
constexpr double kLineMm = Metrics::kSmall * kPitchShare * 1.04;
constexpr double kNameShare = 0.2;

/// How many signs of `text` from `at` on fit.
qsizetype signsThatFit(const QFontMetricsF& metrics, const QString& text, qsizetype at, double px)
{
    qsizetype low = 1, high = text.size() - at;
    while (low < high) {
        const qsizetype middle = (low + high + 1) / 2;
        if (metrics.horizontalAdvance(text.mid(at, middle)) <= px)
            low = middle;
        else
            high = middle - 1;
    }
    return low;
}

}  // namespace

QStringList brokenLines(const QString& text, double capMm, double px)
{
    constexpr qsizetype kNear = 14;
    const QFontMetricsF metrics(theme().metrics().font(capMm));
    QStringList lines;
    for (qsizetype at = 0; at < text.size();) {
        qsizetype count = signsThatFit(metrics, text, at, px);
        if (at + count < text.size()) {
            const qsizetype space = text.lastIndexOf(u' ', at + count - 1);
            if (space > at && at + count - space <= kNear)
                count = space + 1 - at;
        }
        lines.append(text.mid(at, count).trimmed());
        at += count;
    }
    return lines;
}

FieldSheet::FieldSheet(QWidget* parent) : Control(parent)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
}

void FieldSheet::show(Role role, const QString& title, const QList<Field>& fields)
{
    m_role = role;
    m_title = title;
    m_fields = fields;
    QString all = title;
    for (const Field& field : fields)
        all += QStringLiteral("\n%1: %2").arg(field.name, field.value);
    suggestAccessibleName(all);
    update();
}

QRectF FieldSheet::titleRoom() const
{
    return {0, 0, static_cast<double>(width()), theme().metrics().px(kTitleMm)};
}

QRectF FieldSheet::titleText() const
{
    const Metrics& metrics = theme().metrics();
    const double mark = markOf(m_role) == Mark::None ? 0 : metrics.px(8);
    return titleRoom().adjusted(metrics.px(Metrics::kInset) + mark, 0, -metrics.px(Metrics::kInset),
                                0);
}

QList<PlacedText> FieldSheet::texts() const
{
    const Metrics& metrics = theme().metrics();
    const Palette& palette = theme().palette();
    const auto left = Qt::AlignLeft | Qt::AlignTop;
    const QColor titleInk = m_role == Role::Neutral ? palette.ink() : theme().tone(m_role).ink;
    QList<PlacedText> texts{{m_title,
                             titleText(),
                             Qt::AlignLeft | Qt::AlignVCenter,
                             {kTitleCap, Metrics::kSmall, Weight::Strong, 2},
                             titleInk}};
    const double line = metrics.px(kLineMm), by = metrics.px(Metrics::kInset);
    const double name = kNameShare * width(), wide = width() - name - 2 * by;
    const auto most = static_cast<qsizetype>((height() - metrics.px(kTitleMm) - by) / line);
    double top = metrics.px(kTitleMm) + by / 2;
    qsizetype used = 0;
    const TextWish wish{Metrics::kSmall, Metrics::kSmall, Weight::Regular, 1};
    for (const Field& field : m_fields) {
        texts.append({field.name, {by, top, name - by, line}, left, wish, palette.softInk()});
        for (const QString& part : brokenLines(field.value, Metrics::kSmall, wide - 1)) {
            if (++used > most)
                return texts;
            const bool isCut = used == most && &field != &m_fields.last();
            texts.append({isCut ? tr("… the rest is in the export") : part,
                          {by + name, top, wide, line},
                          left,
                          wish,
                          palette.ink()});
            top += line;
        }
    }
    return texts;
}

void FieldSheet::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    const Palette& palette = theme().palette();
    painter.fillRect(rect(), palette.panel());
    if (m_role != Role::Neutral) {
        const Tone& tone = theme().tone(m_role);
        const double by = theme().metrics().px(Metrics::kInset), side = theme().metrics().px(6);
        drawPlate(painter, titleRoom(), tone);
        drawMark(painter, QRectF(by, titleRoom().center().y() - side / 2, side, side),
                 markOf(m_role), tone.ink);
    }
    drawAll(painter, texts());
}

}  // namespace bathside::ui
