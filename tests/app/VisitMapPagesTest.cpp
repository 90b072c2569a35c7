// The visit map on paper: nothing left out or cut, sides where they are, in greys, in large print, in each language and format.
#include "app/paint/VisitMapPages.h"
#include "core/document/MapReading.h"
#include "tests/app/PdfPage.h"
#include "tests/app/Window.h"
#include "tests/support/Maps.h"

#include <QFile>
#include <QPainter>

namespace raphe::test {

namespace {

/// Itself or a part of it.
bool isDrawn(const Structure &s)
{
    auto ids = atlas().partsOf(s.id);
    ids.push_back(s.id);
    for (const Drawing *drawing : {&body().of(View::Front), &body().of(View::Back)})
        for (const DrawnShape &shape : drawing->shapes())
            if (std::find(ids.begin(), ids.end(), shape.structure) != ids.end())
                return true;
    return false;
}

Visit longVisit()
{
    Visit visit;
    visit.date = "2026-11-25";
    for (const Structure &s : atlas().structures())
        if (s.kind == Kind::Muscle && s.paired && isDrawn(s) && visit.findings.size() < 40) {
            Finding f;
            f.place = {s.id, visit.findings.size() % 2 ? Side::Left : Side::Right};
            f.tenderness = Tenderness{static_cast<int>(visit.findings.size() % 5)};
            visit.findings.push_back(f);
        }
    return visit;
}

const BodyArt &front()
{
    static const BodyArt art(atlas(), body().of(View::Front));
    return art;
}

const BodyArt &back()
{
    static const BodyArt art(atlas(), body().of(View::Back));
    return art;
}

PrintedPages pagesOf(const Visit &visit, const MapPrint &print = {}, Language language = Language::English)
{
    return visitMapPages(print, mapOf(visit, language), front(), back());
}

// Without what stands between the end of one page and the beginning of the next.
QString withoutFrame(QString text, const VisitMap &map, std::size_t pages)
{
    for (std::size_t page = 1; page <= pages; ++page)
        text.remove(squeezed(QString::fromStdString(
            filled(map.labels.pageText, {{"page", std::to_string(page)}, {"pages", std::to_string(pages)}}))));
    text.remove(squeezed(QString::fromStdString(map.legal)));
    return text.remove(squeezed(QString::fromStdString(map.title + "\u00b7" + map.patient + "\u00b7" + map.date)));
}

} // namespace

TEST(VisitMapPages, LeaveNoFindingOutHoweverMany)
{
    const QTemporaryDir folder;
    const Visit visit = longVisit();
    ASSERT_EQ(visit.findings.size(), 40U);
    const QString pdf = folder.filePath(QStringLiteral("long.pdf"));
    for (const Language language : {Language::English, Language::German, Language::Spanish})
        for (const bool isLarge : {false, true})
            for (const Paper paper : {Paper::A4, Paper::Letter}) {
                const PrintedPages pages = pagesOf(visit, {paper, isLarge, false}, language);
                EXPECT_GE(pages.pages.size(), isLarge ? 2U : 1U) << "they fit, or flow to a second page";
                EXPECT_LE(pages.pages.size(), isLarge ? 12U : 3U);
                ASSERT_TRUE(writePdf(pdf.toStdString(), pages).ok());
                const QString text = squeezedPages(pdf).join(QString());
                const VisitMap map = mapOf(visit, language);
                for (const MapLine &line : map.lines)
                    EXPECT_TRUE(text.contains(squeezed(QString::fromStdString(line.place)))) << line.number << " " << line.place;
                for (const std::string &each : textsOf(map))
                    EXPECT_TRUE(text.contains(squeezed(QString::fromStdString(each).section(QLatin1Char('.'), 0, 0)))) << each;
                EXPECT_EQ(wordsBeyond(pdf, 14), QStringList()) << "points from the edge";
            }
}

TEST(VisitMapPages, AUsualVisitIsOnePageWithEveryWord)
{
    const QTemporaryDir folder;
    const QString pdf = folder.filePath(QStringLiteral("map.pdf"));
    for (const char *name : demoVisits)
        for (const Language language : {Language::English, Language::German, Language::Spanish})
            for (const Paper paper : {Paper::A4, Paper::Letter}) {
                const Visit visit = demoVisit(name);
                const PrintedPages pages = pagesOf(visit, {paper, false, false}, language);
                const bool isLong = language == Language::German && !visit.treatment.steps.empty(); // German needs a fifth more
                EXPECT_LE(pages.pages.size(), isLong ? 2U : 1U) << name << " " << wordOf(languageWords, language);
                ASSERT_TRUE(writePdf(pdf.toStdString(), pages).ok());
                const VisitMap map = mapOf(visit, language);
                const QString text = squeezedPages(pdf).join(QString());
                const QString running = withoutFrame(text, map, pages.pages.size()); // a sentence may go on overleaf
                for (const MapSection &section : map.sections)
                    for (const MapWord &word : section.words)
                        for (const std::string &part : {section.title, word.lead, word.text})
                            EXPECT_TRUE(running.contains(squeezed(QString::fromStdString(part)))) << name << ": " << part;
                for (const std::string &part :
                    {map.title, map.complaint, map.cautions, map.legal, map.labels.left, map.labels.right})
                    EXPECT_TRUE(text.contains(squeezed(QString::fromStdString(part)))) << name << ": " << part;
                EXPECT_EQ(wordsBeyond(pdf, 14), QStringList()) << "points from the edge";
            }
}

TEST(VisitMapPages, RightAndLeftStandWhereTheyAre)
{
    const QTemporaryDir folder;
    const QString pdf = folder.filePath(QStringLiteral("sides.pdf"));
    ASSERT_TRUE(writePdf(pdf.toStdString(), pagesOf(demoVisit("tarrant-2026-11-12"))).ok());
    std::vector<std::pair<double, QString>> letters;
    for (const PrintedWord &word : wordsOf(pdf))
        if (word.text == QLatin1String("R") || word.text == QLatin1String("L"))
            letters.emplace_back(word.box.center().x(), word.text);
    std::sort(letters.begin(), letters.end());
    QString row;
    for (const auto &each : letters)
        row += each.second;
    EXPECT_EQ(row, QStringLiteral("RLLR")) << "front: the patient's right is on the left of the page; back: on the right";
}

TEST(VisitMapPages, InGreysThereIsNoColourAndEveryMarkIsSeen)
{
    const QTemporaryDir folder;
    const QString pdf = folder.filePath(QStringLiteral("grey.pdf"));
    const auto picture = [&](bool isGrey) {
        EXPECT_TRUE(writePdf(pdf.toStdString(), pagesOf(demoVisit("pellam-2026-11-26"), {Paper::A4, false, isGrey})).ok());
        return pictureOf(pdf, 60);
    };
    const auto coloured = [](const QImage &image) {
        int count = 0;
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x) {
                const QColor c = image.pixelColor(x, y);
                const auto [low, high] = std::minmax({c.red(), c.green(), c.blue()});
                count += high - low > 8 ? 1 : 0;
            }
        return count;
    };
    EXPECT_EQ(coloured(picture(true)), 0);
    EXPECT_GT(coloured(picture(false)), 1000);
    const Theme grey = Theme::greyPaper();
    for (const QColor &mark : {grey.tender, grey.restricted, grey.clear})
        EXPECT_GE(contrast(mark, grey.layer(Layer::SuperficialMuscle)), 3) << "WCAG 2.1, 1.4.11 (from memory)";
}

