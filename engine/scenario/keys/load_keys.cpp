// The keys of [[load]]. Limits without a source are common practice: what no portable unit
// reaches, so that a slip of the pen is told.
#include "scenario/file/open_end.hpp"
#include "scenario/file/tables.hpp"
#include "scenario/keys/most.hpp"
#include "units/said.hpp"

namespace scenario {

using words::Said;
using words::said;

namespace {

Said fuse_is_a_limit() {
    return said<
        "a fuse or breaker rating says at what current the circuit opens, not what the load "
        "draws">();
}

Said give_a_draw() {
    return said<
        "give power from the label, or metered = {{energy = \"1.9 kWh\", over = \"31 h\"}} from a "
        "plug-in meter; the rating belongs to [[circuit]], as links = [{{fuse = \"15 A\"}}]">();
}

Said duty_is_a_cycle() {
    return said<"the part of the time that a load is on is said by its cycle">();
}

Said runs_is_no_time_of_day() {
    return said<"runs is the cycle of on and off, and no time of day">();
}

Said give_hours() {
    return said<"take runs out, and write hours = [\"06:00-07:00\"] beside power">();
}

Said give_a_cycle() {
    return said<
        "write runs = {{on = \"15 min\", every = \"45 min\"}}, or duty = \"30 %\" beside power "
        "where the cycle is not known">();
}

// The mean of a yearly label, or of a twelfth of it: a month's. A year's energy without the year is
// shown as the label would have it.
struct YearlyLabelForm {
    using Value = YearlyLabel;
    OnlyMemberForm<YearlyLabel, QuantityForm<units::Power>> inner =
        as<YearlyLabel>(positive_to(20'000.0 * units::watt, "450 kWh/yr"));

    [[nodiscard]] std::string example() const { return inner.example(); }
    [[nodiscard]] words::Said limits() const { return inner.limits(); }
    [[nodiscard]] Ends ends() const { return inner.ends(); }
    [[nodiscard]] Shape shape() const { return inner.shape(); }
    [[nodiscard]] std::string print(const Value& value) const { return inner.print(value); }
    [[nodiscard]] std::optional<Value> read(Reading& reading, const Spot& spot) const {
        if (spot.node->kind == Node::Kind::text) {
            if (const std::optional<YearlyLabel> monthly = of_a_month(*spot.node)) {
                return monthly;
            }
            if (refused_with_its_year(reading, spot)) {
                return std::nullopt;
            }
        }
        return inner.read(reading, spot);
    }

  private:
    // "37 kWh/month"; within the limits of a year's.
    [[nodiscard]] std::optional<YearlyLabel> of_a_month(const Node& node) const {
        std::string_view text = node.text;
        for (const std::string_view month : {"/month", "/mo", " a month", " per month"}) {
            if (!text.ends_with(month)) {
                continue;
            }
            text.remove_suffix(month.size());
            const units::Result<units::Energy> energy = units::read<units::Energy>(text);
            const units::Power each = *units::read<units::Power>("1 kWh/yr");
            const units::Power mean =
                energy ? 12.0 * (*energy / (1000.0 * units::watt_hour)) * each : units::Power();
            const bool usable = mean > units::Power() && mean <= 20'000.0 * units::watt;
            return usable ? std::optional(YearlyLabel{.average = mean}) : std::nullopt;
        }
        return std::nullopt;
    }
    static bool refused_with_its_year(Reading& reading, const Spot& spot) {
        const std::string_view text = spot.node->text;
        const units::Result<units::Energy> energy = units::read<units::Energy>(text);
        if (!energy) {
            return false;
        }
        reading.refuse(
            spot, said<"found {value}, which does not say in what time">(text_of(*spot.node)),
            said<"write \"{energy} kWh/yr\" if it is what the label gives for a year">(
                words::Number{.value = *energy / (1000.0 * units::watt_hour), .digits = 6}));
        return true;
    }
};

// A reading shorter than this may miss whole cycles, and the defrost of a refrigerator.
//   common practice, no source
constexpr units::Duration shortest_metering = 12.0 * units::hour;

int draws_written(const Node& load) {
    int written = 0;
    for (const std::string_view way : {"power", "metered", "label", "nameplate"}) {
        written += load.find(way) == nullptr ? 0 : 1;
    }
    return written;
}

void check_draw(Reading& reading, const Spot& spot, const Load& load) {
    const int written = draws_written(*spot.node);
    if (written > 1) {
        reading.refuse(
            spot, said<"found {n} of power, metered, label and nameplate">(written),
            said<"keep the one you trust most: metered before label, label before nameplate">());
    }
    const bool motor_tells =
        load.motor && (load.motor->horsepower || load.motor->full_load_current);
    const bool limit_written = std::ranges::any_of(
        describe<Load>().mistakes,
        [&](const Mistake& mistake) { return spot.node->find(mistake.name) != nullptr; });
    if (written == 0 && !load.like && spot.node->find("like") == nullptr && !limit_written) {
        if (motor_tells) {
            reading.warn(spot, said<"the motor is described, what it draws while running is not">(),
                         said<"give power = \"900 W\", or metered, so that its hours count">());
        } else if (spot.node->find("motor") == nullptr || !load.motor) {
            reading.demand(spot, "power", said<"\"60 W\" (or metered, label, nameplate, like)">());
        } else {
            reading.demand(spot, "power", said<"\"900 W\" (or horsepower inside motor)">());
        }
    }
}

void check_duty(Reading& reading, const Spot& spot, const Load& load) {
    if (!load.duty) {
        return;
    }
    const Spot duty = spot.at(*spot.node->find("duty"), "duty");
    if (load.runs) {
        reading.refuse(duty, said<"found duty beside runs, which says the same">(),
                       said<"keep runs, where the cycle is known, or duty">());
    }
    const bool is_mean = load.draw && (std::holds_alternative<MeteredUse>(*load.draw) ||
                                       std::holds_alternative<YearlyLabel>(*load.draw));
    if (is_mean && !load.runs) {
        reading.warn(duty,
                     said<"the draw is a mean already, so duty only says how it comes in cycles">(),
                     said<"take duty out if the mean counts the time in which it is off">());
    }
}

void check_load(Reading& reading, const Spot& spot, const Load& load) {
    check_draw(reading, spot, load);
    check_duty(reading, spot, load);
    if (load.age && load.draw && !std::holds_alternative<YearlyLabel>(*load.draw)) {
        reading.warn(spot.at(*spot.node->find("age"), "age"),
                     said<"age counts only where the draw is that of a yearly label">(),
                     said<"take it out, or give label in the place of the other figure">());
    }
    if (load.priority == 1 && !load.medical && !load.like) {
        reading.warn(
            spot.at(*spot.node->find("priority"), "priority"),
            said<"1 is life and health, and nothing says whether a medical device is meant">(),
            said<"add medical = true if somebody's health depends on it, otherwise false">());
    }
    const auto* metered = load.draw ? std::get_if<MeteredUse>(&*load.draw) : nullptr;
    const bool cycles = load.runs.has_value() || load.motor.has_value();
    if (metered != nullptr && cycles && metered->over < shortest_metering) {
        reading.warn(spot.at(*spot.node->find("metered"), "metered"),
                     said<"a load that cycles was metered for only {time}">(metered->over),
                     said<"meter it for a day or more, defrost included">());
    }
    if (load.lowest_voltage && load.from == Outlet::ac) {
        reading.refuse(
            spot.at(*spot.node->find("lowest_voltage"), "lowest_voltage"),
            said<"found {voltage} of a load that the inverter feeds">(
                units::print(*load.lowest_voltage)),
            said<"give it for 12V and usb loads; the inverter has inverter.cutoff_voltage">());
    }
}

void check_metered(Reading& reading, const Spot& spot, const MeteredUse& metered) {
    const units::Power most = 100'000.0 * units::watt;
    if (metered.over > units::Duration() && metered.energy / metered.over > most) {
        reading.refuse(
            spot,
            said<"found {power} on average, which is too much">(metered.energy / metered.over),
            said<"check the two numbers and their units">());
    }
}

void check_runs(Reading& reading, const Spot& spot, const DutyCycle& runs) {
    const bool both_read = runs.on > units::Duration() && runs.every > units::Duration();
    if (both_read && runs.on > runs.every) {
        reading.refuse(spot, said<"found on for {on} out of every {every}">(runs.on, runs.every),
                       said<"give the on-time first: {{on = \"15 min\", every = \"45 min\"}}">());
    }
}

}  // namespace

template <>
const Description<MeteredUse>& describe<MeteredUse>() {
    static const Description<MeteredUse> description = {
        .silent = "",
        .keys = keys_of(
            key<&MeteredUse::energy>(
                {.name = "energy",
                 .means = said<"what a plug-in meter counted">(),
                 .demand = Demand::required,
                 .on_screen = {.label = said<"Energy metered">(), .units = {"kWh", "Wh"}}},
                from_to(0.001 * units::watt_hour, 1e6 * units::watt_hour, "1.9 kWh")),
            key<&MeteredUse::over>(
                {.name = "over",
                 .means = said<"over this time">(),
                 .demand = Demand::required,
                 .on_screen = {.label = said<"Metered over">(), .units = {"h", "d", "min"}}},
                from_to(1.0 * units::minute, 366.0 * units::day, "31 h")),
            key<&MeteredUse::room>({.name = "room",
                                    .means = said<"how warm the room was while it counted">(),
                                    .silent = said<"22 degC, where what keeps cold was metered">()},
                                   from_to(units::celsius(0.0), units::celsius(50.0), "22 degC"))),
        .check = check_metered};
    return description;
}

template <>
const Description<Nameplate>& describe<Nameplate>() {
    static const Description<Nameplate> description = {
        .silent = said<"by the kind of load; the answers give the figure they take">(),
        .keys = keys_of(
            key<&Nameplate::voltage>(
                {.name = "voltage",
                 .means = said<"volts on the plate">(),
                 .demand = Demand::required,
                 .on_screen = {.label = said<"Volts on the plate">(), .units = {"V"}}},
                from_to(1.0 * units::volt, 500.0 * units::volt, "120 V")),
            key<&Nameplate::current>(
                {.name = "current",
                 .means = said<"amperes on the plate">(),
                 .demand = Demand::required,
                 .on_screen = {.label = said<"Amperes on the plate">(), .units = {"A", "mA"}}},
                from_to(0.001 * units::ampere, 1000.0 * units::ampere, "1.5 A")),
            key<&Nameplate::power_factor>(
                {.name = "power_factor", .means = said<"power factor on the plate">()},
                from_to(units::PowerFactor(0.05), units::PowerFactor(1.0), "0.8")))};
    return description;
}

template <>
const Description<DutyCycle>& describe<DutyCycle>() {
    static const Description<DutyCycle> description = {
        .silent = said<"at the start of the outage">(),
        .keys = keys_of(
            key<&DutyCycle::on>(
                {.name = "on",
                 .means = said<"how long it runs">(),
                 .demand = Demand::required,
                 .on_screen = {.label = said<"On for">(), .units = {"min", "h", "s"}}},
                from_to(1.0 * units::second, longest_outage(), "15 min")),
            key<&DutyCycle::every>(
                {.name = "every",
                 .means = said<"out of this time">(),
                 .demand = Demand::required,
                 .on_screen = {.label = said<"Out of every">(), .units = {"min", "h", "s"}}},
                from_to(1.0 * units::second, longest_outage(), "45 min")),
            key<&DutyCycle::starts_at>(
                {.name = "starts_at",
                 .means = said<"when it first runs, after the outage starts">()},
                from_to(units::Duration(), longest_outage(), "10 min"))),
        .mistakes = {{"duty", duty_is_a_cycle(), give_a_cycle(), {"on", "every"}},
                     {"from", runs_is_no_time_of_day(), give_hours(), {"on", "every"}},
                     {"to", runs_is_no_time_of_day(), give_hours(), {"on", "every"}}},
        .check = check_runs};
    return description;
}

namespace {

// What kind of motor it is.
Keys<Motor> what_motor() {
    using enum MotorKind;
    return keys_of(key<&Motor::kind>(
        {.name = "kind",
         .means = said<"what kind of motor it is">(),
         .silent = "split_phase",
         .on_screen = {.label = said<"Its motor">(), .silent = said<"no motor, or as listed">()}},
        one_of<MotorKind>(
            {{"split_phase", split_phase, said<"split phase">()},
             {"capacitor_start", capacitor_start, said<"with start capacitor">()},
             {"permanent_split_fan", permanent_split_fan, said<"fan">()},
             {"permanent_split_compressor", permanent_split_compressor, said<"air conditioner">()},
             {"compressor_rsir", compressor_rsir, said<"small compressor">()},
             {"compressor_csir", compressor_csir, said<"compressor with start capacitor">()},
             {"submersible", submersible, said<"submersible pump">()},
             {"shaded_pole", shaded_pole, said<"shaded pole">()},
             {"universal", universal, said<"with brushes (hand tool)">()},
             {"electronic", electronic, said<"driven electronically">()},
             {"direct_current", direct_current, said<"direct current">()}})));
}

// What stands on its plate.
Keys<Motor> motor_plate() {
    return keys_of(
        key<&Motor::locked_rotor_current>(
            {.name = "locked_rotor_current",
             .means = said<"starting current on its plate (LRA)">(),
             .on_screen = {.label = said<"Starting current on its plate">(),
                           .units = {"A"},
                           .silent = said<"not given">()}},
            from_to(0.1 * units::ampere, 5000.0 * units::ampere, "11 A")),
        key<&Motor::horsepower>({.name = "horsepower",
                                 .means = said<"rated power on its plate">(),
                                 .on_screen = {.label = said<"Its rated power">(),
                                               .units = {"hp", "W"},
                                               .silent = said<"not given">()}},
                                from_to(1.0 * units::watt, 50'000.0 * units::watt, "1/2 hp")),
        key<&Motor::code_letter>(
            {.name = "code_letter", .means = said<"code letter of its plate">()},
            OneTextForm{{"A", "B", "C", "D", "E", "F", "G", "H", "J", "K", "L", "M", "N", "P", "R",
                         "S", "T", "U", "V"}}),
        key<&Motor::full_load_current>(
            {.name = "full_load_current",
             .means = said<"running current on its plate (FLA, RLA)">(),
             .on_screen = {.label = said<"Running current on its plate">(),
                           .units = {"A"},
                           .silent = said<"not given">()}},
            from_to(0.01 * units::ampere, 1000.0 * units::ampere, "9.8 A")),
        key<&Motor::voltage>({.name = "voltage", .means = said<"voltage on its plate">()},
                             from_to(1.0 * units::volt, 500.0 * units::volt, "115 V")));
}

// What it must bring up.
Keys<Motor> how_it_starts() {
    return keys_of(
        key<&Motor::soft_start>(
            {.name = "soft_start", .means = said<"whether electronics bring it up slowly">()},
            TruthForm()),
        key<&Motor::pull>({.name = "pull",
                           .means = said<"part of its rated pull that a winch is asked for">(),
                           .silent = said<"its rated pull">()},
                          from_to(units::Share(0.01), units::Share(1.0), "50 %")),
        key<&Motor::rope_layer>({.name = "rope_layer",
                                 .means = said<"layer of rope on the drum of a winch">(),
                                 .silent = said<"the first">()},
                                WholeForm{1, 9}));
}

}  // namespace

template <>
const Description<Motor>& describe<Motor>() {
    static const Description<Motor> description = {
        .silent = said<"assumed; the answers give the figure they take">(),
        .keys = joined(what_motor(), motor_plate(), how_it_starts())};
    return description;
}

namespace {

// What it is and where it is plugged in.
std::vector<OtherWord> others_for_outlet() {
    return {{"dc", said<"write {value}">("12V")}, {"DC", said<"write {value}">("12V")}};
}

Keys<Load> which_load() {
    return keys_of(
        key<&Load::name>({.name = "name",
                          .means = said<"what the answers call it">(),
                          .demand = Demand::required,
                          .on_screen = {.label = said<"Name">()}},
                         WordsForm{.sample = "refrigerator"}),
        key<&Load::from>({.name = "from",
                          .means = said<"what it is plugged into">(),
                          .silent = "ac",
                          .on_screen = {.label = said<"Plugged into">(), .silent = "ac"}},
                         one_of<Outlet>({{"ac", Outlet::ac, said<"inverter outlet">()},
                                         {"12V", Outlet::twelve_volt, said<"12 V">()},
                                         {"usb", Outlet::usb, said<"USB">()},
                                         {"generator", Outlet::generator, said<"generator">()}},
                                        others_for_outlet())));
}

// What it draws: one of four ways.
Keys<Load> what_it_draws() {
    return keys_of(
        key_of_kind<&Load::draw>(
            {.name = "power",
             .means = said<"what it draws while it runs, by its label">(),
             .silent = said<"its draw is given another way">(),
             .on_screen = {.label = said<"Power while on">(), .units = {"W", "kW", "hp"}}},
            as<StatedPower>(positive_to(100'000.0 * units::watt, "60 W"))),
        key_of_kind<&Load::draw>({.name = "metered",
                                  .means = said<"what a plug-in meter counted">(),
                                  .silent = said<"its draw is given another way">()},
                                 TableForm<MeteredUse>()),
        key_of_kind<&Load::draw>(
            {.name = "label",
             .means = said<"what its yearly energy label says">(),
             .silent = said<"its draw is given another way">(),
             .on_screen = {.label = said<"On the label">(), .units = {"kWh/yr"}}},
            YearlyLabelForm()),
        key_of_kind<&Load::draw>(
            {.name = "nameplate",
             .means = said<"volts and amperes of its plate: the most it draws">(),
             .silent = said<"its draw is given another way">()},
            TableForm<Nameplate>()));
}

// When it runs, and when it is wanted.
Keys<Load> when_it_runs() {
    return keys_of(
        key<&Load::runs>({.name = "runs",
                          .means = said<"the cycle in which it runs within its hours">(),
                          .silent = said<"all the time within its hours">()},
                         TableForm<DutyCycle>()),
        key<&Load::duty>(
            {.name = "duty",
             .means = said<"share of the time that it runs, where the cycle is not known">(),
             .silent = said<"as runs has it; without runs, all the time within its hours">()},
            from_to(units::Share(0.001), units::Share(1.0), "30 %")),
        key<&Load::hours>(
            {.name = "hours",
             .means = said<"parts of the day in which it is wanted">(),
             .silent = said<"at all hours">(),
             .on_screen = {.label = said<"Hours">(), .silent = said<"at all hours">()}},
            list_of(SpanForm())),
        key<&Load::days>(
            {.name = "days",
             .means = said<"days of the outage on which it is wanted, 1 is the first">(),
             .silent = said<"every day">()},
            list_of(WholeForm{1, most_days}, most_days)));
}

// How many there are, and what goes without before it.
Keys<Load> count_and_priority() {
    return keys_of(
        key<&Load::count>({.name = "count",
                           .means = said<"how many there are of it">(),
                           .silent = said<"one; 0 leaves the load out">(),
                           .on_screen = {.label = said<"How many">(), .silent = "1"}},
                          WholeForm{0, 1000}),
        key<&Load::priority>({.name = "priority",
                              .means = said<"what is kept on before others: 1 first, 5 last">(),
                              .silent = said<"3; 1 is life and health, 2 property, 3 word and "
                                             "light, 4 comfort, 5 work; 5 is switched off first">(),
                              .on_screen = {.label = said<"Kept on before others">(),
                                            .silent = "3",
                                            .picks = {{"1", said<"1 life and health">()},
                                                      {"2", said<"2 property">()},
                                                      {"3", said<"3 word and light">()},
                                                      {"4", said<"4 comfort">()},
                                                      {"5", said<"5 work">()}}}},
                             WholeForm{1, 5}));
}

// How well its draw is known, and what lies behind the plug.
Keys<Load> behind_its_plug() {
    return keys_of(key<&Load::evidence>(
                       {.name = "evidence",
                        .means = said<"how well its draw is known; sets how wide its range is">(),
                        .silent = said<"as its draw is given">(),
                        .on_screen = {.label = said<"How sure">()}},
                       one_of<Evidence>({{"metered", Evidence::metered, said<"metered">()},
                                         {"label", Evidence::label, said<"from a label">()},
                                         {"guess", Evidence::guess, said<"a guess">()}})),
                   key<&Load::power_factor>(
                       {.name = "power_factor", .means = said<"power factor while it runs">()},
                       from_to(units::PowerFactor(0.05), units::PowerFactor(1.0), "0.8")),
                   key<&Load::converter_efficiency>(
                       {.name = "converter_efficiency",
                        .means = said<"efficiency of its 12 V or USB adapter">()},
                       from_to(units::Efficiency(0.05), units::Efficiency(1.0), "0.9")),
                   key<&Load::lowest_voltage>(
                       {.name = "lowest_voltage",
                        .means = said<"voltage at its plug below which it switches off">(),
                        .silent = said<"10.5 V of a 12 V bus">()},
                       from_to(1.0 * units::volt, 100.0 * units::volt, "10.5 V")));
}

// Whose health depends on it, what it keeps cold, and how old it is.
Keys<Load> health_and_cold() {
    return keys_of(
        key<&Load::medical>(
            {.name = "medical",
             .means = said<"whether somebody's health depends on it">(),
             .silent = said<
                 "as the appliance named by like; otherwise not medical, whatever its priority">(),
             .on_screen = {.label = said<"Somebody's health depends on it">(), .silent = "false"}},
            TruthForm()),
        key<&Load::keeps_cold>(
            {.name = "keeps_cold",
             .means = said<"what it keeps cold; its draw follows the warmth of its room">(),
             .silent = said<"as the appliance of the list named by like or by its own name; "
                            "otherwise a refrigerator_freezer with a compressor_rsir or "
                            "compressor_csir motor, nothing without">()},
            one_of<KeepsCold>({{"nothing", KeepsCold::nothing, said<"nothing">()},
                               {"refrigerator", KeepsCold::refrigerator, said<"a refrigerator">()},
                               {"refrigerator_freezer", KeepsCold::refrigerator_freezer,
                                said<"a refrigerator with a freezer">()},
                               {"freezer", KeepsCold::freezer, said<"a freezer">()}})),
        key<&Load::room>(
            {.name = "room",
             .means = said<"how warm the room is in which it is during the outage">(),
             .silent = said<"outage.room_temperature, or 22 degC; counts for what keeps cold">()},
            from_to(units::celsius(-60.0), units::celsius(80.0), "35 degC")),
        key<&Load::age>({.name = "age",
                         .means = said<"how old it is">(),
                         .silent = said<"new; counts beside label">()},
                        from_to(units::Duration(), 60.0 * 365.0 * units::day, "10 yr")));
}

// What it is like, and its motor.
Keys<Load> appliance_and_motor() {
    return keys_of(
        key<&Load::like>({.name = "like",
                          .means = said<"an appliance of the built-in list that it is like">(),
                          .silent = said<"nothing is taken from the list of appliances">()},
                         WordsForm{.sample = "refrigerator"}),
        key<&Load::motor>({.name = "motor",
                           .means = said<"its motor, where it has one that must start">(),
                           .silent = said<"no motor">()},
                          TableForm<Motor>()));
}

}  // namespace

template <>
const Description<Load>& describe<Load>() {
    static const Description<Load> description = {
        .silent = said<"by the kind of load; the answers give the figure they take">(),
        .keys = joined(which_load(), what_it_draws(), when_it_runs(), count_and_priority(),
                       behind_its_plug(), health_and_cold(), appliance_and_motor()),
        .mistakes = {{"fuse", fuse_is_a_limit(), give_a_draw()},
                     {"breaker", fuse_is_a_limit(), give_a_draw()},
                     {"duty_cycle", duty_is_a_cycle(), give_a_cycle()},
                     {"fuse_rating", fuse_is_a_limit(), give_a_draw()},
                     {"breaker_rating", fuse_is_a_limit(), give_a_draw()}},
        .check = check_load};
    return description;
}

}  // namespace scenario
