// What people write in the place of what a key takes: taken, or refused with what to write, and
// what is then written as told is taken.
#include <algorithm>
#include <gmock/gmock.h>

#include <gtest/gtest.h>

#include "scenario/read.hpp"
#include "scenario/set_aside.hpp"

namespace {

using testing::HasSubstr;

std::string with(const std::string& load, const std::string& pack = "",
                 const std::string& inverter = "") {
    return "format = 1\n[outage]\nstarts = 2026-01-14T18:00:00\nlasts = \"3 d\"\n[[pack]]\n"
           "name = \"main\"\nvoltage = \"12 V\"\ncapacity = \"100 Ah\"\n" +
           (pack.empty() ? "chemistry = \"agm\"\n" : pack) +
           "\n[inverter]\ncontinuous = \"2000 W\"\n" + inverter + "\n[[load]]\nname = \"a\"\n" +
           load;
}

units::Errors errors(const std::string& text) {
    const auto read = scenario::read_scenario(text, "plan.toml");
    return read ? units::Errors{} : read.error();
}

std::string hint(const std::string& text) {
    const units::Errors all = errors(text);
    return all.empty() ? "it was taken" : all.front().remedy;
}

TEST(everyday, what_belongs_together_is_written_as_the_table_it_is) {
    EXPECT_EQ(hint(with("metered = \"1.9 kWh / 31 h\"")),
              "write {energy = \"1.9 kWh\", over = \"31 h\"}");
    EXPECT_EQ(hint(with("metered = {energy = \"1.9 kWh\", over = \"31 h\"}")), "it was taken");
    EXPECT_EQ(hint(with("metered = \"1 kWh/d\"")), "write {energy = \"1 kWh\", over = \"1 d\"}");
    EXPECT_EQ(hint(with("metered = {energy = \"1 kWh\", over = \"1 d\"}")), "it was taken");
    EXPECT_EQ(hint(with("nameplate = \"120 V, 1.5 A\"")),
              "write {voltage = \"120 V\", current = \"1.5 A\"}");
    EXPECT_EQ(hint(with("nameplate = {voltage = \"120 V\", current = \"1.5 A\"}")), "it was taken");
    EXPECT_EQ(hint(with("power = \"60 W\"\nruns = \"15 min / 45 min\"")),
              "write {on = \"15 min\", every = \"45 min\"}");
    EXPECT_THAT(hint(with("power = \"60 W\"\nruns = \"often\"")), HasSubstr("such as {on"));
}

TEST(everyday, a_part_of_the_time_is_said_by_a_cycle) {
    for (const char* const duty : {"duty_cycle = \"30 %\"", "runs = {duty = \"30 %\"}"})
        EXPECT_THAT(hint(with(std::string("power = \"60 W\"\n") + duty)),
                    HasSubstr("runs = {on = \"15 min\", every = \"45 min\"}"))
            << duty;
    EXPECT_EQ(hint(with("power = \"60 W\"\nduty = \"30 %\"")), "it was taken");
    EXPECT_THAT(hint(with("power = \"60 W\"\nduty = \"30 %\"\nruns = {on = \"15 min\", "
                          "every = \"45 min\"}")),
                HasSubstr("keep runs"));
}

// 37 kWh a month is 12 x 37 = 444 kWh a year.
TEST(everyday, a_label_without_its_year_is_shown_with_it) {
    EXPECT_THAT(hint(with("label = \"450 kWh\"")), HasSubstr("write \"450 kWh/yr\""));
    for (const char* const label : {"37 kWh/month", "37 kWh a month", "444 kWh/yr"}) {
        const auto read =
            scenario::read_scenario(with("label = \"" + std::string(label) + "\""), "plan.toml");
        ASSERT_TRUE(read.has_value()) << label;
        const auto average = std::get<scenario::YearlyLabel>(*read->scenario.loads[0].draw).average;
        EXPECT_NEAR(average / units::watt, 444'000.0 / 8760.0, 0.04) << label;
    }
    EXPECT_EQ(hint(with("label = \"444 kWh/yr\"")), "it was taken");
    EXPECT_THAT(hint(with("label = \"60 V\"")), HasSubstr("give power"));
}

TEST(everyday, a_load_that_is_not_there) {
    auto read = scenario::read_scenario(
        with("power = \"60 W\"\ncount = 0\n[[load]]\nname = \"b\"\npower = \"5 W\"\nfrom = "
             "\"generator\"\n[[load]]\nname = \"c\"\npower = \"5 W\"\n"),
        "plan.toml");
    ASSERT_TRUE(read.has_value());
    auto& scenario = read->scenario;
    EXPECT_TRUE(scenario::has_set_aside(scenario));
    for (int time = 0; time < 2; ++time)
        scenario::set_aside(scenario);
    EXPECT_FALSE(scenario::has_set_aside(scenario));
    ASSERT_EQ(scenario.loads.size(), 1U);
    EXPECT_EQ(scenario.loads[0].name, "c");
    EXPECT_EQ(scenario::key_of(scenario.loads[0], 0), "load[2]");
    ASSERT_EQ(scenario.on_generator.size(), 1U);
    EXPECT_EQ(scenario.on_generator[0].name, "b");
}

TEST(everyday, rows_of_a_label_go_with_lead_alone) {
    const auto pack = [](const std::string& keys) { return hint(with("power = \"60 W\"", keys)); };
    const std::string rows = "rates = [{charge = \"77 Ah\", over = \"3 h\"}]\n";
    EXPECT_EQ(pack("chemistry = \"agm\"\n" + rows), "it was taken");
    EXPECT_EQ(pack("chemistry = \"flooded\"\nreserve = \"160 min\"\n"), "it was taken");
    EXPECT_THAT(pack("chemistry = \"lifepo4\"\n" + rows), HasSubstr("take them out"));
    EXPECT_THAT(pack("chemistry = \"agm\"\ntwo_well = {c = \"0.3\", k = \"0.6 1/h\", total = "
                     "\"120 Ah\"}\n" +
                     rows),
                HasSubstr("keep the rows"));
    EXPECT_THAT(pack("chemistry = \"lifepo4\"\nabsorption_per_kelvin = \"30 mV/K\"\n"),
                HasSubstr("lead-acid"));
}

TEST(everyday, words_for_chemistries_and_waveforms) {
    const auto pack = [](const char* word) {
        return hint(with("power = \"60 W\"", std::string("chemistry = \"") + word + "\"\n"));
    };
    EXPECT_THAT(pack("lithium"), HasSubstr("write lifepo4"));
    EXPECT_THAT(pack("LFP"), HasSubstr("write lifepo4"));
    EXPECT_THAT(pack("lead acid"), HasSubstr("flooded"));
    EXPECT_THAT(pack("lead-acid"), HasSubstr("agm"));
    EXPECT_THAT(pack("SLA"), HasSubstr("agm"));
    const auto wave = [](const char* word) {
        return hint(with("power = \"60 W\"", "", std::string("waveform = \"") + word + "\"\n"));
    };
    EXPECT_EQ(wave("modified sine"), "write quasi_square");
    EXPECT_EQ(wave("Pure Sine Wave"), "write sine");
    EXPECT_EQ(wave("quasi_square"), "it was taken");
}

// The hint, followed to the letter.
TEST(everyday, one_point_of_efficiency_or_pulse_needs_no_brackets) {
    const auto efficiency = [](const std::string& value) {
        return hint(with("power = \"60 W\"", "", "efficiency = " + value + "\n"));
    };
    EXPECT_THAT(efficiency("\"90 %\""), HasSubstr("{at = \"50 %\", is = \"0.90\"}"));
    EXPECT_EQ(efficiency("{at = \"50 %\", is = \"0.90\"}"), "it was taken");
    EXPECT_EQ(efficiency("[{at = \"50 %\", is = \"0.90\"}]"), "it was taken");
    const auto pulse = [](const std::string& value) {
        return hint(with("power = \"60 W\"", "chemistry = \"agm\"\npulse = " + value + "\n"));
    };
    EXPECT_THAT(pulse("\"200 A\""), HasSubstr("{current = \"200 A\", for = \"5 s\"}"));
    EXPECT_EQ(pulse("{current = \"200 A\", for = \"5 s\"}"), "it was taken");
}

TEST(everyday, a_generator_is_rated_in_volt_amperes_or_watts) {
    const auto rated = [](const char* rating) {
        const auto read = scenario::read_scenario(
            with("power = \"60 W\"\n[[charger]]\nname = \"g\"\nkind = \"generator\"\ncurrent = "
                 "\"20 A\"\ngenerator_rating = \"" +
                 std::string(rating) + "\"\n"),
            "plan.toml");
        return read && read->scenario.chargers[0].generator_rating
                   ? *read->scenario.chargers[0].generator_rating
                   : units::ApparentPower();
    };
    EXPECT_EQ(rated("2 kVA"), units::ApparentPower(2000.0 * units::watt));
    EXPECT_EQ(rated("2000 W"), units::ApparentPower(2000.0 * units::watt));
    EXPECT_EQ(rated("20 A"), units::ApparentPower());
}

TEST(everyday, misspelt_words_are_told_beside_other_errors) {
    const units::Errors all = errors(with("power = \"60\"\npriorty = 2"));
    ASSERT_EQ(all.size(), 2U);
    EXPECT_THAT(all[1].where, HasSubstr("priorty"));
    EXPECT_THAT(all[1].remedy, HasSubstr("did you mean priority?"));
}

TEST(everyday, the_first_priority_asks_whether_it_is_medical) {
    const auto warnings = [](const char* more) {
        return scenario::read_scenario(with(std::string("power = \"60 W\"\npriority = 1\n") + more),
                                       "plan.toml")
            .value()
            .warnings.size();
    };
    EXPECT_EQ(warnings(""), 1U);
    EXPECT_EQ(warnings("medical = true"), 0U);
    EXPECT_EQ(warnings("medical = false"), 0U);
}

}  // namespace
