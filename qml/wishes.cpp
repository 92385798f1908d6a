#include "wishes.hpp"

#include <algorithm>
#include <array>

#include <QCommandLineParser>
#include <QCoreApplication>
#include <QFileInfo>
#include <QLocale>
#include <QRegularExpression>

#include "units/quote.hpp"
#include "units/result.hpp"

namespace touch {

namespace {

// Those of Main.qml; a test compares them.
constexpr std::array pages{"days",   "loads",   "packs", "sun", "start",
                           "wiring", "storage", "print", "file"};
constexpr std::array themes{"dark", "light", "system"};
constexpr int least_side = 200;  // pixels; smaller than any screen that is touched
constexpr int most_side = 16384;

std::string shown(const QString& word) {
    return '"' + units::quote(word.toStdString(), 80) + '"';
}

template <std::size_t count>
bool is_one_of(const QString& word, const std::array<const char*, count>& words) {
    return std::ranges::any_of(words, [&](const char* one) { return word == QLatin1String(one); });
}

template <std::size_t count>
std::string listed(const std::array<const char*, count>& words) {
    std::string list;
    for (std::size_t at = 0; at < count; ++at)
        list += (at == 0 ? "" : at + 1 == count ? " or " : ", ") + std::string(words[at]);
    return list;
}

// A whole number within limits; -1 for anything else.
int number_in(const QString& word, int least, int most) {
    bool is_number = false;
    const int number = word.toInt(&is_number);
    return is_number && number >= least && number <= most ? number : -1;
}

QSize size_in(const QString& word, units::Errors& errors) {
    static const QRegularExpression form(QStringLiteral("^(\\d{1,5})x(\\d{1,5})$"));
    const auto sides = form.match(word);
    const int width = number_in(sides.captured(1), least_side, most_side);
    const int height = number_in(sides.captured(2), least_side, most_side);
    if (sides.hasMatch() && width > 0 && height > 0) return {width, height};
    errors.push_back({.where = "--size",
                      .found = "found " + shown(word),
                      .remedy = "give WIDTHxHEIGHT in pixels, such as 1280x800, each from " +
                                std::to_string(least_side) + " to " + std::to_string(most_side)});
    return {};
}

double text_scale_in(const QString& word, units::Errors& errors) {
    const int percent = number_in(word.endsWith(u'%') ? word.chopped(1) : word, 100, 200);
    if (percent > 0) return percent / 100.0;
    errors.push_back({.where = "--text-size",
                      .found = "found " + shown(word),
                      .remedy = "give a whole number of percent from 100 to 200, such as 150"});
    return 1.0;
}

template <std::size_t count>
void check_word(const char* option, const QString& word,
                const std::array<const char*, count>& words, units::Errors& errors) {
    if (is_one_of(word, words)) return;
    errors.push_back(
        {.where = option, .found = "found " + shown(word), .remedy = "give " + listed(words)});
}

void check_folders(const QStringList& folders, units::Errors& errors) {
    for (const QString& folder : folders)
        if (!QFileInfo(folder).isDir())
            errors.push_back({.where = "--weather-from",
                              .found = "there is no folder " + shown(folder),
                              .remedy = "give the folder in which the weather file lies"});
}

QString usual_paper() {
    return QLocale::system().measurementSystem() == QLocale::ImperialUSSystem
               ? QStringLiteral("letter")
               : QStringLiteral("a4");
}

struct Options {
    QCommandLineOption help, version, picture, size, theme, text_size, page, to_paper, sheet, paper,
        weather_from;
};

Options options_of(QCommandLineParser& parser) {
    parser.setApplicationDescription(
        QCoreApplication::tr("Shows how long a hand-built power unit lasts through an outage."));
    Options options{
        .help = parser.addHelpOption(),
        .version = parser.addVersionOption(),
        .picture = {QStringLiteral("picture"),
                    QCoreApplication::tr("Save a picture of the window and close."),
                    QStringLiteral("PNG")},
        .size = {QStringLiteral("size"), QCoreApplication::tr("Size of the window."),
                 QStringLiteral("WIDTHxHEIGHT"), QStringLiteral("1280x800")},
        .theme = {QStringLiteral("theme"), QCoreApplication::tr("dark, light or system."),
                  QStringLiteral("NAME")},
        .text_size = {QStringLiteral("text-size"),
                      QCoreApplication::tr("Size of the text, 100 to 200 percent."),
                      QStringLiteral("PERCENT"), QStringLiteral("100")},
        .page = {QStringLiteral("page"),
                 QCoreApplication::tr("Page to begin with, such as days or loads."),
                 QStringLiteral("NAME"), QStringLiteral("days")},
        .to_paper = {QStringLiteral("print"),
                     QCoreApplication::tr(
                         "Print FILE to PDF without a window: --print FILE card.pdf.")},
        .sheet = {QStringLiteral("sheet"),
                  QCoreApplication::tr("What to print: card (for the lid), report or wiring."),
                  QStringLiteral("NAME"), QStringLiteral("card")},
        .paper = {QStringLiteral("paper"), QCoreApplication::tr("a4 or letter."),
                  QStringLiteral("NAME"), usual_paper()},
        .weather_from = {QStringLiteral("weather-from"),
                         QCoreApplication::tr("Folder in which the weather file of a scenario may "
                                              "lie, besides the scenario's own."),
                         QStringLiteral("FOLDER")}};
    parser.addOptions({options.picture, options.size, options.theme, options.text_size,
                       options.page, options.to_paper, options.sheet, options.paper,
                       options.weather_from});
    parser.addPositionalArgument(QStringLiteral("FILE"),
                                 QCoreApplication::tr("Scenario to open; an example without it."),
                                 QStringLiteral("[FILE]"));
    parser.addPositionalArgument(QStringLiteral("PDF"),
                                 QCoreApplication::tr("With --print, where to print to."),
                                 QStringLiteral("[PDF]"));
    return options;
}

Notice in_words(const units::Errors& errors) {
    QString text;
    for (const auto& error : errors)
        text += QStringLiteral("candlemark-touch: %1\n")
                    .arg(QString::fromStdString(units::print(error)));
    return {.text = text + QStringLiteral("Ask candlemark-touch --help for what can be given.\n"),
            .is_error = true};
}

}  // namespace

std::variant<Wishes, Notice> read_wishes(const QStringList& arguments) {
    QCommandLineParser parser;
    const Options options = options_of(parser);
    units::Errors errors;
    if (!parser.parse(arguments))
        errors.push_back({.where = "",
                          .found = units::quote(parser.errorText().toStdString(), 200),
                          .remedy = ""});
    if (errors.empty() && parser.isSet(options.help)) return Notice{.text = parser.helpText()};
    if (errors.empty() && parser.isSet(options.version))
        return Notice{.text = QStringLiteral("candlemark-touch %1\n")
                                  .arg(QCoreApplication::applicationVersion())};

    const QStringList names = parser.positionalArguments();
    Wishes wishes;
    if (!names.isEmpty())
        wishes.file = QUrl::fromLocalFile(QFileInfo(names.constFirst()).absoluteFilePath());
    wishes.prints = parser.isSet(options.to_paper);
    if (names.size() > (wishes.prints ? 2 : 1))
        errors.push_back({.where = "",
                          .found = "one scenario can be opened, and more names are given",
                          .remedy = wishes.prints ? "give FILE and PDF" : "give one FILE"});
    wishes.picture = parser.value(options.picture);
    wishes.size = size_in(parser.value(options.size), errors);
    wishes.text_scale = text_scale_in(parser.value(options.text_size), errors);
    wishes.text_scale_asked = parser.isSet(options.text_size);
    wishes.theme = parser.value(options.theme);
    if (parser.isSet(options.theme)) check_word("--theme", wishes.theme, themes, errors);
    wishes.page = parser.value(options.page);
    check_word("--page", wishes.page, pages, errors);
    wishes.weather_from = parser.values(options.weather_from);
    check_folders(wishes.weather_from, errors);
    wishes.print = {.file = names.value(0),
                    .pdf = names.value(1),
                    .sheet = parser.value(options.sheet),
                    .paper = parser.value(options.paper)};
    if (!errors.empty()) return in_words(errors);
    return wishes;
}

}  // namespace touch
