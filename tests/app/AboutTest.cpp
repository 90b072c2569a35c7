// About: version, limits, every notice with its owner and the words that its licence asks for; and the icon, which is drawn alike
// by the program and in the pictures that a desktop without SVG shows.
#include "app/paint/Theme.h"
#include "app/raphe/Style.h"
#include "app/raphe/help/AboutDialog.h"
#include "tests/support/Content.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QIcon>
#include <QLabel>
#include <QPushButton>
#include <QTest>
#include <QTextBrowser>

#include <cmath>
#include <cstdlib>

namespace raphe::test {

namespace {

// Blanks of any kind as one.
std::string plain(const QString &text)
{
    return text.simplified().toStdString();
}

QImage drawn(int size)
{
    return QIcon(QStringLiteral(":/icons/raphe.svg")).pixmap(QSize(size, size)).toImage().convertToFormat(QImage::Format_ARGB32);
}

} // namespace

TEST(About, SaysVersionLimitsAndEveryNotice)
{
    const auto notices = readEmbeddedNotices();
    ASSERT_TRUE(notices.ok()) << inWords(notices.error());
    dress(*qobject_cast<QApplication *>(QCoreApplication::instance()), Theme::light());
    AboutDialog dialog(notices.value(), QStringLiteral("9.8.7"));
    dialog.show();
    std::string labels;
    for (const auto *label : dialog.findChildren<QLabel *>())
        labels += plain(label->text()) + '\n';
    EXPECT_NE(labels.find("9.8.7"), std::string::npos);
    EXPECT_NE(
        labels.find("Assists a trained practitioner; follow local law, scope of practice and licensed care."), std::string::npos);
    const std::string page = plain(dialog.notices().toPlainText());
    const auto expectWords = [&](const std::string &words, const std::string &of) {
        EXPECT_NE(page.find(plain(QString::fromStdString(words))), std::string::npos) << of << ": " << words;
    };
    for (const Notice &notice : notices.value().notices)
        for (const std::string &words : {notice.what, notice.who, notice.source, notice.changed, notice.notice})
            expectWords(words, notice.id);
    for (const Licence &licence : notices.value().licences)
        for (const std::string &words : {licence.name, licence.reference, licence.text})
            expectWords(words, licence.id);
    EXPECT_NE(dialog.notices().toHtml().indexOf(QStringLiteral("href=\"http://loinc.org/license\"")), -1);
    EXPECT_FALSE(dialog.notices().accessibleName().isEmpty());
    QTest::keyClick(&dialog, Qt::Key_Escape);
    EXPECT_FALSE(dialog.isVisible());
}

TEST(Icon, PicturesAreTheDrawing)
{
    for (const int size : {48, 128, 256}) {
        const QString file = QStringLiteral(RAPHE_SOURCE_DIR "/resources/icons/raphe-%1.png").arg(size);
        const QImage picture = QImage(file).convertToFormat(QImage::Format_ARGB32);
        const QImage drawing = drawn(size);
        ASSERT_EQ(picture.size(), QSize(size, size)) << file.toStdString();
        ASSERT_EQ(drawing.size(), picture.size());
        double difference = 0;
        for (int y = 0; y < size; ++y)
            for (int x = 0; x < size; ++x) {
                const QRgb a = picture.pixel(x, y);
                const QRgb b = drawing.pixel(x, y);
                difference += std::abs(qRed(a) - qRed(b)) + std::abs(qGreen(a) - qGreen(b)) + std::abs(qBlue(a) - qBlue(b))
                    + std::abs(qAlpha(a) - qAlpha(b));
            }
        // Two renderers smooth edges a little otherwise; another drawing differs by tens.
        EXPECT_LT(difference / (4.0 * size * size), 3) << file.toStdString() << ": render it again";
    }
}

// Both halves stand out from a light and from a dark desktop, and the seam from both halves: 3 to 1 is what WCAG 2.1 asks of
// graphics (1.4.11); the seam, which is thinner than a pixel at this size, 1.5 (our choice).
TEST(Icon, CanBeSeenAtSixteenPixels)
{
    const QImage icon = drawn(16);
    ASSERT_EQ(icon.size(), QSize(16, 16));
    const auto mean = [&](int left, int right) {
        int red = 0;
        int green = 0;
        int blue = 0;
        int count = 0;
        for (int y = 3; y < 13; ++y)
            for (int x = left; x < right; ++x, ++count) {
                red += qRed(icon.pixel(x, y));
                green += qGreen(icon.pixel(x, y));
                blue += qBlue(icon.pixel(x, y));
            }
        return qRgb(red / count, green / count, blue / count);
    };
    const QRgb left = mean(2, 6);
    const QRgb right = mean(10, 14);
    for (const QRgb half : {left, right}) {
        EXPECT_GT(contrast(QColor(half), Qt::white), 3);
        EXPECT_GT(contrast(QColor(half), QColor(0x1b, 0x1f, 0x22)), 3);
        EXPECT_GT(contrast(QColor(mean(7, 9)), QColor(half)), 1.5);
    }
    EXPECT_EQ(qAlpha(icon.pixel(0, 0)), 0) << "the corner is free";
}

} // namespace raphe::test
