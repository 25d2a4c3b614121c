#pragma once

// Words, a picture where there is one, and a way back, in the place of a question.

#include <QWidget>
#include <optional>

#include "ui/charts/chart.h"
#include "ui/controls/tap_stamp.h"

namespace bathside::ui {

class TapButton;

class PicturePane final : public QWidget {
    Q_OBJECT

public:
    /// Its target's place is `place` + ".back".
    explicit PicturePane(const QString& place, QWidget* parent = nullptr);

    void show(const QString& words, const std::optional<ChartContent>& picture);
    [[nodiscard]] const Label& words() const noexcept { return *m_words; }
    [[nodiscard]] const Chart& chart() const noexcept { return *m_chart; }

signals:
    void left(const bathside::ui::TapStamp& stamp);

protected:
    void resizeEvent(QResizeEvent* event) override;

private:
    void arrange();

    Label* m_words;
    Chart* m_chart;
    TapButton* m_back;
    bool m_hasPicture = false;
};

}  // namespace bathside::ui
