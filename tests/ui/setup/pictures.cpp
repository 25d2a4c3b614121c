// Draws set-up and record, each panel, language and scheme, for a person to look at.
// Usage: page_pictures FOLDER

#include <QApplication>
#include <QDir>

#include <gtest/gtest.h>

#include "tests/ui/setup/page_stand.h"
#include "ui/theme/theme.h"

using namespace bathside;

namespace {

struct Look {
    test::Panel panel;
    const char* language;
    ui::Scheme scheme;
};

struct Picture {
    const char* name;
    const char* page;
    std::vector<const char*> taps;
};

void setUp(test::PageStand& pages)
{
    pages.stand().say(OpenShift{"Europe/Madrid", {"MK"}});
    pages.stand().say(RecordCheck{{"work-area"}, true, {}});
    pages.stand().say(RecordCheck{{"bath-ready"}, false, {}});
    pages.stand().say(OverrideCheck{{"thermometer"}, "checked in another way"});
}

ui::CopyNews lateCopies(const Stamp& now)
{
    ui::CopyNews news;
    news.wrong = ui::CopyNews::Wrong::NotWritten;
    news.last.trouble = StoreTrouble{StoreFault::NoSpace, 28};
    news.madeAt = shifted(now, -std::chrono::hours(73));
    news.isLate = true;
    return news;
}

/// A note last, and a shift lead who may comment it.
void takeNote(test::PageStand& pages)
{
    pages.stand().say(ListPerson{
        {.person = {"LS"}, .name = "Lena Sanz", .role = Role::ShiftLead, .departed = false}, {}});
    EXPECT_TRUE(pages.pins().keep({"LS"}, "4071"));
    pages.stand().say(SetPin{{"LS"}});
    pages.stand().say(MakeNote{"two canes were swapped, found before the pull"});
}

/// What is answered in some of the pictures.
void answer(test::PageStand& pages, const std::string& name)
{
    if (name == "seal")
        emit pages.trail().verified({{.count = 214,
                                      .first = 1,
                                      .head = {214, {0xab, 0x12}},
                                      .flaw = {},
                                      .seals = 3,
                                      .badSeal = BadSeal{190, SealFlaw::OtherKey}},
                                     true,
                                     {}});
    Manifest manifest;
    manifest.count = 214;
    manifest.last = {214, {0xab, 0x12}};
    manifest.key = std::string(64, '4');
    for (const char* file : {"events.jsonl", "events.csv", "events-sheet.csv", "record.xlsx"})
        manifest.files.push_back({file, 1, {}});
    if (name == "exported")
        emit pages.trail().exported({{pages.trail().today, pages.trail().today},
                                     QStringLiteral("/media/stick/bathside/2026-03-05"),
                                     manifest,
                                     {}});
}

void draw(const QDir& folder, const Picture& picture, const Look& look)
{
    ui::theme().setScheme(look.scheme);
    test::PageStand pages(look.panel, QString::fromLatin1(look.language));
    const bool isRecord = std::string(picture.page) == ui::Frame::kRecord;
    if (isRecord)
        test::liveThroughAMorning(pages.stand());
    if (std::string(picture.name) == "note" || std::string(picture.name) == "comment")
        takeNote(pages);
    if (!isRecord)
        setUp(pages);
    pages.stand().papers().installed = {QStringLiteral("bench_label_printer"),
                                        QStringLiteral("office"),
                                        QStringLiteral("Corridor, first floor (colour)"),
                                        QStringLiteral("lab-2"),
                                        QStringLiteral("lab-3"),
                                        QStringLiteral("lab-4")};
    if (std::string(picture.name).starts_with("copies"))
        pages.copies().tell(lateCopies(pages.stand().model().now()));
    pages.show(picture.page);
    pages.stand().taps(picture.taps);
    answer(pages, picture.name);
    if (std::string(picture.name) == "verified")
        emit pages.trail().verified(
            {{.count = 214, .first = 1, .head = {214, {0xab, 0x12}}, .flaw = {}}, true, {}});
    if (std::string(picture.name) == "flaw")
        emit pages.trail().verified({{.count = 214,
                                      .first = 1,
                                      .head = {57, {0xab, 0x12}},
                                      .flaw = Flaw{58, FlawKind::BadHash, 58, {}}},
                                     true,
                                     {}});
    QString name =
        QStringLiteral("%1-%2_%3_%4_%5.png")
            .arg(
                QString::fromLatin1(picture.page), QString::fromLatin1(picture.name),
                QString::fromLatin1(look.panel.name), QString::fromLatin1(look.language),
                look.scheme == ui::Scheme::Dark ? QStringLiteral("dark") : QStringLiteral("light"));
    QApplication::processEvents();
    EXPECT_TRUE(pages.stand().frame().grab().save(folder.filePath(name.replace(u' ', u'-'))));
}

}  // namespace

