#include "faces/spoken.hpp"

#include "faces/csv.hpp"
#include "faces/pictures/pictures.hpp"
#include "faces/sheet.hpp"
#include "faces/text.hpp"

namespace {

using answers::Answer;
using testing::HasSubstr;
using testing::Not;
using words::said;

words::Language german() {
    return *words::language("de");
}

Answer with_a_stop() {
    Answer answer{.question = "storage"};
    answer.sentences.push_back(said<"{n} answered">(3));
    answer.findings.push_back({.finding = {.severity = scenario::Severity::stop,
                                           .where = "main",
                                           .text = said<"no reading is given">()}});
    answer.cautions.push_back({.hazard = "Heat", .text = "Hot.", .source = "[NEC]"});
    return answer;
}

// The German is that of the catalogue, read by hand.
TEST(Spoken, TextIsInTheLanguageOfTheLook) {
    const auto text = faces::in_text(with_a_stop(), {.full = true, .language = german()});
    EXPECT_THAT(text, HasSubstr("3 beantwortet"));
    EXPECT_THAT(text, HasSubstr("STOPP"));
    EXPECT_THAT(text, HasSubstr("main: es ist keine Ablesung angegeben"));
    EXPECT_THAT(text, HasSubstr("Achtung"));
    EXPECT_THAT(text, Not(HasSubstr("Beware")));
}

TEST(Spoken, ThePageTellsItsLanguage) {
    const auto page = faces::in_html(with_a_stop(), german());
    EXPECT_THAT(page, HasSubstr("<html lang=\"de\">"));
    EXPECT_THAT(page, HasSubstr("<h2>Befunde</h2>"));
    EXPECT_THAT(faces::in_html(with_a_stop()), HasSubstr("<html lang=\"en\">"));
}

TEST(Spoken, CsvHasWordsInTheLanguageAndNumbersWithAPoint) {
    Answer answer{.question = "storage"};
    answer.series.push_back({.name = "loads",
                             .columns = {{.name = "speed",
                                          .heading = said<"speed">(),
                                          .unit = "V",
                                          .points = std::vector<double>{12.5}}}});
    EXPECT_EQ(faces::in_csv(answer, german()), "Drehzahl [V]\r\n12.5\r\n");
    EXPECT_EQ(faces::in_csv(answer), "speed [V]\r\n12.5\r\n");
}

TEST(Spoken, InEnglishNothingChanges) {
    const auto answer = with_a_stop();
    EXPECT_EQ(faces::in_text(faces::spoken(answer, words::english()), {.full = true}),
              faces::in_text(answer, {.full = true}));
}

}  // namespace
