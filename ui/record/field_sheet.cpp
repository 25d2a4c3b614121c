#include "ui/record/field_sheet.h"

#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "ui/controls/paint.h"
#include "ui/theme/mark.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr double kSheetTitleMm = 16.4, kTitleCap = 4.4;
constexpr double kNameShare = 0.25;

double lineHigh() { return heightOf(1, Metrics::kSmall, Weight::Regular) + 0.5; }

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
    const double cap = std::ceil(theme().metrics().px(capMm));  // as the fitted text is set
    const QFontMetricsF metrics(Metrics::fontOfCapPx(cap, Weight::Regular));
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
    m_sheet = 0;
    QString all = title;
    for (const Field& field : fields)
        all += QStringLiteral("\n%1: %2").arg(field.name, field.value);
    suggestAccessibleName(all);
    update();
}

QRectF FieldSheet::titleRoom() const
{
    return {0, 0, static_cast<double>(width()), theme().metrics().px(kSheetTitleMm)};
}

QRectF FieldSheet::titleText() const
{
    const Metrics& metrics = theme().metrics();
    const double mark = markOf(m_role) == Mark::None ? 0 : metrics.px(8);
    return titleRoom().adjusted(metrics.px(Metrics::kInset) + mark, 0, -metrics.px(Metrics::kInset),
                                0);
}

QList<Field> FieldSheet::lines() const
{
    const double by = theme().metrics().px(Metrics::kInset);
    const double name = kNameShare * width() - by, wide = (1 - kNameShare) * width() - 2 * by;
    QList<Field> lines;
    for (const Field& field : m_fields) {
        const QStringList names = brokenLines(field.name, Metrics::kSmall, name - 1);
        const QStringList values = brokenLines(field.value, Metrics::kSmall, wide - 1);
        for (qsizetype i = 0; i < std::max(names.size(), values.size()); ++i)
            lines.append({names.value(i), values.value(i)});
    }
    return lines;
}

int FieldSheet::linesEach() const
{
    const Metrics& metrics = theme().metrics();
    const double room = height() - metrics.px(kSheetTitleMm + Metrics::kInset);
    return std::max(1, static_cast<int>(room / lineHigh()));
}

int FieldSheet::sheets() const
{
    const auto count = static_cast<int>(lines().size()), each = linesEach();
    return std::max(1, (count + each - 1) / each);
}

void FieldSheet::turn()
{
    m_sheet = (m_sheet + 1) % sheets();
    update();
}

QList<PlacedText> FieldSheet::texts() const
{
    const Metrics& metrics = theme().metrics();
    const Palette& palette = theme().palette();
    const auto left = Qt::AlignLeft | Qt::AlignVCenter;
    const QColor titleInk = m_role == Role::Neutral ? palette.ink() : theme().tone(m_role).ink;
    QList<PlacedText> texts{
        {m_title, titleText(), left, {kTitleCap, Metrics::kSmall, Weight::Strong, 3}, titleInk}};
    const TextWish wish{Metrics::kSmall, Metrics::kSmall, Weight::Regular, 1};
    const double line = lineHigh(), by = metrics.px(Metrics::kInset);
    const double name = kNameShare * width();
    double top = metrics.px(kSheetTitleMm) + by / 2;
    for (const Field& each :
         lines().mid(static_cast<qsizetype>(m_sheet) * linesEach(), linesEach())) {
        texts.append({each.name, {by, top, name - by, line}, left, wish, palette.softInk()});
        texts.append({each.value,
                      {by + name, top, width() - name - 2 * by, line},
                      left,
                      wish,
                      palette.ink()});
        top += line;
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