TEST(VisitMapPages, PrintsTheSignsThatSomebodyElseMustSee)
{
    Visit visit;
    const auto add = [&](const char *sign, std::optional<Decision> decided) {
        visit.warnings.push_back({sign, true, "2026-11-25", {}, decided, "why", "told"});
    };
    EXPECT_TRUE(mapOf(visit).warnings.empty());
    const auto &signs = adviser().rules().signs().signs;
    const auto first = [&](WarningLevel level, bool alone) {
        return std::find_if(signs.begin(), signs.end(),
            [&](const WarningSign &s) { return s.level == level && s.alone == alone && !s.byPractitioner; });
    };
    const auto same = first(WarningLevel::SameDay, false);
    const auto private_ = std::find_if(signs.begin(), signs.end(), [](const WarningSign &s) { return s.alone; });
    ASSERT_NE(private_, signs.end());
    add(same->id.c_str(), Decision::CareSameDay);
    add(private_->id.c_str(), std::nullopt);
    add("chest-pain-now", Decision::Explained);
    visit.warnings.push_back({first(WarningLevel::BeforeTreating, false)->id, false, "2026-11-25", {}, {}, "", ""});
    auto map = mapOf(visit);
    ASSERT_EQ(map.warnings.size(), 2U) << "what was asked alone is not on a page that others may read, nor is a no";
    EXPECT_TRUE(map.warnings[0].starts_with("Get medical help at once")) << map.warnings[0] << ": an emergency stays one";
    EXPECT_NE(map.warnings[1].find(same->ask), std::string::npos) << map.warnings[1];

    const QTemporaryDir folder;
    const QString pdf = folder.filePath(QStringLiteral("stopped.pdf"));
    ASSERT_TRUE(writePdf(pdf.toStdString(), pagesOf(visit)).ok());
    EXPECT_TRUE(textOf(pdf).simplified().contains(QStringLiteral("Get medical help at once"))) << textOf(pdf).toStdString();

    visit.warnings[0].decided = Decision::InCare;
    map = mapOf(visit);
    EXPECT_EQ(map.warnings.size(), 1U) << "settled with the treating team";
}

