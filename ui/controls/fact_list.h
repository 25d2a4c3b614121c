#pragma once

// The last recorded facts, newest first, each with its tick: hollow while only taken, full once
// recorded.

#include <QList>

#include "ui/controls/control.h"

namespace bathside::ui {

struct FactLine {
    QString text{};  // "in bath 1, 2"
    QString time{};  // local, "09:41:07"
    bool recorded = false;
    bool refused = false;  // a refused tap, with a cross for its tick
    friend bool operator==(const FactLine&, const FactLine&) = default;
};

class FactList final : public Control {
    Q_OBJECT

public:
    /// `rows` is how many are shown.
    explicit FactList(int rows = 3, QWidget* parent = nullptr);

    void setFacts(const QList<FactLine>& facts);  // newest first
    [[nodiscard]] const QList<FactLine>& facts() const noexcept { return m_facts; }

    [[nodiscard]] QSize sizeHint() const override;

protected:
    [[nodiscard]] QList<PlacedText> texts() const override;
    void paintEvent(QPaintEvent* event) override;

private:
    [[nodiscard]] QRectF row(int index) const;

    QList<FactLine> m_facts;
    int m_rows;
};

}  // namespace bathside::ui
