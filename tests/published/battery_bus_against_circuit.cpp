// The sharing of packs against a general-purpose circuit simulator, which knows sources, resistors
// and a load of constant power, and nothing of batteries: [ngspice]. Skipped where it is not
// installed; tests/run installs it.
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <random>

#include <fmt/format.h>

#include "battery/bus.hpp"

namespace {

using namespace units;
using battery::PackOnBus;

namespace fs = std::filesystem;

bool installed() {
    return std::system("command -v ngspice > /dev/null 2>&1") == 0;
}

// Node 0 is the common negative; pack i is a source behind its resistance; `far` is behind the
// shared path. Tolerances are those that let the printed digits be compared.
std::string netlist(const std::vector<PackOnBus>& packs, double power, double shared) {
    std::string text = "* packs in parallel\n";
    for (std::size_t i = 0; i < packs.size(); ++i) {
        text += fmt::format("V{} p{} 0 {:.17g}\n", i, i, packs[i].rested / volt);
        text += fmt::format("R{} p{} node {:.17g}\n", i, i, packs[i].giving / ohm);
    }
    text += fmt::format("Rs node far {:.17g}\n", shared);
    text += fmt::format("Bload far 0 I = {:.17g}/max(V(far), 1)\n", power);
    text += ".nodeset v(far)=12.5 v(node)=12.6\n.options reltol=1e-9 abstol=1e-12 vntol=1e-12\n";
    text += ".control\nop\nset numdgt=12\nprint v(far) v(node)\n";
    for (std::size_t i = 0; i < packs.size(); ++i)
        text += fmt::format("print i(v{})\n", i);
    return text + "quit\n.endc\n.end\n";
}

// Every "name = value" that it printed, in order.
std::vector<double> simulated(const std::string& circuit) {
    const auto folder = fs::temp_directory_path() / fmt::format("candlemark_{}", std::rand());
    fs::create_directories(folder);
    std::ofstream(folder / "packs.cir") << circuit;
    const auto command =
        fmt::format("ngspice -b {0}/packs.cir > {0}/out 2>/dev/null", folder.string());
    std::vector<double> values;
    if (std::system(command.c_str()) != -1) {
        std::ifstream out(folder / "out");
        for (std::string line; std::getline(out, line);) {
            const auto at = line.find(" = ");
            if (at != std::string::npos && (line.rfind("v(", 0) == 0 || line.rfind("i(", 0) == 0))
                values.push_back(std::strtod(line.c_str() + at + 3, nullptr));
        }
    }
    fs::remove_all(folder);
    return values;
}

TEST(battery_bus_against_circuit, voltage_and_currents_agree_for_banks_of_1_to_16_packs) {
    if (!installed())
        GTEST_SKIP() << "ngspice is not installed: apt-get install ngspice, or run tests/run";
    std::mt19937_64 bits{20261125};
    const auto between = [&](double low, double high) {
        return std::uniform_real_distribution<double>(low, high)(bits);
    };
    double furthest = 0.0;
    for (int count = 1; count <= 16; ++count) {
        std::vector<PackOnBus> packs;
        for (int i = 0; i < count; ++i) {
            const Resistance path = between(0.004, 0.03) * ohm;
            packs.push_back({.rested = between(12.4, 13.2) * volt, .giving = path, .taking = path});
        }
        const double power = between(20.0, 350.0) * count;
        const double shared = between(1e-4, 1e-3);
        const auto ours = battery::shared_at_power(packs, power * watt, shared * ohm);
        ASSERT_TRUE(ours.possible);
        const auto theirs = simulated(netlist(packs, power, shared));
        ASSERT_EQ(theirs.size(), static_cast<std::size_t>(count) + 2) << "what ngspice printed";
        // its own iteration ends at a relative 1e-9 of 13 V
        EXPECT_NEAR(ours.voltage / volt, theirs[0], 1e-7) << count;
        furthest = std::max<double>(furthest, std::abs((ours.voltage / volt).value() - theirs[0]));
        for (int i = 0; i < count; ++i) {
            const auto at = static_cast<std::size_t>(i);
            // a current into the source counts as positive there
            EXPECT_NEAR(ours.currents[at] / ampere, -theirs[at + 2], 1e-4) << count;
        }
    }
    std::printf("furthest from the circuit simulator: %.1e V\n", furthest);
}

}  // namespace
