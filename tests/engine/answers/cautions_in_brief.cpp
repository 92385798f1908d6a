#include "answers/cautions_in_brief.hpp"

#include "answers/cautions.hpp"
#include "support/known_in_german.hpp"
#include "support/made_plan.hpp"

namespace {

using namespace answers;

// With a pump, a generator, and packs of lead and of lithium: all hazards there are.
scenario::Scenario with_every_hazard() {
    auto scenario = made::scenario();
    scenario.loads.push_back({.name = "sump pump"});
    scenario.chargers.push_back({.kind = scenario::ChargerKind::generator});
    scenario.packs.push_back({.name = "old", .chemistry = scenario::Chemistry::flooded});
    return scenario;
}

TEST(cautions_in_brief, each_hazard_has_a_shorter_form_that_german_knows) {
    const auto cautions = cautions_for(with_every_hazard());
    EXPECT_EQ(cautions.size(), 7U);
    for (const auto& caution : cautions) {
        const auto brief = in_brief(caution);
        ASSERT_FALSE(brief.empty()) << caution.hazard;
        words::expect_known_in_german(brief);
        for (const auto& language : {words::english(), words::german()})
            EXPECT_LT(words::in(language, brief).size(), words::in(language, caution.text).size());
    }
}

TEST(cautions_in_brief, what_is_written_in_another_place_has_none) {
    EXPECT_TRUE(in_brief({.hazard = "a hazard of another place"}).empty());
}

}  // namespace
