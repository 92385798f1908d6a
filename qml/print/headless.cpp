#include "print/headless.hpp"

#include <array>
#include <cstdio>
#include <optional>
#include <string>
#include <utility>

#include <QByteArray>

#include "print/print_file.hpp"

namespace printing {

namespace {

void tell(const units::Errors& errors, const words::Language& language) {
    for (const auto& error : errors)
        std::fprintf(stderr, "%s\n", units::print(error, language).c_str());
}

template <class Value, std::size_t count>
std::optional<Value> one_of(const std::array<std::pair<const char*, Value>, count>& words,
                            const QString& word) {
    for (const auto& [name, value] : words)
        if (word == QLatin1String(name)) return value;
    return std::nullopt;
}

}  // namespace

std::optional<Kind> kind_named(const QString& word) {
    return one_of(std::array{std::pair{"card", Kind::card}, std::pair{"report", Kind::report},
                             std::pair{"wiring", Kind::wiring}},
                  word);
}

std::optional<Paper> paper_named(const QString& word) {
    return one_of(std::array{std::pair{"a4", Paper::a4}, std::pair{"letter", Paper::letter}}, word);
}

int print_to_file(const Wishes& wishes) {
    const auto kind = kind_named(wishes.sheet);
    const auto paper = paper_named(wishes.paper);
    units::Errors errors;
    if (!kind)
        errors.push_back({.where = "--sheet",
                          .found = "there is no sheet " + wishes.sheet.toStdString(),
                          .remedy = "give card, report or wiring"});
    if (!paper)
        errors.push_back({.where = "--paper",
                          .found = "there is no paper " + wishes.paper.toStdString(),
                          .remedy = "give a4 or letter"});
    if (wishes.file.isEmpty() || wishes.pdf.isEmpty())
        errors.push_back({.where = "--print",
                          .found = "a scenario and the file to print to are wanted",
                          .remedy = "such as --print storm.toml card.pdf"});
    if (!errors.empty()) {
        tell(errors, wishes.language);
        return unusable;
    }
    const auto read = scenario::read_scenario_file(wishes.file.toStdString());
    if (!read) {
        tell(read.error(), wishes.language);
        return unusable;
    }
    const auto sheets = sheets_of(*read, *kind, *paper, QDate::currentDate(), wishes.language);
    if (!sheets) {
        tell(sheets.error(), wishes.language);
        return unusable;
    }
    const scenario::Saving saving =
        write_pdf(*sheets, QString::fromStdString(read->scenario.title), wishes.pdf);
    if (!saving.saved()) {
        tell({scenario::not_saved(wishes.pdf.toStdString(), saving)}, wishes.language);
        return unusable;
    }
    return printed;
}

void need_no_display() {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
}

}  // namespace printing