TEST(VisitMapPages, WritesEachFormatAndRefusesOthers)
{
    const QTemporaryDir folder;
    const auto write = [&](const char *name) {
        return writePages(folder.filePath(QString::fromUtf8(name)).toStdString(), pagesOf(Visit{}));
    };
    const auto begin = [&](const char *name) {
        QFile file(folder.filePath(QString::fromUtf8(name)));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.read(200);
    };
    ASSERT_TRUE(write("a.pdf").ok());
    EXPECT_TRUE(begin("a.pdf").startsWith("%PDF"));
    ASSERT_TRUE(write("a.svg").ok());
    EXPECT_TRUE(begin("a.svg").contains("<svg"));
    ASSERT_TRUE(write("a.png").ok());
    EXPECT_EQ(QImage(folder.filePath(QStringLiteral("a.png"))).size(), QSize(1240, 1754)) << "A4 at 150 dpi";
    ASSERT_FALSE(write("a.txt").ok());
    EXPECT_EQ(write("a.txt").error().code, ErrorCode::BadArgument);
    ASSERT_FALSE(write("missing/a.pdf").ok());
    EXPECT_EQ(write("missing/a.pdf").error().code, ErrorCode::CannotWrite);
    EXPECT_TRUE(textOf(folder.filePath(QStringLiteral("a.pdf"))).contains(QStringLiteral("not a diagnosis")));
}

TEST(VisitMapPages, MarksEveryDrawnMuscleWholeOrPart)
{
    std::string missing;
    int marked = 0;
    for (const Structure &s : atlas().structures())
        if (s.kind == Kind::Muscle && isDrawn(s))
            for (const Side side : atlas().sides(s)) {
                if (!markPoint(atlas(), body(), {s.id, side}))
                    missing += " " + s.id.value;
                ++marked;
            }
    EXPECT_EQ(missing, "") << "muscles without a mark on either view";
    EXPECT_GT(marked, 150);
    const auto wholeAt = markPoint(atlas(), body(), {StructureId{"erector-spinae"}, Side::Right});
    ASSERT_TRUE(wholeAt);
    EXPECT_EQ(wholeAt->view, View::Back);
    EXPECT_GT(wholeAt->point.x, 0) << "the patient's right is at x > 0 in the back view";
}

TEST(VisitMapPages, AMirroredVisitGivesTheMirroredMarks)
{
    const Visit visit = longVisit();
    const VisitMap here = mapOf(visit);
    const VisitMap there = mapOf(mirrored(visit));
    ASSERT_EQ(here.marks.size(), there.marks.size());
    int drawn = 0;
    for (std::size_t i = 0; i < here.marks.size(); ++i) {
        ASSERT_EQ(here.marks[i].at.has_value(), there.marks[i].at.has_value());
        if (!here.marks[i].at)
            continue;
        ++drawn;
        EXPECT_EQ(here.marks[i].at->view, there.marks[i].at->view);
        EXPECT_EQ(here.marks[i].at->point.x, -there.marks[i].at->point.x);
        EXPECT_EQ(here.marks[i].at->point.y, there.marks[i].at->point.y);
    }
    EXPECT_GT(drawn, 30);
}

} // namespace raphe::test
