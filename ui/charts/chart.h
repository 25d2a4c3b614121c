#pragma once

// A chart: lines over bands with marks, in the theme's colours and letters; the one place that
// knows Qt Charts.
//
// One finger shows the value under it, in the strip above; two fingers move and pinch; a mouse
// presses and wheels alike. Nothing here is a target: what a page offers beside it (all of it,
// save) it makes of `showWhole` and `picture`. Lines are told apart by stroke and name, never by
// colour alone. Set words again on a change of language.

#include <QList>
#include <QPointF>
#include <optional>

#include "ui/charts/chart_window.h"
#include "ui/controls/control.h"
#include "ui/theme/role.h"

class QChart;
class QImage;
class QValueAxis;

namespace bathside::ui {

class ChartView;
class Label;

enum class Stroke : std::uint8_t { Solid, Dashed, Dotted };

struct ChartLine {
    QString name{};           // in the value under the finger
    QList<QPointF> points{};  // by rising x
    Stroke stroke = Stroke::Solid;
    bool dots = false;    // at each point
    QStringList whens{};  // of each point: said of it in place of its x
    friend bool operator==(const ChartLine&, const ChartLine&) = default;
};

/// Across the whole width, with words at one of its ends, above or below it.
struct ChartRule {
    QString words{};
    double at = 0;
    Stroke stroke = Stroke::Dashed;
    Qt::Alignment end = Qt::AlignRight | Qt::AlignBottom;  // which corner of the words is on it
    friend bool operator==(const ChartRule&, const ChartRule&) = default;
};

/// Over the whole width; its words in one of its corners.
struct ChartBand {
    QString words{};
    double low = 0, high = 0;
    Role role = Role::Neutral;
    Qt::Alignment corner = Qt::AlignLeft | Qt::AlignTop;
    friend bool operator==(const ChartBand&, const ChartBand&) = default;
};

/// A point, with the mark of its role in its colour (an inked cross for Neutral), and words beside
/// it.
struct ChartMark {
    QString words{};
    QPointF at;
    Role role = Role::Neutral;
    friend bool operator==(const ChartMark&, const ChartMark&) = default;
};

/// Words at a point, as a line's name: just above or below it.
struct ChartName {
    QString words{};
    QPointF at;
    bool below = true;
    friend bool operator==(const ChartName&, const ChartName&) = default;
};

struct ChartAxis {
    QString unit{};
    double low = 0, high = 1;
    int decimals = 0;  // of the value under the finger
    bool hasNumbers = true;
    friend bool operator==(const ChartAxis&, const ChartAxis&) = default;
};

struct ChartContent {
    QString title{};  // in the strip while no finger is on it
    ChartAxis across{}, up{};
    QList<ChartBand> bands{};
    QList<ChartRule> rules{};
    QList<ChartLine> lines{};
    QList<ChartMark> marks{};
    QList<ChartName> names{};
    friend bool operator==(const ChartContent&, const ChartContent&) = default;
};

class Chart final : public Control {
    Q_OBJECT

public:
    explicit Chart(const QString& name, QWidget* parent = nullptr);
    ~Chart() override;

    void show(const ChartContent& content);
    /// Without the strip: for a chart under another one that says what is under the finger.
    void hideReadOut();
    [[nodiscard]] const ChartContent& content() const noexcept { return m_content; }

    /// The values nearest to `x`, as the finger at it would show them; none: nothing is near.
    void lookAt(std::optional<double> x);
    /// "1.5 min: 27.9 °C"; the title where nothing is looked at.
    [[nodiscard]] QString readOut() const;

    [[nodiscard]] const ChartWindow& window() const noexcept { return m_window; }
    void showWhole();
    /// All of it as it stands, for a file.
    [[nodiscard]] QImage picture();

    [[nodiscard]] QSize sizeHint() const override { return sizeOfMm(90, 60); }

signals:
    /// A finger came to this x.
    void touched(double x);
    /// Another part is in sight.
    void windowChanged();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void themeChanged() override;

private:
    void place();
    void draw();
    void addBands();
    void addLines();
    void dress();
    void follow();
    void zoom(double factor, const QPointF& about);
    void move(const QPointF& by);
    [[nodiscard]] QString valuesAt(double x) const;

    ChartContent m_content;
    ChartWindow m_window;
    std::optional<double> m_looked;
    bool m_hasStrip = true;
    Label* m_readOut;
    QChart* m_chart;
    QValueAxis *m_across, *m_up;
    ChartView* m_view;
};

}  // namespace bathside::ui
