#pragma once

// The papers that we print on, and one page of one of them, ready to be painted.
//
// A page is laid out on the screen's own pixels per millimetre, with the screen's own texts, so
// what is drawn is what is checked for room; painting scales it to the device.

#include <QLineF>
#include <QList>
#include <QPageSize>
#include <vector>

#include "ui/controls/fitted_text.h"
#include "ui/print/barcode.h"

class QPainter;

namespace bathside::ui {

enum class Paper : std::uint8_t {
    Label,   // 100 × 50 mm
    Roll,    // 62 mm wide, as long as it takes
    A4,      // 210 × 297 mm (ISO 216)
    Letter,  // 215.9 × 279.4 mm (ANSI/ASME Y14.1)
};

/// A roll's height is 0.
[[nodiscard]] QSizeF sizeMm(Paper paper);
/// A sheet for the office's printer, not a label.
[[nodiscard]] bool isSheet(Paper paper);

struct PlacedBarcode {
    Barcode barcode;
    QRectF room;
};

struct PaperPage {
    QSizeF mm;           // of the paper
    double scale = 1;    // from the layout to the paper, about its top left
    QPointF offsetMm{};  // of the layout on the paper
    QList<PlacedText> texts{};
    QList<QLineF> rules{};
    QList<QLineF> hairs{};  // thinner
    QList<QRectF> bars{};   // filled
    QList<PlacedBarcode> barcodes{};
    QString title{};  // the document's, said by its first page; empty: none
};
using PaperPages = std::vector<PaperPage>;  // all of one size

/// Every text is whole inside its room, and every room inside the paper.
[[nodiscard]] bool allFit(const PaperPage& page);

/// A page whose letters are set. It needs the screen no more: any thread may paint it.
struct SetPage {
    struct Text {
        FittedText set;
        QRectF room;
        Qt::Alignment alignment;
        QColor ink;
    };
    QSizeF mm;
    double scale = 1;
    QPointF offsetMm{};
    double pxPerMm = 1;  // of the layout
    QList<Text> texts{};
    QList<QLineF> rules{};
    QList<QLineF> hairs{};  // thinner
    QList<QRectF> bars{};   // filled
    QList<PlacedBarcode> barcodes{};
    QString title{};  // as above
};
using SetPages = std::vector<SetPage>;

[[nodiscard]] SetPage setPage(const PaperPage& page);
/// `painter` is that of a device whose page is the paper, without margins.
void paint(QPainter& painter, const SetPage& page);
[[nodiscard]] QPageSize pageSizeOf(const SetPage& page);

/// Rows cut off a rectangle of the layout, from its top. Millimetres in, pixels out.
class Rows {
public:
    Rows(QSizeF mm, double insetMm);
    explicit Rows(const QRectF& px) : m_left(px) {}

    [[nodiscard]] QRectF take(double mm);
    [[nodiscard]] Rows takeRight(double mm);  // a column of its own; the rows get narrower
    void skip(double mm) { static_cast<void>(take(mm)); }
    [[nodiscard]] const QRectF& left() const noexcept { return m_left; }
    [[nodiscard]] double leftMm() const;  // height
    [[nodiscard]] double widthMm() const;

private:
    QRectF m_left;
};

}  // namespace bathside::ui
