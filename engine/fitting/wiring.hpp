// Does each fuse, wire, switch, connector and outlet suit what is drawn through it? The checks of
// method.md over a whole build.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "scenario/assumption.hpp"
#include "scenario/finding.hpp"
#include "scenario/scenario.hpp"
#include "unit/circuits.hpp"
#include "units/quantities.hpp"
#include "units/result.hpp"
#include "wiring/fuse.hpp"
#include "wiring/network.hpp"
#include "words/said.hpp"

namespace fitting {

// What the loads draw, as the clock of the outage knows it. All at their hungry end.
//   continuous  held for 3 h or more at a stretch
//   further     more than that, for shorter times
struct Draw {
    units::Power continuous{};
    units::Power further{};
};
struct CircuitDraw {
    std::string circuit;
    Draw at_bus;                 // of its 12 V and USB loads, with their adaptors
    Draw at_outlet;              // of its AC loads
    bool critical = false;       // something of life, health or property hangs on it
    bool starts_motors = false;  // which may draw the inverter's surge
};
struct Draws {
    std::vector<CircuitDraw> circuits;         // in the file's order
    Draw ac;                                   // of all AC loads together
    Draw direct;                               // of all others
    std::vector<std::string> without_circuit;  // 12 V and USB loads that no circuit feeds
};

using unit::Role;

// fits .. fails tell the numbers; unknown lacks one; asked is for hands and eyes; deferred for
// others to decide.
enum class Verdict { fits, may_not, fails, unknown, asked, deferred };

// One answer of one check about one place.
struct Check {
    std::string id;                   // "C1"
    std::string circuit;              // its name; empty: the whole unit
    words::Said about;                // "10 A fuse"; may be empty
    Verdict verdict = Verdict::fits;  // at the worst of what the file leaves open
    words::Said text;
    words::Said mend;
    words::Said source;
    std::optional<Verdict> best = {};  // at the best of it; absent: the same
    words::Said part = {};             // the part meant, where `about` says more of it
};

struct LinkState {
    std::string kind;                       // "fuse", "switch", "wire", "connector", "outlet"
    words::Said title;                      // "16 AWG wire"
    std::optional<units::Current> rating;   // as stamped or tabulated
    std::optional<units::Current> derated;  // where it lies; absent: not known
    std::optional<units::Current> stamped;  // of a part whose stamp is for the other current
    words::Said why;                        // what the derating is made of
    units::Current carries{};               // continuous and further together
    units::Resistance resistance{};
    units::Voltage drop{};
    units::Power loss{};
    words::Said source;

    // More than this it does not carry, whatever else is not known.
    [[nodiscard]] std::optional<units::Current> carries_at_most() const {
        return derated ? derated : stamped;
    }
};

struct FuseState {
    std::size_t link = 0;
    wiring::Asked asked;
    wiring::FuseWindow window;
    std::optional<std::size_t> weakest;  // link that sets its largest rating
    std::optional<units::Current> prospective;
};

struct CircuitState {
    std::string name;
    std::size_t index = 0;  // in scenario.circuits
    Role role = Role::branch;
    int alike = 1;      // pack leads: one for each pack of the kind
    double runs = 1.0;  // cables in parallel, each with its own fuse
    units::Voltage nominal{};
    units::Voltage design{};  // the low one at which currents are reckoned
    units::Current continuous{};
    units::Current further{};
    units::Current surge{};
    units::Duration surge_lasts{};
    units::Current
        charging{};  // the part of `continuous` that flows towards the packs, if that is it
    std::vector<LinkState> links;
    units::Resistance joints{};
    units::Resistance resistance{};  // of all of it
    std::vector<FuseState> fuses;
    std::optional<std::size_t> weakest;  // lowest derated rating, fuses apart
    std::optional<std::size_t> worst_drop;
    units::Voltage drop{};
    units::Power loss{};
    double drop_limit = 0.10;

    [[nodiscard]] units::Current carries() const { return continuous + further; }
};

// Which current takes which way.
struct Operating {
    wiring::Feed feed;
    wiring::Fed state;
};

struct Fit {
    units::Temperature inside{};             // taken for all derating
    std::optional<units::Temperature> shut;  // reached inside a shut case at full power
    std::optional<units::Power> shed;        // what a shut case sheds within 20 K
    units::Voltage nominal{};
    units::Voltage top{};  // highest while charging
    int packs = 0;
    std::optional<units::Current> prospective;  // of all packs at the bus, at most
    units::Current charging{};  // of all chargers and panels together, at the lowest voltage
    units::Current direct{};    // of all 12 V and USB loads together, at the lowest voltage
    units::Current direct_for_hours{};    // the part of it that is held for 3 h
    std::optional<Operating> continuous;  // at the inverter's rating
    std::optional<Operating> surge;
    units::Voltage cutoff{};
    std::vector<CircuitState> circuits;
    std::vector<Check> checks;  // in the order C1 to C16
    scenario::Assumptions assumptions;
};

// The build as the file has it, its checks at the worst of what the file leaves open: the figures
// are those of the likely values, a check that is worse elsewhere in the ranges is told as found
// there. A figure that is stated is one point of its range, so no verdict becomes worse by it.
//   fails   where packs or inverter cannot be modelled, at their keys
[[nodiscard]] units::Result<Fit> fit(const scenario::Scenario& scenario, const Draws& draws);

// The same without saying what would settle a doubt, for who asks often.
[[nodiscard]] units::Result<Fit> quick_fit(const scenario::Scenario& scenario, const Draws& draws);

// What a build must meet to be worth more work. It looks at the verdicts alone, and one that is
// worse never turns a no into a yes.
using Passes = std::function<bool(const Fit&)>;

// quick_fit of a build that passes, nothing of one that does not: given up at the first end of what
// the file leaves open at which it does not, before the others are worked out.
[[nodiscard]] units::Result<std::optional<Fit>> fit_if(const scenario::Scenario& scenario,
                                                       const Draws& draws, const Passes& passes);

// The figures of quick_fit, with the checks of a single end of what the file leaves open: what has
// one bad end is at it, the rest is likely.
[[nodiscard]] units::Result<Fit> first_fit(const scenario::Scenario& scenario, const Draws& draws);

// Stop for what fails, caution for what may not or is unknown, note for the rest.
[[nodiscard]] scenario::Severity severity_of(Verdict verdict);
[[nodiscard]] int rank_of(Verdict verdict);  // 2 a stop, 1 a caution, 0 neither
[[nodiscard]] words::Said word_for(Verdict verdict);
// "may fail" where it fails at the worst and not at the best of what the file leaves open.
[[nodiscard]] words::Said word_for(const Check& check);
[[nodiscard]] words::Said word_for(const Fit& fit, std::string_view circuit);

// What two checks are about that others ask for: that no fuse is right, and the drop.
[[nodiscard]] words::Said about_window();
[[nodiscard]] words::Said about_drop();

[[nodiscard]] bool fails_for_sure(const Check& check);
[[nodiscard]] bool fails_for_sure(const Fit& fit, std::string_view circuit);  // one of its checks
[[nodiscard]] Verdict worst_of(const Fit& fit, std::string_view circuit);

}  // namespace fitting
