#include "answers/outage/findings.hpp"

#include "support/made_plan.hpp"

namespace {

using namespace answers;
using outage::Event;
using outage::EventKind;
using scenario::Severity;
using testing::HasSubstr;
using units::hour;
using units::watt;

const PinnedFinding* about(const std::vector<PinnedFinding>& findings, std::string_view words) {
    for (const auto& pinned : findings) {
        if (in_english(pinned.finding.text).find(words) != std::string::npos) {
            return &pinned;
        }
    }
    return nullptr;
}

std::vector<PinnedFinding> with_event(Event event) {
    auto plan = made::lasting_plan();
    plan.likely.events = {event, event};
    return outage_findings(made::scenario(), plan);
}

// Every load of the scenario, each without supply from the plan's end on.
outage::Plan plan_where_all_go_without(const scenario::Scenario& scenario) {
    auto plan = made::plan();
    plan.loads.resize(scenario.loads.size(), plan.loads.front());
    for (std::size_t i = 0; i < plan.loads.size(); ++i) {
        plan.loads[i].name = scenario.loads[i].name;
        plan.loads[i].from = scenario.loads[i].from;
        plan.loads[i].goes_without = {{.from = plan.likely.lasts,
                                       .to = scenario.outage.lasts,
                                       .why = outage::LimitedBy::charge}};
    }
    return plan;
}

TEST(outage_findings, a_life_and_health_load_that_goes_without_is_a_stop_at_its_hour) {
    const auto plan = plan_where_all_go_without(made::scenario());
    const auto findings = outage_findings(made::scenario(), plan);
    const auto* found = about(findings, "breathing aid has no supply");
    ASSERT_NE(found, nullptr);
    EXPECT_EQ(found->finding.severity, Severity::stop);
    EXPECT_EQ(found->at, plan.likely.lasts);
}

TEST(outage_findings, other_loads_that_go_without_are_one_caution) {
    auto scenario = made::scenario();
    scenario.loads[1].priority = 3;
    scenario.loads[1].medical = false;
    const auto findings = outage_findings(scenario, plan_where_all_go_without(scenario));
    const auto* found = about(findings, "Without supply");
    ASSERT_NE(found, nullptr);
    EXPECT_EQ(found->finding.severity, Severity::caution);
    EXPECT_THAT(found->finding.text, HasSubstr("refrigerator, breathing aid, cabin lights"));
    EXPECT_EQ(about(findings, "Life and health"), nullptr);
}

TEST(outage_findings, only_loads_with_a_gap_are_told_as_without_supply) {
    auto plan = plan_where_all_go_without(made::scenario());
    plan.loads[2].goes_without.clear();
    const auto findings = outage_findings(made::scenario(), plan);
    ASSERT_NE(about(findings, "Without supply"), nullptr);
    EXPECT_EQ(in_english(about(findings, "Without supply")->finding.text).find("cabin lights"),
              std::string::npos);
}

TEST(outage_findings, a_rest_that_would_bring_a_load_back_is_a_note_with_its_time) {
    const auto scenario = made::scenario();
    auto plan = plan_where_all_go_without(scenario);
    plan.likely.after_rest = {
        {.part = 2, .out = 1.0 * hour, .from = 70.0 * units::minute, .lasts = 15.0 * units::minute},
        {.part = outage::the_inverter, .out = 2.0 * hour}};
    const auto findings = outage_findings(scenario, plan);
    const auto* found = about(findings, "from Wednesday 19:10, it would run for 15 min");
    ASSERT_NE(found, nullptr);
    EXPECT_EQ(found->finding.severity, Severity::note);
    EXPECT_NE(about(findings, "What the inverter feeds: out at Wednesday 20:00; no rest"), nullptr);
}

TEST(outage_findings, the_other_way_of_an_inverter_to_come_back_is_told_where_it_is_assumed) {
    auto scenario = made::scenario();
    auto plan = plan_where_all_go_without(scenario);
    plan.likely.without = 3.0 * hour;
    plan.without_otherwise = 9.0 * hour;
    EXPECT_NE(about(outage_findings(scenario, plan),
                    "goes without for 3 h in all. If it comes back by itself at its restart "
                    "voltage, for 9 h"),
              nullptr);
    scenario.inverter->restart = scenario::Restart::by_hand;
    EXPECT_EQ(about(outage_findings(scenario, plan), "If it comes back by itself"), nullptr);
}

TEST(outage_findings, a_unit_that_lasts_with_much_left_has_no_stop_and_no_caution) {
    for (const auto& pinned : outage_findings(made::scenario(), made::lasting_plan())) {
        EXPECT_EQ(pinned.finding.severity, Severity::note) << pinned.finding.text;
    }
}

TEST(outage_findings, an_overload_is_a_stop_with_both_powers) {
    const auto findings = with_event(
        {.at = 3.0 * hour, .kind = EventKind::inverter_overload, .power = 3100.0 * watt});
    const auto* found = about(findings, "The loads ask for 3.1 kW");
    ASSERT_NE(found, nullptr);
    EXPECT_EQ(found->finding.severity, Severity::stop);
    EXPECT_THAT(found->finding.text, HasSubstr("2.4 kW, 2 times in all"));
    EXPECT_EQ(found->when, "Wednesday 21:00");
}

TEST(outage_findings, what_cannot_be_delivered_tells_the_most_that_can) {
    const auto findings = with_event({.at = 3.0 * hour,
                                      .kind = EventKind::cannot_be_delivered,
                                      .power = 2700.0 * watt,
                                      .at_most = 1900.0 * watt});
    const auto* found = about(findings, "at most 1.9 kW");
    ASSERT_NE(found, nullptr);
    EXPECT_EQ(found->finding.severity, Severity::stop);
}

TEST(outage_findings, currents_beyond_pack_or_fuse_are_stops) {
    for (const auto kind : {EventKind::packs_over_current, EventKind::fuse_opens}) {
        const auto findings =
            with_event({.at = 1.0 * hour, .kind = kind, .current = 120.0 * units::ampere});
        const auto* found = about(findings, "120 A");
        ASSERT_NE(found, nullptr);
        EXPECT_EQ(found->finding.severity, Severity::stop);
    }
}

TEST(outage_findings, what_opens_after_a_time_says_after_which_above_what) {
    const auto findings = with_event({.at = 1.0 * hour,
                                      .kind = EventKind::packs_over_current,
                                      .current = 112.0 * units::ampere,
                                      .after = 30.0 * units::minute,
                                      .above = 100.0 * units::ampere});
    EXPECT_NE(about(findings, "112 A, more than its protection allows for longer than 30 min"),
              nullptr);
}

TEST(outage_findings, what_was_only_stood_for_a_time_is_a_caution) {
    auto plan = made::lasting_plan();
    EXPECT_EQ(about(outage_findings(made::scenario(), plan), "at a stretch"), nullptr);
    plan.likely.strain = {.longest = 12.0 * units::minute,
                          .above = 100.0 * units::ampere,
                          .most = 112.0 * units::ampere};
    auto findings = outage_findings(made::scenario(), plan);
    const auto* found =
        about(findings, "up to 112 A, for up to 12 min at a stretch above the 100 A");
    ASSERT_NE(found, nullptr);
    EXPECT_EQ(found->finding.severity, Severity::caution);
    plan.likely.events = {{.at = 5.0 * hour, .kind = EventKind::packs_over_current}};
    findings = outage_findings(made::scenario(), plan);
    EXPECT_EQ(about(findings, "at a stretch"), nullptr);  // told with what opened
}

TEST(outage_findings, charge_that_gasses_away_is_told) {
    auto plan = made::lasting_plan();
    EXPECT_EQ(about(outage_findings(made::scenario(), plan), "turns to gas"), nullptr);
    plan.likely.ledger.charging_loss = 0.2 * plan.likely.ledger.sun_offered;
    ASSERT_GT(plan.likely.ledger.charging_loss, 50.0 * units::watt_hour);
    const auto findings = outage_findings(made::scenario(), plan);
    const auto* found = about(findings, "turns to gas");
    ASSERT_NE(found, nullptr);
    EXPECT_EQ(found->finding.severity, Severity::note);
}

unit::Limits rated(unit::Limiter by, double amperes) {
    return {{.by = by, .most = {amperes * units::ampere, unit::Origin::key}}};
}

TEST(outage_findings, a_connector_below_the_current_it_carries_is_a_stop) {
    const auto scenario = made::scenario();
    auto plan = made::lasting_plan();
    plan.likely.pack_currents = {{.given = 130.0 * units::ampere}};
    EXPECT_EQ(about(outage_findings(scenario, plan), "connector"), nullptr);
    const auto plug = rated(unit::Limiter::connector, 120.0);
    plan.leads = {{.lead = {.name = "main", .gives = plug, .takes = plug}}};
    const auto findings = outage_findings(scenario, plan);
    const auto* found = about(findings, "A pack gives up to 130 A through a connector rated 120 A");
    ASSERT_NE(found, nullptr);
    EXPECT_EQ(found->finding.severity, Severity::stop);
    EXPECT_EQ(found->finding.where, "pack main");
    // of packs that differ each is held against its own plug
    plan.leads.push_back({.lead = {.name = "other",
                                   .gives = rated(unit::Limiter::connector, 50.0),
                                   .takes = rated(unit::Limiter::connector, 50.0)},
                          .bank = 1});
    plan.likely.pack_currents = {{.given = 110.0 * units::ampere},
                                 {.given = 45.0 * units::ampere, .taken = 60.0 * units::ampere}};
    const auto of_other = outage_findings(scenario, plan);
    found = about(of_other, "A pack is charged with up to 60 A through a connector rated 50 A");
    ASSERT_NE(found, nullptr);
    EXPECT_EQ(found->finding.severity, Severity::stop);
    EXPECT_EQ(found->finding.where, "pack other");
    EXPECT_EQ(about(of_other, "A pack gives"), nullptr);
}

TEST(outage_findings, a_switch_heats_as_a_plug_does) {
    auto plan = made::lasting_plan();
    plan.leads = {{.lead = {.name = "main", .gives = rated(unit::Limiter::contact, 100.0)}}};
    plan.likely.pack_currents = {{.given = 130.0 * units::ampere}};
    const auto findings = outage_findings(made::scenario(), plan);
    EXPECT_NE(about(findings, "up to 130 A through a switch rated 100 A"), nullptr);
    plan.likely.pack_currents = {{.given = 90.0 * units::ampere}};
    EXPECT_EQ(about(outage_findings(made::scenario(), plan), "through a"), nullptr);
}

TEST(outage_findings, lithium_at_or_below_freezing_takes_no_sun) {
    auto scenario = made::scenario();
    scenario.outage.battery_temperature = units::celsius(0.0);
    EXPECT_NE(about(outage_findings(scenario, made::plan()), "takes no charge"), nullptr);
    scenario.outage.battery_temperature = units::celsius(0.5);
    EXPECT_EQ(about(outage_findings(scenario, made::plan()), "takes no charge"), nullptr);
    scenario.outage.battery_temperature = units::celsius(-5.0);
    scenario.packs.front().chemistry = scenario::Chemistry::agm;
    EXPECT_EQ(about(outage_findings(scenario, made::plan()), "takes no charge"), nullptr);
}

TEST(outage_findings, less_than_a_tenth_left_at_the_end_is_a_caution) {
    auto plan = made::lasting_plan();
    plan.likely.trace.back().charge = units::StateOfCharge(0.09);
    EXPECT_NE(about(outage_findings(made::scenario(), plan), "is left at the end"), nullptr);
    plan.likely.trace.back().charge = units::StateOfCharge(0.11);
    EXPECT_EQ(about(outage_findings(made::scenario(), plan), "is left at the end"), nullptr);
}

TEST(outage_findings, sun_that_finds_the_packs_full_is_told) {
    auto plan = made::lasting_plan();
    plan.likely.ledger.sun_unused = 0.5 * plan.likely.ledger.sun_offered;
    EXPECT_NE(about(outage_findings(made::scenario(), plan), "finds the packs full"), nullptr);
}

TEST(outage_findings, an_idle_draw_that_is_a_large_share_is_told_with_its_share) {
    auto plan = made::lasting_plan();
    plan.likely.ledger.idle = 0.5 * plan.likely.ledger.loads;
    plan.likely.ledger.inverter_loss = plan.likely.ledger.idle;
    const auto findings = outage_findings(made::scenario(), plan);
    const auto* found = about(findings, "With nothing plugged in");
    ASSERT_NE(found, nullptr);
    EXPECT_THAT(found->finding.text, HasSubstr("33 %"));
}

TEST(outage_findings, findings_of_the_plan_are_kept) {
    auto plan = made::lasting_plan();
    plan.findings = {{.severity = Severity::stop,
                      .where = "pack main",
                      .text = "from the plan",
                      .mend = "",
                      .source = "test"}};
    EXPECT_EQ(outage_findings(made::scenario(), plan).front().finding.text, "From the plan.");
}

// 1,930 W at a power factor of 0.8 are 2,413 VA: the watts fit into 2,400 W, the volt-amperes do
// not.
TEST(outage_findings, an_overload_of_volt_amperes_alone_does_not_set_watts_against_watts) {
    auto scenario = made::scenario();
    scenario.inverter->continuous = 2400.0 * watt;
    auto plan = made::lasting_plan();
    plan.likely.events = {
        {.at = 3.0 * hour, .kind = EventKind::inverter_overload, .power = 1930.0 * watt}};
    const auto findings = outage_findings(scenario, plan);
    EXPECT_NE(about(findings,
                    "The loads ask for 1.93 kW at so low a power factor that the 2.4 kVA of "
                    "the inverter do not carry them."),
              nullptr);
}

}  // namespace
