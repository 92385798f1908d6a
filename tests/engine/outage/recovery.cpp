// What goes on when something cannot be met. The figures are worked by hand from the two wells in
// closed form, outage/method.md (15) to (20); none of them is the clock's own.
#include <array>

#include "battery/advance.hpp"
#include "battery/cell/chemistry.hpp"
#include "battery/cell/percent.hpp"
#include "battery/pack_model.hpp"
#include "outage/clock/clock.hpp"

namespace {

using namespace units;
using outage::EventKind;
using outage::LimitedBy;

// C 100 Ah, c 0.35, k 1 an hour, without resistance; its curve does not matter at a current.
battery::Prepared two_wells() {
    return battery::prepare(
        {.kinetics = {.total = 100.0 * ampere_hour, .available = Share(0.35), .rate = 1.0 / hour},
         .open_circuit = &battery::open_circuit_of(scenario::Chemistry::agm)});
}
battery::Wells emptied_at_60() {
    return battery::advance(two_wells(), {}, 60.0 * ampere, 2.0 * hour).wells;
}
double fill_after(Duration rest, Current meanwhile = {}) {
    const auto pack = two_wells();
    const auto rested = battery::advance(pack, emptied_at_60(), meanwhile, rest);
    EXPECT_EQ(rested.ending, battery::Ending::completed);
    return battery::available_fill({.total = 100.0 * ampere_hour, .available = Share(0.35)},
                                   rested.wells)
        .value();
}

TEST(recovery, a_fast_draw_empties_one_well_only) {
    const auto fast = battery::advance(two_wells(), {}, 60.0 * ampere, 2.0 * hour);
    EXPECT_EQ(fast.ending, battery::Ending::available_well_empty);
    EXPECT_NEAR(fast.time / hour, 0.716585, 1e-6);
    EXPECT_NEAR(fast.wells.removed / ampere_hour, 42.99509, 1e-4);
    EXPECT_NEAR(fast.wells.head_difference / ampere_hour, 87.69986, 1e-4);
}

// Below k c (1 - c) d = 19.9517 A the well rises again, above it there is nothing.
TEST(recovery, an_empty_well_gives_what_the_other_refills) {
    const auto pack = two_wells();
    const auto wells = emptied_at_60();
    for (const auto& [amperes, hours] :
         std::array{std::pair{5.0, 9.543155}, std::pair{10.0, 3.753255}}) {
        const auto on = battery::advance(pack, wells, amperes * ampere, 20.0 * hour);
        EXPECT_EQ(on.ending, battery::Ending::available_well_empty);
        EXPECT_NEAR(on.time / hour, hours, 1e-4 * hours);
    }
    EXPECT_NEAR(
        battery::advance(pack, wells, 5.0 * ampere, 20.0 * hour).wells.removed / ampere_hour,
        90.7109, 1e-3);
    EXPECT_EQ(battery::advance(pack, wells, 20.0 * ampere, 1.0 * hour).time, Duration{});
    EXPECT_GT(battery::advance(pack, wells, 19.5 * ampere, 1.0 * hour).time, 1.0 * minute);
}

TEST(recovery, a_rest_levels_the_wells) {
    for (const auto& [hours, fill] :
         std::array{std::pair{0.192885, 0.10}, std::pair{0.577248, 0.25}, std::pair{1.209635, 0.40},
                    std::pair{3.347537, 0.55}})
        EXPECT_NEAR(fill_after(hours * hour), fill, 1e-5);
    EXPECT_NEAR(fill_after(48.0 * hour), 0.570049, 1e-6);
    const auto pack = two_wells();
    for (const auto& [hours, minutes] :
         std::array{std::pair{0.25, 6.1146}, std::pair{0.5, 10.3033}, std::pair{1.0, 15.4724},
                    std::pair{2.0, 19.9511}, std::pair{4.0, 22.0340}, std::pair{8.0, 22.3450}}) {
        const auto rested = battery::advance(pack, emptied_at_60(), Current{}, hours * hour);
        const auto again = battery::advance(pack, rested.wells, 60.0 * ampere, 1.0 * hour);
        EXPECT_NEAR(again.time / minute, minutes, 1e-3);
    }
}

TEST(recovery, what_flows_meanwhile_lets_the_well_rise_and_then_fall) {
    EXPECT_NEAR(fill_after(0.217944 * hour, 2.0 * ampere), 0.10, 1e-5);
    EXPECT_NEAR(fill_after(21.64531 * hour, 2.0 * ampere), 0.10, 1e-5);
    EXPECT_NEAR(fill_after(0.682697 * hour, 2.0 * ampere), 0.25, 1e-5);
    EXPECT_NEAR(fill_after(14.14529 * hour, 2.0 * ampere), 0.25, 1e-5);
    EXPECT_NEAR(fill_after(1.680171 * hour, 2.0 * ampere), 0.40, 1e-5);
    EXPECT_NEAR(fill_after(6.609405 * hour, 2.0 * ampere), 0.40, 1e-5);
    EXPECT_NEAR(fill_after(3.282613 * hour, 2.0 * ampere), 0.447254, 1e-5);
    EXPECT_NEAR(fill_after(0.850776 * hour, 4.0 * ampere), 0.25, 1e-5);
    EXPECT_NEAR(fill_after(6.116749 * hour, 4.0 * ampere), 0.25, 1e-5);
    EXPECT_NEAR(fill_after(2.517219 * hour, 4.0 * ampere), 0.355075, 1e-5);
    EXPECT_NEAR(fill_after(0.490878 * hour, 10.0 * ampere), 0.10, 1e-5);
    EXPECT_NEAR(fill_after(2.540340 * hour, 10.0 * ampere), 0.10, 1e-5);
}

// ---- In the clock: AGM of 100 Ah, c 0.465, k 0.87 an hour, both wells 106.6123 Ah, 10 mohm with
// its leads. The table is of the rated charge; beneath it its last two rows go on.

const battery::OpenCircuit& agm_of_rated_charge() {
    static const auto made = [] {
        constexpr double wells = 1.066123;
        constexpr std::array rested{11.70, 11.85, 11.96, 12.11, 12.26, 12.37,
                                    12.48, 12.59, 12.67, 12.78, 12.89};
        std::vector<battery::Knot> knots{
            {StateOfCharge(0.0), (rested[0] - (wells - 1.0) * 1.5) * volt}};
        for (std::size_t row = 0; row < rested.size(); ++row)
            knots.push_back({StateOfCharge(1.0 - (1.0 - 0.1 * static_cast<double>(row)) / wells),
                             rested[row] * volt});
        return battery::OpenCircuit::through(knots).value();
    }();
    return made;
}

outage::Unit agm_unit() {
    outage::Unit unit;
    unit.bank.setup = {.kinetics = {.total = 106.6123 * ampere_hour,
                                    .available = Share(0.465),
                                    .rate = 0.87 / hour},
                       .open_circuit = &agm_of_rated_charge(),
                       .inner = 0.010 * ohm};
    unit.bank.rated = unit.bank.usable = 100.0 * ampere_hour;
    return unit;
}

constexpr std::size_t heater = 0;
constexpr std::size_t lamp = 1;

struct Household {
    std::vector<demand::DemandStep> steps;
    outage::Parts parts;
};

// A heater of 640 W from the start on, a lamp of 5 W all the time.
Household heater_and_lamp(Duration heats, Power heats_with = 640.0 * watt) {
    Household made;
    const auto step = [](Duration from, Power power) {
        return demand::DemandStep{
            .from = from, .direct = power, .direct_useful = power, .lowest = 10.5 * volt};
    };
    made.steps = {step({}, heats_with + 5.0 * watt), step(heats, 5.0 * watt)};
    made.parts.direct = {
        {.load = heater,
         .lowest = 10.5 * volt,
         .ways = {},
         .draws = {{{}, heats_with, heats_with}, {heats, {}, {}}}},
        {.load = lamp, .lowest = 10.5 * volt, .ways = {}, .draws = {{{}, 5.0 * watt, 5.0 * watt}}}};
    return made;
}

outage::Course course_of(const Household& household, const outage::Unit& unit = agm_unit(),
                         std::span<const outage::SunChange> sun = {}) {
    return outage::run(unit, household.steps, sun, 48.0 * hour, 6.0 * hour,
                       {.intervals = 1.0 * hour}, nullptr, &household.parts);
}

TEST(recovery, the_heater_goes_out_and_the_lamp_burns_to_the_end) {
    const auto course = course_of(heater_and_lamp(75.0 * minute));
    EXPECT_FALSE(course.survives);
    EXPECT_EQ(course.limited_by, LimitedBy::charge);
    EXPECT_NEAR(course.lasts / minute, 66.51, 0.1);
    ASSERT_EQ(course.out.size(), 1U);
    EXPECT_EQ(course.out[0].part, heater);
    EXPECT_EQ(course.out[0].why, LimitedBy::charge);
    EXPECT_EQ(course.out[0].from, course.lasts);
    EXPECT_NEAR(course.without / minute, 75.0 - 66.51, 0.1);
    EXPECT_NEAR(course.trace.back().charge.value(), 0.1948, 0.0005);
    EXPECT_EQ(std::ranges::count(course.events, EventKind::packs_empty, &outage::Event::kind), 0);
    EXPECT_LT(course.ledger.relative_residual, 1e-11);
}

// Wells of c 0.345 and k 1.02 an hour, 110 Ah, and 109.307 Ah, which hold 100 Ah at 20 h; the table
// over the fill of a well.
TEST(recovery, the_lamp_burns_on_narrower_wells_too) {
    auto unit = agm_unit();
    unit.bank.setup.open_circuit = &battery::open_circuit_of(scenario::Chemistry::agm);
    for (const auto& [total, minutes] :
         std::array{std::pair{110.0, 53.20}, std::pair{109.307, 52.75}}) {
        unit.bank.setup.kinetics = {
            .total = total * ampere_hour, .available = Share(0.345), .rate = 1.02 / hour};
        const auto course = course_of(heater_and_lamp(75.0 * minute), unit);
        EXPECT_NEAR(course.lasts / minute, minutes, 0.1);
        ASSERT_EQ(course.out.size(), 1U);
        EXPECT_EQ(course.out[0].part, heater);
        EXPECT_NEAR(course.without / minute, 75.0 - minutes, 0.1);
        EXPECT_LT(course.ledger.relative_residual, 1e-11);
    }
}

TEST(recovery, a_heater_that_ends_sooner_is_met) {
    const auto course = course_of(heater_and_lamp(55.0 * minute));
    EXPECT_TRUE(course.survives);
    EXPECT_NEAR(course.trace.back().charge.value(), 0.3076, 0.0005);
    EXPECT_TRUE(course.out.empty());
}

// It is wanted for six hours: at the lamp's draw the wells level, and a rest makes it run again for
// a quarter of an hour and more. Nobody asks for it, so it is a note.
TEST(recovery, what_would_run_again_after_a_rest_is_told) {
    const auto course = course_of(heater_and_lamp(6.0 * hour));
    ASSERT_EQ(course.after_rest.size(), 1U);
    const auto& rest = course.after_rest[0];
    EXPECT_EQ(rest.part, heater);
    EXPECT_EQ(rest.out, course.lasts);
    EXPECT_GT(rest.from, course.lasts + 5.0 * minute);
    EXPECT_LT(rest.from, course.lasts + 2.0 * hour);
    EXPECT_GE(rest.lasts, 10.0 * minute);
    EXPECT_LT(rest.lasts, 20.0 * minute);
    ASSERT_EQ(course.out.size(), 1U);
}

// One LiFePO4 pack of 100 A, 150 A of heater and 1 A of lamp: the heater opens the protection at
// once, and the lamp burns 100 h. With two packs both burn, and all is dark after 200 / 151 h. The
// first failure comes later with more packs, what comes after it need not.
TEST(recovery, the_lamp_goes_on_where_the_heater_is_too_much_for_one_pack) {
    auto unit = agm_unit();
    unit.bank.setup.kinetics = {.total = 100.0 * ampere_hour};
    unit.bank.setup.open_circuit = &battery::open_circuit_of(scenario::Chemistry::lifepo4);
    unit.bank.setup.inner = 0.0001 * ohm;
    unit.bank.current_limit = 100.0 * ampere;
    auto household = heater_and_lamp(48.0 * hour, 150.0 * 13.2 * watt);
    household.steps[0].direct = household.steps[0].direct_useful = 151.0 * 13.2 * watt;
    household.steps[1].direct = household.steps[1].direct_useful = 13.2 * watt;
    household.parts.direct[lamp].draws[0] = {{}, 13.2 * watt, 13.2 * watt};
    const auto one = course_of(household, unit);
    EXPECT_EQ(one.lasts, Duration{});
    EXPECT_EQ(one.limited_by, LimitedBy::pack_limit);
    EXPECT_NEAR(one.ledger.loads / watt_hour, 48.0 * 13.2, 1e-6);
    unit.bank.count = 2;
    const auto two = course_of(household, unit);
    EXPECT_NEAR(two.lasts / hour, 1.3245, 0.03);
    EXPECT_GT(two.lasts, one.lasts);
    EXPECT_LT(two.ledger.loads / watt_hour, 2700.0);
    EXPECT_EQ(std::ranges::count(two.events, EventKind::packs_empty, &outage::Event::kind), 1);
}

// The radio needs 11.0 V, the lamp 10.5 V: through a long thin path of 80 mohm the heater pulls
// the bus below 11.0 V at once. The radio goes out first, then the heater; with it gone the radio
// comes back at this instant, for its voltage is far above 11.3 V.
TEST(recovery, who_needs_the_most_voltage_goes_first_and_comes_back_first) {
    auto unit = agm_unit();
    unit.bank.setup.path = 0.080 * ohm;
    Household household = heater_and_lamp(1.0 * hour, 380.0 * watt);
    household.parts.direct[lamp].lowest = 11.0 * volt;
    household.steps[0].lowest = household.steps[1].lowest = 11.0 * volt;
    const auto course = course_of(household, unit);
    EXPECT_EQ(course.lasts, Duration{});
    EXPECT_EQ(course.limited_by, LimitedBy::low_voltage);
    ASSERT_EQ(course.out.size(), 2U);
    EXPECT_EQ(course.out[0].part, lamp);
    EXPECT_EQ(course.out[0].from, course.out[0].to);
    EXPECT_EQ(course.out[1].part, heater);
    EXPECT_NEAR(course.ledger.loads / watt_hour, 48.0 * 5.0, 1e-6);
}

// A cooler of 60 W that needs 11.6 V at its plug, on a pack far down: it goes out, and comes on
// when the sun has lifted what it would have to 11.9 V. By hand: with it on 40 W come in, 3.4 A,
// 0.03 V; the rest must stand at 11.87 V, 12 % of the rated charge in the available well, some 6
// points more than at 10 h, at 8.3 A less the lamp: an hour, and less or more for the wells.
TEST(recovery, a_load_comes_on_at_its_own_level_when_charge_lifts_the_bus) {
    auto unit = agm_unit();
    unit.bank.at_start = {.removed = 94.0 * ampere_hour};
    Household household = heater_and_lamp(48.0 * hour, 60.0 * watt);
    household.parts.direct[heater].lowest = 11.6 * volt;
    household.steps[0].lowest = 11.6 * volt;
    const std::vector<outage::SunChange> sun{{.from = {}},
                                             {.from = 10.0 * hour, .offered = 100.0 * watt}};
    const auto course = course_of(household, unit, sun);
    ASSERT_GE(course.out.size(), 1U);
    EXPECT_EQ(course.out[0].part, heater);
    EXPECT_EQ(course.out[0].why, LimitedBy::low_voltage);
    EXPECT_GE(course.out[0].to, 10.4 * hour);
    EXPECT_LT(course.out[0].to, 11.6 * hour);
    EXPECT_LT(course.ledger.relative_residual, 1e-11);
}

// ---- AGM as it is: drawn by its level, and back from it at rest. battery/method.md (70)

battery::PackModel agm_model() {
    scenario::Pack pack;
    pack.chemistry = scenario::Chemistry::agm;
    pack.capacity = 100.0 * ampere_hour;
    scenario::Assumptions taken;
    return battery::pack_model(pack, "pack[0]", celsius(25.0), taken).value();
}
outage::Unit unit_of(const battery::PackModel& model) {
    outage::Unit unit;
    unit.bank.setup = battery::arranged(model, {}, {});
    unit.bank.rated = unit.bank.usable = model.capacity;
    scenario::Inverter described;
    described.continuous = 1000.0 * watt;
    described.cutoff_voltage = 11.8 * volt;
    described.restart_voltage = 12.16 * volt;
    described.restart = scenario::Restart::by_itself;
    scenario::Assumptions assumed;
    unit.inverter = inverter::model_of(described, 12.0 * volt, assumed).value();
    return unit;
}
// 300 W until the inverter cuts off, and 100 W from a while later on.
std::vector<demand::DemandStep> heavy_then_light() {
    return {{.from = {}, .ac = 300.0 * watt, .inverter_on = true},
            {.from = 2.5 * hour, .ac = 100.0 * watt, .inverter_on = true}};
}
outage::Course heavy_and_light(const outage::Unit& unit) {
    return outage::run(unit, heavy_then_light(), {}, 12.0 * hour, 6.0 * hour,
                       {.intervals = 0.25 * hour});
}

// Nothing before the first failure asks for it.
TEST(recovery, an_inverter_restarts_sooner_by_what_comes_back) {
    const auto model = agm_model();
    const auto unit = unit_of(model);
    auto never_back = unit;
    never_back.bank.setup.at_rest = nullptr;
    const auto with = heavy_and_light(unit);
    const auto without = heavy_and_light(never_back);
    EXPECT_EQ(with.lasts, without.lasts);
    EXPECT_EQ(with.limited_by, LimitedBy::low_voltage);
    ASSERT_FALSE(with.out.empty());
    ASSERT_FALSE(without.out.empty());
    EXPECT_GE(with.out[0].to, with.out[0].from + 5.0 * minute);
    EXPECT_LT(with.out[0].to, without.out[0].to - 5.0 * minute);
    EXPECT_LT(with.ledger.relative_residual, 1e-11);
}

// The last quarter of an hour in which nothing is drawn: what stands there is what a meter shows.
TEST(recovery, the_hours_show_what_comes_back) {
    const auto model = agm_model();
    auto unit = unit_of(model);
    unit.inverter.reset();
    unit.bank.at_start = battery::rested_with(model.capacity, StateOfCharge(0.6));
    const std::vector<demand::DemandStep> demand{{.from = {}, .direct = 60.0 * watt},
                                                 {.from = 1.0 * hour}};
    const auto course =
        outage::run(unit, demand, {}, 6.0 * hour, 6.0 * hour, {.intervals = 0.25 * hour});
    ASSERT_EQ(course.intervals.size(), 24U);
    const auto loaded = course.intervals[3];
    const auto wells = battery::after(model.kinetics, unit.bank.at_start, Current{}, Duration{});
    EXPECT_NEAR(wells.removed / ampere_hour, 40.0, 1e-9);
    const auto last = course.intervals.back();
    const auto fill = battery::fill_with(model.kinetics, model.capacity, last.charge);
    EXPECT_NEAR(last.voltage / volt, model.open_circuit.voltage(fill) / volt + 0.06, 0.002);
    EXPECT_LT(last.voltage, model.at_rest.voltage(fill));
    EXPECT_LT(loaded.voltage, model.open_circuit.voltage(battery::fill_with(
                                  model.kinetics, model.capacity, loaded.charge)));
    for (std::size_t i = 5; i < course.intervals.size(); ++i)
        EXPECT_GE(course.intervals[i].voltage, course.intervals[i - 1].voltage);
}

// Two kinds on one bus, each of which comes back, show what one of twice the size does.
TEST(recovery, packs_that_differ_come_back_as_like_ones_do) {
    const auto model = agm_model();
    auto twice = unit_of(model);
    twice.bank.count = 2;
    auto apart = unit_of(model);
    apart.others.push_back(apart.bank);
    for (auto* unit : {&twice, &apart}) {
        unit->inverter.reset();
        unit->bank.at_start = battery::rested_with(model.capacity, StateOfCharge(0.6));
    }
    apart.others.front().at_start = apart.bank.at_start;
    const std::vector<demand::DemandStep> demand{{.from = {}, .direct = 200.0 * watt},
                                                 {.from = 1.0 * hour}};
    const auto one = outage::run(twice, demand, {}, 3.0 * hour, {}, {.intervals = 0.25 * hour});
    const auto two = outage::run(apart, demand, {}, 3.0 * hour, {}, {.intervals = 0.25 * hour});
    ASSERT_EQ(one.intervals.size(), two.intervals.size());
    for (std::size_t i = 0; i < one.intervals.size(); ++i)
        EXPECT_NEAR(one.intervals[i].voltage / volt, two.intervals[i].voltage / volt, 1e-6) << i;
}

}  // namespace
