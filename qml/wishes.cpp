#include "wishes.hpp"

#include <QCommandLineParser>
#include <QCoreApplication>
#include <QFileInfo>
#include <QRegularExpression>

#include "models/page_list.hpp"
#include "models/words/look.hpp"
#include "models/words/usual_words.hpp"
#include "units/quote.hpp"
#include "units/result.hpp"

namespace touch {

namespace {

const QStringList unit_systems{"metric", "us"};
const QStringList clocks{"24", "12"};
constexpr int least_side = 200;  // pixels; smaller than any screen that is touched
constexpr int most_side = 16384;

std::string shown(const QString& word) {
    return '"' + units::quote(word.toStdString(), 80) + '"';
}

std::string listed(const QStringList& words) {
    return words.mid(0, words.size() - 1).join(QStringLiteral(", ")).toStdString() + " or " +
           words.constLast().toStdString();
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

void check_word(const char* option, const QString& word, const QStringList& words,
                units::Errors& errors) {
    if (words.contains(word)) return;
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
    return usual_units() == QStringLiteral("us") ? QStringLiteral("letter") : QStringLiteral("a4");
}

QString code_of(const words::Language& language) {
    return QString::fromStdString(std::string(language.code()));
}

void check_language(const QString& word, units::Errors& errors) {
    if (!word.isEmpty() && words::language(word.toStdString())) return;
    std::string codes;
    for (const std::string_view code : words::language_codes())
        codes += (codes.empty() ? "" : ", ") + std::string(code);
    errors.push_back({.where = "--language",
                      .found = "found " + shown(word) + ", which no catalogue is of",
                      .remedy = "give one of " + codes});
}

// How whoever asked reads it: by the options, else as the system's own settings have it.
words::Language language_for_paper(const Wishes& wishes) {
    const QString code = wishes.language.isEmpty() ? usual_language() : wishes.language;
    words::Language language = words::language(code.toStdString()).value_or(words::english());
    const QString units = wishes.units.isEmpty() ? usual_units() : wishes.units;
    const QString clock = wishes.clock.isEmpty() ? usual_clock() : wishes.clock;
    language.us_units = units == QStringLiteral("us");
    language.twelve_hours = clock == QStringLiteral("12");
    return language;
}

struct Options {
    QCommandLineOption help, version, picture, size, theme, language, units, clock, text_size, page,
        to_paper, sheet, paper, weather_from;
};

Options options_of(QCommandLineParser& parser) {
    return {
        .help = parser.addHelpOption(),
        .version = parser.addVersionOption(),
        .picture = {QStringLiteral("picture"),
                    QCoreApplication::tr("Save a picture of the window and close."),
                    QStringLiteral("PNG")},
        .size = {QStringLiteral("size"), QCoreApplication::tr("Size of the window."),
                 QStringLiteral("WIDTHxHEIGHT"), QStringLiteral("1280x800")},
        .theme = {QStringLiteral("theme"), QCoreApplication::tr("dark, light, contrast or system."),
                  QStringLiteral("NAME")},
        .language = {QStringLiteral("language"),
                     QCoreApplication::tr("Language of the screen and of paper, such as de."),
                     QStringLiteral("CODE")},
        .units = {QStringLiteral("units"),
                  QCoreApplication::tr("metric, or us for degrees Fahrenheit, pounds and feet "
                                       "beside them."),
                  QStringLiteral("NAME")},
        .clock = {QStringLiteral("clock"), QCoreApplication::tr("24 or 12 hours."),
                  QStringLiteral("HOURS")},
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
}

// What the parser is to know, in the order of its help.
void describe(QCommandLineParser& parser, const Options& options) {
    parser.setApplicationDescription(
        QCoreApplication::tr("Shows how long a hand-built power unit lasts through an outage."));
    parser.addOptions({options.picture, options.size, options.theme, options.language,
                       options.units, options.clock, options.text_size, options.page,
                       options.to_paper, options.sheet, options.paper, options.weather_from});
    parser.addPositionalArgument(QStringLiteral("FILE"),
                                 QCoreApplication::tr("Scenario to open; an example without it."),
                                 QStringLiteral("[FILE]"));
    parser.addPositionalArgument(QStringLiteral("PDF"),
                                 QCoreApplication::tr("With --print, where to print to."),
                                 QStringLiteral("[PDF]"));
}

// How it is to be said.
void read_words(const QCommandLineParser& parser, const Options& options, Wishes& wishes,
                units::Errors& errors) {
    wishes.language = parser.value(options.language);
    wishes.units = parser.value(options.units);
    wishes.clock = parser.value(options.clock);
    if (parser.isSet(options.language)) check_language(wishes.language, errors);
    if (parser.isSet(options.units)) check_word("--units", wishes.units, unit_systems, errors);
    if (parser.isSet(options.clock)) check_word("--clock", wishes.clock, clocks, errors);
    if (const auto known = words::language(wishes.language.toStdString()); known)
        wishes.language = wishes.language.isEmpty() ? QString() : code_of(*known);
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
    describe(parser, options);
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
    if (parser.isSet(options.theme)) check_word("--theme", wishes.theme, Look::themes(), errors);
    read_words(parser, options, wishes, errors);
    wishes.page = parser.value(options.page);
    wishes.page_asked = parser.isSet(options.page);
    check_word("--page", wishes.page, page_keys(), errors);
    wishes.weather_from = parser.values(options.weather_from);
    check_folders(wishes.weather_from, errors);
    wishes.print = {.file = names.value(0),
                    .pdf = names.value(1),
                    .sheet = parser.value(options.sheet),
                    .paper = parser.value(options.paper),
                    .language = language_for_paper(wishes)};
    // A picture has nothing that was left to go by.
    if (!wishes.picture.isEmpty() && wishes.language.isEmpty()) wishes.language = usual_language();
    if (!errors.empty()) return in_words(errors);
    return wishes;
}

}  // namespace touch