int main(int argc, char** argv)
{
    testing::InitGoogleTest(&argc, argv);
    const QApplication app(argc, argv);
    const QDir folder(QCoreApplication::arguments().value(1));
    folder.mkpath(QStringLiteral("."));
    const Look looks[] = {{test::kTenInch, "en", ui::Scheme::Light},
                          {test::kTenInch, "es", ui::Scheme::Dark},
                          {test::kFifteenInch, "en", ui::Scheme::Dark}};
    const Picture pictures[] = {
        {"checks", ui::Frame::kSetUp, {}},
        {"sound", ui::Frame::kSetUp, {"setup.sound"}},
        {"outcome", ui::Frame::kSetUp, {"setup.other", "setup.check.disinfected"}},
        {"screen", ui::Frame::kSetUp, {"setup.screen"}},
        {"size", ui::Frame::kSetUp, {"setup.screen", "ask.size"}},
        {"labels", ui::Frame::kSetUp, {"setup.screen", "ask.labels"}},
        {"label-printer", ui::Frame::kSetUp, {"setup.screen", "ask.labels", "ask.label-printer"}},
        {"label-paper", ui::Frame::kSetUp, {"setup.screen", "ask.labels", "ask.label-paper"}},
        {"test-label", ui::Frame::kSetUp, {"setup.screen", "ask.labels", "ask.test-label"}},
        {"copies", ui::Frame::kSetUp, {"setup.screen", "ask.copies"}},
        {"copies-where", ui::Frame::kSetUp, {"setup.screen", "ask.copies", "ask.copy-place"}},
        {"copies-when", ui::Frame::kSetUp, {"setup.screen", "ask.copies", "ask.copy-time"}},
        {"copies-late", ui::Frame::kSetUp, {}},
        {"day", ui::Frame::kRecord, {}},
        {"filter", ui::Frame::kRecord, {"record.filter"}},
        {"mended", ui::Frame::kRecord, {"record.filter", "record.ask.group:7"}},
        {"exact", ui::Frame::kRecord, {"record.up", "record.exact"}},
        {"places", ui::Frame::kRecord, {"record.export"}},
        {"days", ui::Frame::kRecord, {"record.filter", "record.ask.day"}},
        {"week", ui::Frame::kRecord, {"record.filter", "record.ask.day", "record.ask.last:7"}},
        {"date", ui::Frame::kRecord, {"record.filter", "record.ask.day", "record.ask.dates"}},
        {"combined",
         ui::Frame::kRecord,
         {"record.filter", "record.ask.group:1", "record.filter", "record.ask.bag",
          "record.ask.id:B1", "record.filter", "record.ask.person", "record.ask.id:MK"}},
        {"note", ui::Frame::kRecord, {"record.exact"}},
        {"comment", ui::Frame::kRecord, {"record.exact", "record.comment"}},
        {"seal", ui::Frame::kRecord, {}},
        {"exported", ui::Frame::kRecord, {}},
        {"verified", ui::Frame::kRecord, {}},
        {"flaw", ui::Frame::kRecord, {}},
    };
    for (const Picture& picture : pictures) {
        for (const Look& look : looks)
            draw(folder, picture, look);
    }
    return testing::Test::HasFailure() ? 1 : 0;
}
