#include "ui/print/barcode.h"

#include <QPainter>

#include <gtest/gtest.h>

#include "core/scan/scanned_code.h"
#include "tests/ui/print/read_barcode.h"
#include "ui/theme/palette.h"

namespace bathside::ui {
namespace {

using test::scannedFrom;

constexpr std::chrono::year kNow{2026};
constexpr auto kAll = {Symbology::Code128, Symbology::DataMatrix, Symbology::QrCode};

std::string plainIdentifier(Symbology symbology)
{
    switch (symbology) {
        case Symbology::Code128:
            return "]C0";
        case Symbology::DataMatrix:
            return "]d1";
        case Symbology::QrCode:
            return "]Q1";
    }
    return {};
}

TEST(BarcodeTest, isReadByAnotherLibrary)
{
    for (const Symbology symbology : kAll)
        for (const std::string text : {"BSB.20260305.B4.D", "K07", "A 1/2%", "0123456789"})
            for (const int pxPerModule : {2, 3, 8}) {
                const auto barcode = barcodeOf(symbology, text);
                ASSERT_TRUE(barcode);
                EXPECT_EQ(scannedFrom(imageOf(*barcode, pxPerModule)),
                          plainIdentifier(symbology) + text);
            }
}

// The whole way: written as GS1 symbols, read from the picture, understood as what was meant.
TEST(BarcodeTest, carriesElementStrings)
{
    for (const char* text :
         {"(01)09521234500018(17)271231(10)LOT7A(21)S0001", "(10)K07", "(10)A+B/C(30)12(21)x_Y",
          "(00)123456789012345675", "(01)09521234500018(3103)001250(3922)1299(99)own"}) {
        const auto meant = gs1::bracketedFrom(text, kNow);
        ASSERT_TRUE(meant) << text;
        for (const Symbology symbology : kAll) {
            const auto barcode = barcodeOf(symbology, *meant);
            ASSERT_TRUE(barcode) << text;
            const auto read = scannedCodeFrom(scannedFrom(imageOf(*barcode, 4)), kNow);
            ASSERT_TRUE(read) << text;
            EXPECT_EQ(read->content, ScannedContent(*meant)) << text << read->symbology;
        }
    }
}

TEST(BarcodeTest, saysWhatItCannotHold)
{
    EXPECT_FALSE(barcodeOf(Symbology::Code128, ""));
    EXPECT_FALSE(barcodeOf(Symbology::Code128, std::string(500, 'x')));
    EXPECT_FALSE(barcodeOf(Symbology::DataMatrix, std::string(5000, 'x')));
}

TEST(BarcodeTest, dataMatrixIsSquare)
{
    for (const char* text : {"A", "BSB.20260305.B4.D", "BSB.20260305.B%2D4%20blue.K"}) {
        const auto barcode = barcodeOf(Symbology::DataMatrix, text);
        EXPECT_EQ(barcode->columns, barcode->rows);
    }
}

// Edges between pixels would be grey: a label printer makes black or white of them.
TEST(BarcodeTest, hasSharpEdgesAtAnyScale)
{
    const auto barcode = barcodeOf(Symbology::DataMatrix, "BSB.20260305.B4.D");
    for (const double scale : {1.0, 1.37, 3.3, 7.99}) {
        QImage image(400, 400, QImage::Format_Grayscale8);
        image.fill(Palette::paper());
        QPainter painter(&image);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setBrush(Palette::paperInk());
        painter.scale(scale, scale);
        paintBarcode(painter, QRectF(3.3, 5.7, 360 / scale, 380 / scale), *barcode);
        painter.end();
        int grey = 0;
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x)
                grey += image.pixelColor(x, y).red() % 255 == 0 ? 0 : 1;
        EXPECT_EQ(grey, 0) << scale;
        EXPECT_EQ(scannedFrom(image), "]d1BSB.20260305.B4.D") << scale;
    }
}

}  // namespace
}  // namespace bathside::ui
