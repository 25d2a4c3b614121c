#pragma once

// What every widget of ours shares: it follows the theme, paints in floating point and can say
// whether its words fit.
//
// For page authors: sizes come from sizeHint() and minimumSizeHint(), which are in millimetres of
// the theme; lay out with QLayouts and `theme().metrics().gapPx()` between targets, and give
// controls stretch, not sizes. Texts arrive translated; set them again on QEvent::LanguageChange.
// Text is never cut with dots: it shrinks to the least height for its kind, then wraps, and
// `fits()` is false where even that is not enough.

#include <QWidget>

#include "ui/controls/fitted_text.h"

namespace bathside::ui {

class Control : public QWidget {
    Q_OBJECT

public:
    explicit Control(QWidget* parent = nullptr);

    /// Every text of this widget is whole at its present size (tests walk all of them).
    [[nodiscard]] bool fits() const { return allFit(texts()); }
    /// The first text that is not, with what it has and what it needs; empty: all are whole.
    [[nodiscard]] QString clipped() const;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    /// What is written where at the present size: painted from and checked by this one list.
    [[nodiscard]] virtual QList<PlacedText> texts() const { return {}; }
    /// The theme changed; after this the widget is laid out and painted anew.
    virtual void themeChanged() {}
    /// Sets the name unless a page has given another.
    void suggestAccessibleName(const QString& name);

private:
    QString m_suggested;
};

/// Millimetres of the theme as whole pixels, never fewer.
[[nodiscard]] QSize sizeOfMm(double width, double height);

}  // namespace bathside::ui
