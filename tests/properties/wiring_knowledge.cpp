// Giving one more figure never moves a verdict out of what was told before.
#include <map>

#include <rapidcheck.h>

#include "fitting/silent.hpp"
#include "support/wiring_builds.hpp"

namespace {

using namespace units;
using namespace wiring_builds;
using wiring_builds::unit;  // not the folder of the engine

template <class T>
T pick(std::vector<T> values) {
    return *rc::gen::elementOf(std::move(values));
}

double between(double low, double high) {
    return low + (high - low) * *rc::gen::inRange(0, 10001) / 10000.0;
}

bool one_in(int many) {
    return *rc::gen::inRange(0, many) == 0;
}

template <class Value>
std::optional<Value> perhaps(Value value) {
    return one_in(2) ? std::optional(value) : std::nullopt;
}

scenario::Fuse a_fuse() {
    scenario::Fuse made{.rating = pick(std::vector{5.0, 10.0, 30.0, 100.0, 250.0, 400.0}) * ampere};
    if (!one_in(4)) {
        made.family = pick<std::string>({"blade", "strip 51 mm", "class T", "breaker", "terminal"});
    }
    made.full_duty = perhaps(true);
    return made;
}

scenario::Wire a_wire() {
    scenario::Wire made{.size = AmericanGauge{pick(std::vector{18, 16, 12, 8, 4, 2, 0, -1, -3})},
                        .length = between(0.3, 6.0) * metre};
    made.insulation = perhaps(celsius(pick(std::vector{60.0, 75.0, 90.0, 105.0})));
    made.terminals = one_in(3) ? std::optional(celsius(75.0)) : std::nullopt;
    made.runs = one_in(5) ? std::optional(2) : std::nullopt;
    made.return_size = one_in(5) ? std::optional<WireSize>(AmericanGauge{14}) : std::nullopt;
    made.tinned = perhaps(true);
    return made;
}

scenario::Switch a_switch() {
    scenario::Switch made{.rating = pick(std::vector{5.0, 20.0, 100.0, 400.0}) * ampere};
    made.rated_for = perhaps<std::string>("both");
    made.voltage = perhaps(48.0 * volt);
    return made;
}

scenario::Connector a_connector() {
    scenario::Connector made{.rating = between(20.0, 400.0) * ampere};
    made.part = one_in(3) ? std::optional<std::string>("two-pole 175") : std::nullopt;
    made.hottest = perhaps(celsius(100.0));
    return made;
}

// Any unit, with half of what it could say left unsaid; of 12, 24 or 48 V.
scenario::Scenario a_build() {
    auto build = unit(between(200.0, 3000.0), *rc::gen::inRange(1, 5));
    const double steps = pick(std::vector{1.0, 1.0, 2.0, 4.0});
    const auto dress = [&](scenario::Pack& pack) {
        pack.voltage = steps * 12.8 * volt;
        pack.resistance = perhaps(steps * between(4e-3, 15e-3) * ohm);
        pack.current_limit = perhaps(between(50.0, 100.0) * ampere);
        pack.absorption_voltage = perhaps(steps * 14.2 * volt);
        pack.fuse = one_in(4) ? std::optional(100.0 * ampere) : std::nullopt;
    };
    dress(build.packs[0]);
    if (one_in(3)) {
        build.packs.push_back(pack("other", *rc::gen::inRange(1, 3)));
        dress(build.packs[1]);
    }
    if (one_in(3)) {
        build.enclosure = scenario::Case{.material = perhaps<std::string>("steel"),
                                         .lid = perhaps<std::string>("open")};
        if (one_in(2)) {
            build.enclosure->surface = 1.0 * square_metre;
        }
    }
    build.inverter->surge = perhaps(1.5 * build.inverter->continuous);
    build.inverter->surge_lasts = perhaps(1.0 * second);
    build.inverter->cutoff_voltage = perhaps(steps * 10.5 * volt);
    build.circuits[0].links = {a_fuse(), a_switch(), a_wire()};
    build.circuits[1].links = {a_fuse(), a_wire(), a_switch()};
    build.circuits[2].links = {a_fuse(), a_connector(), a_wire(), a_fuse()};
    build.circuits[3].links = {
        a_fuse(), a_wire(),
        scenario::SocketOutlet{.rating = 15.0 * ampere, .ground_fault = perhaps(true)}};
    build.circuits[3].neutral = perhaps<std::string>("bonded");
    if (one_in(2)) {
        build.chargers = {{.name = "wall", .current = between(5.0, 80.0) * ampere}};
    }
    if (one_in(2)) {
        build.panels = {{.count = 3, .power = 100.0 * watt}};
        build.controller = scenario::ChargeController{
            .kind =
                pick(std::vector{scenario::ControllerKind::mppt, scenario::ControllerKind::pwm})};
    }
    return build;
}

struct Span {
    int worst = 0;
    int best = 0;
};
using Place = std::pair<std::string, std::string>;

// By check and circuit: the worst of its parts.
std::map<Place, Span> spans_of(const fitting::Fit& fit) {
    std::map<Place, Span> spans;
    for (const auto& check : fit.checks) {
        const int worst = fitting::rank_of(check.verdict);
        const int best = fitting::rank_of(check.best.value_or(check.verdict));
        RC_ASSERT(best <= worst);
        auto& span = spans[{check.id, check.circuit}];
        span.worst = std::max(span.worst, worst);
        span.best = std::max(span.best, best);
    }
    return spans;
}

TEST(wiring_knowledge, one_more_figure_stays_within_what_was_told) {
    int builds = 0;
    int figures = 0;
    const bool holds = rc::check([&] {
        for (int each = 0; each < 10; ++each) {
            const auto build = a_build();
            const auto draws = draws_for(build, between(0.0, 30.0));
            const auto silent = fitting::silent_figures(build);
            RC_PRE(!silent.empty());
            const auto before = fitting::quick_fit(build, draws);
            RC_ASSERT(static_cast<bool>(before));
            const auto told = spans_of(*before);
            const auto& figure = silent[*rc::gen::inRange<std::size_t>(0, silent.size())];
            auto richer = build;
            figure.set(richer, between(0.0, 1.0));
            const auto after = fitting::quick_fit(richer, draws);
            RC_ASSERT(static_cast<bool>(after));
            ++builds;
            ++figures;
            for (const auto& [place, span] : spans_of(*after)) {
                const auto was = told.find(place);
                const Span old = was == told.end() ? Span{} : was->second;
                if (span.worst > old.worst || span.best < old.best) {
                    RC_LOG() << place.first << " " << place.second << ": " << old.best << " to "
                             << old.worst << ", then " << span.best << " to " << span.worst
                             << " with " << figure.where << ", " << figure.key;
                    RC_FAIL("a verdict left what was told");
                }
            }
        }
    });
    EXPECT_TRUE(holds);
    EXPECT_GE(builds, 1000);
    RecordProperty("builds", builds);
    RecordProperty("figures", figures);
}

}  // namespace
