#include "ui/controls/fitted_text.h"

#include <QCache>
#include <QFontMetricsF>
#include <QPainter>
#include <algorithm>
#include <cmath>

#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr double kWorthALine = 0.85;  // a line more must make the letters this much larger
constexpr double kHair = 0.01;        // px

bool isDigitsOnly(const QString& text)
{
    return std::all_of(text.begin(), text.end(), [](QChar c) {
        return c.isDigit() || c == u':' || c == u'+' || c == u' ' || c == u'-';
    });
}

// Ordinary spaces are where lines may break; a no-break space is a letter.
QStringList wordsOf(const QString& text) { return text.split(u' ', Qt::SkipEmptyParts); }

class Setter {
public:
    Setter(const QString& text, const QSizeF& room, Weight weight)
        : m_words(wordsOf(text)), m_room(room), m_weight(weight), m_digitsOnly(isDigitsOnly(text))
    {
    }

    /// The text at that height of capitals; `whole` tells whether it is inside the room.
    [[nodiscard]] FittedText at(double capPx) const
    {
        FittedText set;
        set.font = Metrics::fontOfCapPx(capPx, m_weight);
        const QFontMetricsF metrics(set.font);
        double width = 0;
        for (const QString& word : m_words) {
            const QString longer = set.lines.isEmpty() ? word : set.lines.last() + u' ' + word;
            if (set.lines.isEmpty() || metrics.horizontalAdvance(longer) > m_room.width() + kHair)
                set.lines.append(word);
            else
                set.lines.last() = longer;
        }
        for (const QString& line : set.lines)
            width = std::max(width, metrics.horizontalAdvance(line));
        set.size = {width, height(set, metrics.capHeight())};
        set.whole = width <= m_room.width() + kHair && set.size.height() <= m_room.height() + kHair;
        return set;
    }

    /// The largest between `least` and `want` with no more than `lines` lines.
    [[nodiscard]] FittedText largest(double want, double least, int lines) const
    {
        int low = static_cast<int>(std::ceil(least)),
            high = std::max(low, static_cast<int>(std::ceil(want)));
        const auto good = [&](const FittedText& set) {
            return set.whole && set.lines.size() <= lines;
        };
        FittedText best = at(low);
        if (!good(best)) {
            best.whole = false;
            return best;
        }
        while (low < high) {
            const int middle = (low + high + 1) / 2;
            FittedText set = at(middle);
            if (good(set)) {
                best = std::move(set);
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return best;
    }

    [[nodiscard]] int wordCount() const { return static_cast<int>(m_words.size()); }

private:
    [[nodiscard]] double height(const FittedText& set, double cap) const
    {
        const auto further = static_cast<double>(std::max<qsizetype>(set.lines.size() - 1, 0));
        return cap * ((m_digitsOnly ? 1.0 : kLineShare) + further * kPitchShare);
    }

    QStringList m_words;
    QSizeF m_room;
    Weight m_weight;
    bool m_digitsOnly;
};

FittedText set(const QString& text, const QSizeF& room, const TextWish& wish)
{
    const Setter setter(text, room, wish.weight);
    const double want = theme().metrics().px(wish.capMm),
                 least = theme().metrics().px(wish.leastMm);
    const int most = std::clamp(wish.maxLines, 1, std::max(1, setter.wordCount()));
    FittedText best = setter.largest(want, least, 1);
    for (int lines = 2; lines <= std::min(most, 6); ++lines) {
        const FittedText other = setter.largest(want, least, lines);
        if (other.whole &&
            (!best.whole || best.font.pixelSize() < kWorthALine * other.font.pixelSize()))
            best = other;
    }
    return best;
}

QString keyOf(const QString& text, const QSizeF& room, const TextWish& wish)
{
    return QStringLiteral("%1|%2|%3|%4|%5|%6|%7|%8")
        .arg(room.width())
        .arg(room.height())
        .arg(wish.capMm)
        .arg(wish.leastMm)
        .arg(static_cast<int>(wish.weight))
        .arg(wish.maxLines)
        .arg(theme().metrics().pxPerMm())
        .arg(text);
}

}  // namespace

FittedText fitted(const QString& text, const QSizeF& room, const TextWish& wish)
{
    static QCache<QString, FittedText> known(
        2000);  // pages are painted every second with much the same
    const QString key = keyOf(text, room, wish);
    if (const FittedText* found = known.object(key))
        return *found;
    auto* made = new FittedText(set(text, room, wish));
    const FittedText result = *made;
    known.insert(key, made);
    return result;
}

void drawFitted(QPainter& painter, const QRectF& room, Qt::Alignment alignment,
                const FittedText& text)
{
    if (text.lines.isEmpty())
        return;
    const QFontMetricsF metrics(text.font);
    const double cap = metrics.capHeight(), pitch = cap * kPitchShare;
    const double capsBlock = cap + static_cast<double>(text.lines.size() - 1) * pitch;
    const double overhang = (text.size.height() - capsBlock) / 2;
    double top = room.center().y() - capsBlock / 2;
    if (alignment & Qt::AlignTop)
        top = room.top() + overhang;
    else if (alignment & Qt::AlignBottom)
        top = room.bottom() - overhang - capsBlock;
    painter.setFont(text.font);
    for (const QString& line : text.lines) {
        const double width = metrics.horizontalAdvance(line);
        double left = room.left();
        if (alignment & Qt::AlignHCenter)
            left = room.center().x() - width / 2;
        else if (alignment & Qt::AlignRight)
            left = room.right() - width;
        painter.drawText(QPointF(left, top + cap), line);
        top += pitch;
    }
}

bool allFit(const QList<PlacedText>& texts)
{
    return std::all_of(texts.begin(), texts.end(), [](const PlacedText& placed) {
        return placed.text.isEmpty() || fitted(placed.text, placed.room.size(), placed.wish).whole;
    });
}

void drawAll(QPainter& painter, const QList<PlacedText>& texts)
{
    for (const PlacedText& placed : texts) {
        painter.setPen(placed.ink);
        drawFitted(painter, placed.room, placed.alignment,
                   fitted(placed.text, placed.room.size(), placed.wish));
    }
}

double heightOf(int lines, double capMm, Weight weight)
{
    const double wholePx = std::ceil(theme().metrics().px(capMm));  // as letters are set
    const double cap = QFontMetricsF(Metrics::fontOfCapPx(wholePx, weight)).capHeight();
    return cap * (kLineShare + (lines - 1) * kPitchShare);
}

double widthOf(const QString& text, double capMm, Weight weight)
{
    const double wholePx = std::ceil(theme().metrics().px(capMm));  // as letters are set
    return QFontMetricsF(Metrics::fontOfCapPx(wholePx, weight)).horizontalAdvance(text);
}

}  // namespace bathside::ui
