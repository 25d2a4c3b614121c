#include "ui/print/barcode.h"

#include <QPainter>
#include <QPainterPath>
#include <algorithm>
#include <cmath>
#include <memory>
#include <string>

#include <zint.h>

#include "ui/theme/palette.h"

namespace bathside::ui {
namespace {

constexpr int kLinearHeight = 40;  // modules
constexpr double kHair = 1e-6;     // of a device pixel

struct Deleter {
    void operator()(zint_symbol* symbol) const { ZBarcode_Delete(symbol); }
};

enum class Data { Bytes, Elements };

int zintNumber(Symbology symbology, Data data)
{
    switch (symbology) {
        case Symbology::Code128:
            return data == Data::Elements ? BARCODE_GS1_128 : BARCODE_CODE128;
        case Symbology::DataMatrix:
            return BARCODE_DATAMATRIX;
        case Symbology::QrCode:
            return BARCODE_QRCODE;
    }
    Q_UNREACHABLE();
}

int quietZone(Symbology symbology)
{
    switch (symbology) {
        case Symbology::Code128:
            return 10;
        case Symbology::DataMatrix:
            return 1;
        case Symbology::QrCode:
            return 4;
    }
    Q_UNREACHABLE();
}

Barcode modulesOf(const zint_symbol& symbol, int quiet)
{
    constexpr int kBits = 8;
    Barcode barcode{symbol.width, symbol.rows, quiet, {}};
    for (int row = 0; row < symbol.rows; ++row)
        for (int column = 0; column < symbol.width; ++column)
            barcode.dark.push_back(
                (symbol.encoded_data[row][column / kBits] >> (column % kBits) & 1) != 0);
    return barcode;
}

std::optional<Barcode> encoded(Symbology symbology, Data data, std::string_view text)
{
    const std::unique_ptr<zint_symbol, Deleter> symbol(ZBarcode_Create());
    symbol->symbology = zintNumber(symbology, data);
    symbol->input_mode = data == Data::Elements ? GS1_MODE : DATA_MODE;
    symbol->option_3 = symbology == Symbology::DataMatrix ? DM_SQUARE : 0;
    const std::vector<unsigned char> bytes(text.begin(), text.end());
    if (bytes.empty() ||
        ZBarcode_Encode(symbol.get(), bytes.data(), static_cast<int>(bytes.size())) != 0)
        return std::nullopt;
    return modulesOf(*symbol, quietZone(symbology));
}

/// Modules across and down, the quiet zone counted.
QSizeF wholeSize(const Barcode& barcode)
{
    const int around = 2 * barcode.quiet;
    return {static_cast<double>(barcode.columns + around),
            barcode.isLinear() ? 1.0 : barcode.rows + around};
}

/// The dark modules of one row as rectangles, neighbours joined.
void addRow(QPainterPath& path, const Barcode& barcode, int row, QPointF at, QSizeF module)
{
    for (int column = 0; column < barcode.columns; ++column) {
        const int from = column;
        while (column < barcode.columns && barcode.isDark(row, column))
            ++column;
        if (column > from)
            path.addRect(at.x() + from * module.width(), at.y(), (column - from) * module.width(),
                         module.height());
    }
}

/// `length` cut to whole device pixels, for edges that are sharp.
double snapped(double length, double pxPerUnit)
{
    return std::floor(length * pxPerUnit + kHair) / pxPerUnit;
}

QSizeF moduleIn(const QRectF& room, const Barcode& barcode, double pxPerUnit)
{
    const QSizeF whole = wholeSize(barcode);
    const double width = room.width() / whole.width(), height = room.height() / whole.height();
    if (barcode.isLinear())
        return {snapped(width, pxPerUnit), snapped(height, pxPerUnit)};
    const double side = snapped(std::min(width, height), pxPerUnit);
    return {side, side};
}

}  // namespace

std::optional<Barcode> barcodeOf(Symbology symbology, std::string_view text)
{
    return encoded(symbology, Data::Bytes, text);
}

std::optional<Barcode> barcodeOf(Symbology symbology, const gs1::ElementString& elements)
{
    std::string text;
    for (const gs1::Element& element : elements.elements)
        text += "[" + element.ai + "]" + element.data;
    return encoded(symbology, Data::Elements, text);
}

void paintBarcode(QPainter& painter, const QRectF& room, const Barcode& barcode)
{
    const double pxPerUnit = painter.deviceTransform().m11();
    const QSizeF module = moduleIn(room, barcode, pxPerUnit);
    const QSizeF size(barcode.columns * module.width(), barcode.rows * module.height());
    const QPointF offset =
        painter.deviceTransform().map(room.center() - QPointF(size.width() / 2, size.height() / 2));
    const QPointF at = painter.deviceTransform().inverted().map(
        QPointF(std::round(offset.x()), std::round(offset.y())));
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    for (int row = 0; row < barcode.rows; ++row)
        addRow(path, barcode, row, at + QPointF(0, row * module.height()), module);
    painter.fillPath(path, painter.brush());
}

QImage imageOf(const Barcode& barcode, int pxPerModule)
{
    const QSizeF whole = wholeSize(barcode) * pxPerModule;
    const int height = barcode.isLinear() ? kLinearHeight * pxPerModule : qRound(whole.height());
    QImage image(qRound(whole.width()), height, QImage::Format_Grayscale8);
    image.fill(Palette::paper());
    QPainter painter(&image);
    painter.setBrush(Palette::paperInk());
    paintBarcode(painter, image.rect(), barcode);
    return image;
}

}  // namespace bathside::ui
