// What holds for every build.
#include <cmath>
#include <cstdio>
#include <set>

#include <rapidcheck.h>

#include "support/wiring_builds.hpp"
#include "wiring/ampacity.hpp"

namespace {

using namespace units;
using namespace wiring_builds;
using fitting::Verdict;
using wiring_builds::unit;  // not the folder of the engine

template <class T>
T pick(std::initializer_list<T> values) {
    return *rc::gen::elementOf(std::vector<T>(values));
}

bool once_in(int times) {
    return *rc::gen::inRange(0, times) == 0;
}

double between(double low, double high) {
    return low + (high - low) * *rc::gen::inRange(0, 10001) / 10000.0;
}

WireSize a_size() {
    if (*rc::gen::inRange(0, 4) == 0) {
        return pick({1.5, 2.5, 4.0, 6.0, 10.0, 16.0, 25.0, 35.0, 50.0, 70.0}) * 1e-6 * square_metre;
    }
    return AmericanGauge{pick({18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3})};
}

scenario::Wire a_wire() {
    auto made = wire(a_size(), between(0.5, 20.0), pick({60.0, 75.0, 90.0, 105.0}));
    if (*rc::gen::inRange(0, 3) == 0) {
        made.bundle = *rc::gen::inRange(1, 10);
    }
    if (*rc::gen::inRange(0, 4) == 0) {
        made.runs = 2;
    }
    if (*rc::gen::inRange(0, 4) == 0) {
        made.return_length = between(0.5, 20.0) * metre;
    }
    return made;
}

scenario::Fuse a_fuse() {
    return fuse(pick({5.0, 10.0, 30.0, 100.0, 250.0, 400.0}),
                pick<std::string>({"blade", "strip 51 mm", "class T", "breaker", "nothing known"}));
}

// Any unit: packs, links in any order that keeps a fuse in front, warm or cool, weak or strong.
scenario::Scenario a_build() {
    auto build = unit(between(300.0, 4000.0), *rc::gen::inRange(1, 7));
    build.enclosure->inside = celsius(between(-10.0, 110.0));
    build.packs[0].resistance = between(1e-3, 30e-3) * ohm;
    build.circuits[0].links = {a_fuse(), dc_switch(pick({5.0, 10.0, 20.0})), a_wire()};
    build.circuits[1].links = {a_fuse(), a_wire(), dc_switch(pick({100.0, 300.0, 500.0}))};
    build.circuits[2].links = {
        a_fuse(), scenario::Connector{.rating = between(20.0, 400.0) * ampere}, a_wire(), a_fuse()};
    return build;
}

// The figures that the window is made of, reckoned anew from the parts.
void holds_the_weakest_link(const fitting::Fit& fit) {
    for (const auto& circuit : fit.circuits) {
        for (const auto& fuse : circuit.fuses) {
            if (!fuse.window.largest || !fuse.window.most) {
                continue;
            }
            RC_ASSERT(*fuse.window.largest <= (1.0 + 1e-9) * *fuse.window.most);
            const auto& weakest = circuit.links[*fuse.weakest];
            RC_ASSERT(*fuse.window.largest * circuit.runs <= (1.0 + 1e-9) * *weakest.derated);
        }
    }
    // What stands in a circuit with a larger fuse than its weakest part is told as failing.
    for (const auto& circuit : fit.circuits) {
        for (const auto& fuse : circuit.fuses) {
            const auto& own = circuit.links[fuse.link];
            if (fuse.window.most && *own.rating > 1.0001 * *fuse.window.most) {
                const auto* check = find(fit, "C1", circuit.name, in_english(own.title));
                RC_ASSERT(check != nullptr);
                RC_ASSERT(worst_of(fit, circuit.name) == Verdict::fails);
            }
        }
    }
}

void account_closes(const fitting::Operating& at) {
    if (at.state.how != wiring::Feeding::carries) {
        return;
    }
    double given = 0.0;
    double used = at.feed.drawn / watt + at.feed.branches * at.state.bus / watt +
                  at.state.main * at.state.main * at.feed.main / watt;
    for (std::size_t i = 0; i < at.feed.sources.size(); ++i) {
        const auto& source = at.feed.sources[i];
        const auto share = at.state.shares[i];
        given += source.emf * share / watt;
        used += share * share * source.resistance / watt;
    }
    RC_ASSERT(std::abs(given - used) <= 1e-9 * std::max(1.0, std::abs(given)));
}

void losses_add_up(const fitting::CircuitState& circuit) {
    Voltage drop{};
    Power loss{};
    for (const auto& link : circuit.links) {
        drop += link.drop;
        loss += link.loss;
        RC_ASSERT(std::isfinite(link.drop / volt));
    }
    RC_ASSERT(drop <= (1.0 + 1e-9) * circuit.drop + 1e-12 * volt);
    RC_ASSERT(loss <= (1.0 + 1e-9) * circuit.loss + 1e-12 * watt);
    const auto current =
        circuit.resistance > Resistance() ? circuit.drop / circuit.resistance : Current();
    RC_ASSERT(std::abs(current * circuit.drop / watt - circuit.loss / watt) <=
              1e-9 * std::max(1.0, double(circuit.loss / watt)));
}

// A hundred properties of a hundred builds each.
TEST(wiring_fit, in_10_000_builds_no_fuse_is_above_the_weakest_part_and_the_account_closes) {
    EXPECT_TRUE(rc::check([] {
        for (int each = 0; each < 100; ++each) {
            const auto build = a_build();
            const auto fit = fitting::quick_fit(build, draws_for(build, between(0.0, 30.0)));
            RC_ASSERT(static_cast<bool>(fit));
            holds_the_weakest_link(*fit);
            account_closes(*fit->continuous);
            account_closes(*fit->surge);
            for (const auto& circuit : fit->circuits) {
                losses_add_up(circuit);
            }
        }
    }));
}

int weight(Verdict verdict) {
    return verdict == Verdict::fails ? 2 : verdict == Verdict::fits ? 0 : 1;
}

// A thicker wire never makes a verdict of its own circuit worse, but for lugs that do not take it.
TEST(wiring_fit, a_thicker_wire_never_harms_its_own_circuit) {
    EXPECT_TRUE(rc::check([] {
        const auto build = a_build();
        const auto draws = draws_for(build, between(0.0, 30.0));
        auto better = build;
        const std::size_t which = 0;  // a branch: its current hangs on its loads alone
        auto& links = better.circuits[which].links;
        auto& thick = std::get<scenario::Wire>(links[2]);
        const auto next = wiring::next_thicker(thick.size);
        RC_PRE(next.has_value());
        thick.size = *next;
        const auto before = fitting::quick_fit(build, draws);
        const auto after = fitting::quick_fit(better, draws);
        RC_ASSERT(before && after);
        for (const char* id : {"C1", "C2", "C3", "C6", "C8"}) {
            int old_worst = 0;
            int new_worst = 0;
            for (const auto& check : before->checks) {
                if (check.id == id && check.circuit == "lamps") {
                    old_worst = std::max(old_worst, weight(check.verdict));
                }
            }
            for (const auto& check : after->checks) {
                if (check.id == id && check.circuit == "lamps") {
                    new_worst = std::max(new_worst, weight(check.verdict));
                }
            }
            RC_ASSERT(new_worst <= old_worst);
        }
        RC_ASSERT(after->circuits[which].drop <= (1.0 + 1e-12) * before->circuits[which].drop);
    }));
}

bool same(const fitting::Check& one, const fitting::Check& other) {
    return one.id == other.id && one.circuit == other.circuit && one.about == other.about &&
           one.verdict == other.verdict && one.best == other.best && one.text == other.text;
}

// No circuit that may be asked about fails in what is looked at; all of them, or one.
fitting::Passes none_worse_than(int most, std::set<std::string> circuits) {
    return [=](const fitting::Fit& fit) {
        return std::ranges::none_of(fit.checks, [&](const fitting::Check& check) {
            return circuits.contains(check.circuit) && fitting::rank_of(check.verdict) > most;
        });
    };
}

// A build that is given up at one end of what the file leaves open is one that does not pass, and
// no other; one that passes is worked out as if it had not been asked.
TEST(wiring_fit, a_build_is_given_up_where_it_does_not_pass) {
    int passed = 0;
    int given_up = 0;
    EXPECT_TRUE(rc::check([&] {
        for (int each = 0; each < 5; ++each) {
            auto build = a_build();
            if (once_in(2)) build.packs[0].resistance.reset();
            if (once_in(2)) build.inverter->cutoff_voltage.reset();
            const auto draws = draws_for(build, between(0.0, 30.0));
            std::set<std::string> circuits{
                build.circuits[std::size_t(*rc::gen::inRange(0, 3))].name};
            if (once_in(3)) circuits.insert("");
            const auto passes = none_worse_than(*rc::gen::inRange(0, 3), circuits);
            int noes = 0;
            const auto whole = fitting::quick_fit(build, draws);
            const auto asked = fitting::fit_if(build, draws, [&](const fitting::Fit& fit) {
                const bool yes = passes(fit);
                noes += yes ? 0 : 1;
                return yes;
            });
            RC_ASSERT(whole && asked);
            RC_ASSERT(asked->has_value() == passes(*whole));
            RC_ASSERT(noes == (asked->has_value() ? 0 : 1));
            ++(asked->has_value() ? passed : given_up);
            if (*asked) RC_ASSERT(std::ranges::equal((*asked)->checks, whole->checks, same));
            const auto first = fitting::first_fit(build, draws);
            RC_ASSERT(first && first->circuits.size() == whole->circuits.size());
            for (std::size_t i = 0; i < first->circuits.size(); ++i)
                RC_ASSERT(first->circuits[i].drop == whole->circuits[i].drop);
        }
    }));
    std::printf("%d passed, %d were given up\n", passed, given_up);
    EXPECT_GT(passed, 20);
    EXPECT_GT(given_up, 50);
}

TEST(wiring_fit, a_hotter_place_never_lets_a_wire_carry_more) {
    EXPECT_TRUE(rc::check([] {
        const auto any = a_wire();
        const double cool = between(-20.0, 100.0);
        const double warm = cool + between(0.0, 60.0);
        const auto at = [&any](double degrees) {
            return wiring::ampacity_of(any, {.around = celsius(degrees)});
        };
        const auto cooler = at(cool);
        const auto warmer = at(warm);
        RC_ASSERT(cooler.has_value() == warmer.has_value());
        if (cooler) {
            RC_ASSERT(warmer->allowed <= cooler->allowed);
        }
    }));
}

}  // namespace
