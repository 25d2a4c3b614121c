#pragma once

// Barcodes as modules, and how they are painted. Written by libzint; nothing here knows a
// symbology.
//
// Sources of the quiet zones: GS1 General Specifications, 5.4 (Code 128: 10 modules), ISO/IEC 16022
// (Data Matrix: 1), ISO/IEC 18004 (QR code: 4).

#include <QImage>
#include <QRectF>
#include <optional>
#include <string_view>
#include <vector>

#include "core/scan/element_string.h"

class QPainter;

namespace bathside::ui {

enum class Symbology : std::uint8_t { Code128, DataMatrix, QrCode };

struct Barcode {
    int columns = 0, rows = 0;  // modules; one row: a linear symbol, as high as it is given room
    int quiet = 0;              // modules that must stay white at each end, above and below too
                                // where there are rows
    std::vector<bool> dark;     // row by row

    [[nodiscard]] bool isDark(int row, int column) const
    {
        return dark[static_cast<std::size_t>(row * columns + column)];
    }
    [[nodiscard]] bool isLinear() const { return rows == 1; }
};

/// Bytes, read as ISO 8859-1. None: the symbol cannot hold it.
[[nodiscard]] std::optional<Barcode> barcodeOf(Symbology symbology, std::string_view text);
/// With FNC1 in front: GS1-128, GS1 DataMatrix, GS1 QR Code.
[[nodiscard]] std::optional<Barcode> barcodeOf(Symbology symbology,
                                               const gs1::ElementString& elements);

/// As large as whole device pixels a module allow in `room`, in its middle, with its quiet zone, in
/// the painter's brush. The painter may be scaled, not turned. Nothing where there is no room.
void paintBarcode(QPainter& painter, const QRectF& room, const Barcode& barcode);

/// For screens and tests; a linear symbol is 40 modules high.
[[nodiscard]] QImage imageOf(const Barcode& barcode, int pxPerModule);

}  // namespace bathside::ui
