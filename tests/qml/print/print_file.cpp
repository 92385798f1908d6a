#include "print/print_file.hpp"
#include "print/printer.hpp"

#include <QFile>
#include <QPrinter>
#include <QProcess>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QTemporaryDir>
#include <gtest/gtest.h>

namespace {

using namespace printing;

scenario::ReadScenario ice_storm() {
    auto read = scenario::read_scenario_file(std::string(CANDLEMARK_SOURCE_DIR) +
                                             "/scenarios/ice_storm.toml");
    EXPECT_TRUE(read);
    return std::move(*read);
}

QByteArray printed(Kind kind, Paper paper, const QString& path) {
    const auto sheets = sheets_of(ice_storm(), kind, paper, QDate(2026, 11, 25));
    EXPECT_TRUE(sheets) << (sheets ? "" : units::print(sheets.error().front()));
    EXPECT_TRUE(write_pdf(*sheets, QStringLiteral("Ice storm"), path).saved());
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return file.readAll();
}

// What a person finds who searches the paper's file.
QString text_in(const QString& path, const QString& extractor) {
    QProcess process;
    process.start(extractor, {QStringLiteral("-layout"), path, QStringLiteral("-")});
    EXPECT_TRUE(process.waitForFinished());
    return QString::fromUtf8(process.readAllStandardOutput());
}

TEST(print_file, the_card_is_one_page_of_lines_and_letters_without_a_picture) {
    const QTemporaryDir folder;
    const QByteArray bytes =
        printed(Kind::card, Paper::a4, folder.filePath(QStringLiteral("card.pdf")));
    EXPECT_TRUE(bytes.startsWith("%PDF-"));
    EXPECT_EQ(bytes.count("/Type /Page\n"), 1);
    EXPECT_FALSE(bytes.contains("/Subtype /Image"));
    EXPECT_TRUE(bytes.contains("/FontFile2"));
}

TEST(print_file, the_words_of_the_card_can_be_searched) {
    const QString extractor = QStandardPaths::findExecutable(QStringLiteral("pdftotext"));
    if (extractor.isEmpty()) GTEST_SKIP() << "pdftotext of poppler-utils is not installed";
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("card.pdf"));
    printed(Kind::card, Paper::letter, path);
    const QString text = text_in(path, extractor);
    for (const char* words :
         {"Everything on: 33 h", "To make it last, switch off", "modem and router", "Fuses",
          "350 A", "What the voltmeter means", "13.3 V", "Plugging in a pack", "0.5 V",
          "In the cold", "0 °C", "In storage", "2026-04-01", "Beware", "Electric shock",
          "Candlemark 0.1.0, 2026-11-25", "Arithmetic, not approval."})
        EXPECT_TRUE(text.contains(QString::fromUtf8(words))) << words << "\n" << text.toStdString();
}

// A printer that writes a file, for want of one that takes paper.
TEST(print_file, a_printer_gets_each_page_as_it_lies) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("printed.pdf"));
    const QList<Sheet> sheets{{.size = size_of(Paper::a4)},
                              {.size = size_of(Paper::a4).transposed()},
                              {.size = size_of(Paper::letter)}};
    {
        QPrinter printer(QPrinter::HighResolution);
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(path);
        EXPECT_TRUE(print_on(printer, sheets, QStringLiteral("Ice storm")));
    }
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QString text = QString::fromLatin1(file.readAll());
    static const QRegularExpression media(QStringLiteral("/MediaBox \\[0 0 (\\d+)[.\\d]* (\\d+)"));
    QStringList pages;
    for (auto found = media.globalMatch(text); found.hasNext();) {
        const auto page = found.next();
        pages << page.captured(1) + QLatin1Char('x') + page.captured(2);
    }
    EXPECT_EQ(pages.size(), 3);
    EXPECT_EQ(pages.value(1).split(u'x').value(0), pages.value(0).split(u'x').value(1));
    EXPECT_EQ(pages.value(2), "612x792");
}

TEST(print_file, a_printer_that_nobody_knows_prints_nothing) {
    EXPECT_FALSE(print_on(QStringLiteral("no such printer"), {{.size = size_of(Paper::a4)}}, {}));
}

TEST(print_file, a_place_that_cannot_be_written_is_told_in_words) {
    const auto sheets = sheets_of(ice_storm(), Kind::card, Paper::a4, QDate(2026, 11, 25));
    ASSERT_TRUE(sheets);
    EXPECT_EQ(write_pdf(*sheets, {}, QStringLiteral("/no/such/folder/card.pdf")).end,
              scenario::SaveEnd::no_folder);
}

}  // namespace
