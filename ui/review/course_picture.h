#pragma once

// How it came to a deviation, as a picture: an axis, what was allowed, how far it went beyond, the
// steps with their times on the way, and under the axis what the bath was meanwhile. No target.
//
// What is beyond the limit is said by colour, by its place behind the limit's line, and in words.
// Labels that would overlap go to the next row; a step that was not tapped has a hollow dot.

#include <optional>

#include "core/record/course.h"
#include "ui/controls/control.h"

namespace bathside::ui {

class CoursePicture final : public Control {
    Q_OBJECT

public:
    explicit CoursePicture(QWidget* parent = nullptr);

    /// `over`: by how much, in words.
    void show(const Course& course, const QString& over);
    void clear();

    [[nodiscard]] QSize sizeHint() const override { return sizeOfMm(120, 34); }

protected:
    [[nodiscard]] QList<PlacedText> texts() const override;
    void paintEvent(QPaintEvent* event) override;

private:
    struct Label {
        QString text;
        QRectF room;
        double x = 0;
    };

    [[nodiscard]] QRectF axis() const;
    [[nodiscard]] double x(std::int64_t value) const;
    [[nodiscard]] QList<Label> ticks() const;
    [[nodiscard]] QList<Label> limits() const;
    [[nodiscard]] QRectF strip() const;           // of the bath; without height: nothing is known
    [[nodiscard]] QList<Label> readings() const;  // one each, without text where it has no room
    void paintReadings(QPainter& painter) const;

    std::optional<Course> m_course;
    QString m_over;
};

/// The same, without words, within a tile: what was allowed, and beyond.
void drawCourse(QPainter& painter, const QRectF& where, const Course& course, const QColor& allowed,
                const QColor& beyond);

}  // namespace bathside::ui
