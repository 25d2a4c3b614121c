// A chart's picture as a file: a PNG of its own each time, in our folder of the documents.

#include "app/station/picture_file.h"

#include <QFile>
#include <QFileInfo>

#include <gtest/gtest.h>

namespace bathside::app {
namespace {

TEST(PictureFile, isAPngThatReplacesNoOther)
{
    QImage picture(30, 20, QImage::Format_RGB32);
    picture.fill(Qt::transparent);
    const auto first = savePicture(picture, QStringLiteral("trace")),
               second = savePicture(picture, QStringLiteral("trace"));
    ASSERT_TRUE(first && second);
    EXPECT_NE(*first, *second);
    for (const QString& path : {*first, *second}) {
        EXPECT_TRUE(QFileInfo(path).fileName().startsWith(QStringLiteral("trace")));
        EXPECT_EQ(QImage(path).size(), picture.size());
        EXPECT_TRUE(QFile::remove(path));
    }
}

}  // namespace
}  // namespace bathside::app
