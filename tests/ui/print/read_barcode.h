#pragma once

// Barcodes read from pictures by ZXing, which shares nothing with what wrote them.

#define ZX_USE_UTF8 1
#include <QImage>
#include <string>

#include <ZXing/ReadBarcode.h>

namespace bathside::test {

/// What a scanner would send: the symbology identifier and the data, FNC1 as ASCII 29; empty when
/// there is no barcode.
inline std::string scannedFrom(const QImage& picture)
{
    const QImage grey = picture.convertToFormat(QImage::Format_Grayscale8);
    const ZXing::ImageView view(grey.constBits(), grey.width(), grey.height(),
                                ZXing::ImageFormat::Lum, static_cast<int>(grey.bytesPerLine()));
    const ZXing::Result read = ZXing::ReadBarcode(view, ZXing::DecodeHints().setTryHarder(true));
    if (!read.isValid())
        return {};
    return read.symbologyIdentifier() + std::string(read.bytes().begin(), read.bytes().end());
}

}  // namespace bathside::test
