// Packs that differ, on one bus, moved on in time. Each keeps its own wells; within a substep each
// pack's current is constant and so chosen that the mean voltages at the far ends of all paths are
// one and the same. method.md (31) to (36)
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "battery/advance.hpp"
#include "battery/bus_solver.hpp"
#include "battery/calm.hpp"
#include "battery/prepared.hpp"

namespace battery {

// Packs alike in everything. Of its setup the path is the pack's own, up to where the paths meet;
// of its stops only pack_cut_off and current_above are looked at.
struct PackGroup {
    Arrangement setup;
    int count = 1;
    Wells at_start;
};

// What ends a step of a whole bank early; the charges are sums over all packs.
struct BankStops {
    std::optional<units::Voltage> cut_off = {};        // at the far end of the shared path
    std::optional<units::Voltage> voltage_above = {};  // likewise
    std::optional<units::Charge> removed_above = {};
    std::optional<units::Charge> removed_below = {};
    std::optional<units::Charge> filled_to = {};
};

//   energy          of all packs, their paths and the shared one
//   charge          out of all packs together; negative where it charges them
//   in_paths        the part of energy.in_resistance beyond the packs' terminals
//   pack            which group, where the ending is that of one pack; at_pack: its current
//   largest         greatest mean or final current of any single pack, as a magnitude
//   substeps        that it took, for a test to count
struct BankAdvanced {
    units::Duration time{};
    Ending ending = Ending::completed;
    std::size_t pack = 0;
    EnergyFlow energy;
    units::Charge charge{};
    units::Energy in_paths{};
    units::Voltage voltage{};
    units::Current current{};
    units::Current largest{};
    units::Current at_pack{};
    units::Power at_most{};
    int substeps = 0;
};

// Means of substeps, and currents at the ends of steps; both are magnitudes.
struct Borne {
    units::Current given{};
    units::Current taken{};
};

class Bank {
  public:
    //   groups   at least one; what they point to must outlive the bank
    //   shared   carries the current of all packs
    Bank(std::span<const PackGroup> groups, units::Resistance shared,
         units::Voltage tolerance = default_tolerance);

    //   power    at the far end of the shared path: positive is taken, negative offered
    [[nodiscard]] BankAdvanced advance(const BankStops& stops, units::Power power,
                                       units::Duration time);

    // At this moment.
    [[nodiscard]] OperatingPoint operating_point(units::Power power);
    // Voltage of the bus without any power, at this moment: that of operating_point(0), which the
    // currents of current_of are then not of.
    [[nodiscard]] units::Voltage voltage_at_rest();
    // Current out of one pack of the group at the last operating point asked for.
    [[nodiscard]] units::Current current_of(std::size_t group) const;
    // The most that one pack of the group has given and taken in all steps so far.
    [[nodiscard]] Borne borne(std::size_t group) const;

    [[nodiscard]] std::size_t groups() const { return members_.size(); }
    [[nodiscard]] int count(std::size_t group) const;
    [[nodiscard]] Wells wells(std::size_t group) const;
    [[nodiscard]] units::Energy stored() const;
    // The same to rounding, quicker after a quiet step.
    [[nodiscard]] units::Energy stored_to_rounding() const;
    [[nodiscard]] units::Charge removed() const;  // from all packs
    // Opens or closes a group for what leaves it and what enters it; closed both ways it carries
    // exactly nothing.
    void let(std::size_t group, bool give, bool take);
    [[nodiscard]] bool gives(std::size_t group) const { return members_[group].gives; }
    [[nodiscard]] bool any_gives() const;
    // The removed charge of one pack below which a group that does not give ends the step.
    void restore_below(std::size_t group, std::optional<units::Charge> removed);
    // The packs as the quiet step has them, for who takes it for many banks abreast; and the wells
    // that it has come to there.
    [[nodiscard]] Calm& quiet();
    void went_on_quietly(double removed);
    // A new temperature, path or limit; the wells stay as they are.
    void refit(std::size_t group, const Arrangement& setup);

  private:
    struct Member {
        Prepared pack;
        Kinetics kinetics;
        double count = 1.0;
        double per_ohm = 0.0;  // conductance of all of the group, rested voltage to bus
        bool gives = true;
        bool takes = true;
        double restored_below = 0.0;
        bool may_restore = false;
        double most_given = 0.0;
        double most_received = 0.0;
        WellState state;
        // of the trial
        Decay decayed;
        double at_rest = 0.0;
        double per_ampere = 0.0;
        step::Added<double> added{};    // that charging adds to the resistance
        double lag = 0.0;               // V, of what charging meets in the mean above its start
        double charging_at_rest = 0.0;  // likewise of the charging voltage
        double charging_per_ampere = 0.0;
        double current = 0.0;  // at the terminals of one pack
        double into = 0.0;
        double removed = 0.0;
        double head = 0.0;
        double available = 1.0;
        double bound = 1.0;
    };
    struct Threshold {
        Ending ending = Ending::completed;
        std::size_t pack = 0;
        double beyond = 0.0;  // at least zero when met
    };

    // What a run has come to: what ends it, the seconds it took, and whether its last substep was a
    // quiet one.
    struct Ended {
        Threshold met;
        double passed = 0.0;
        bool calm = false;
    };

    // What charging does not come above: the voltage at the far end, and the node. Infinite where
    // nothing holds it.
    struct Ceiling {
        double voltage = 0.0;
        double node = 0.0;
        bool any_takes = false;
    };

    // A well at the end of its straight piece: 1 the available one, 2 the bound one, 0 none; 3 is
    // both together at the end of a piece of the efficiency of charging.
    struct AtKnot {
        int well = 0;
        std::size_t pack = 0;
        int move = 0;
        double fill = 0.0;
    };

    std::vector<Member> members_;
    std::vector<Branch> trial_;
    std::vector<Branch> now_;
    double shared_ = 0.0;
    double tolerance_ = 0.0;
    double length_ = 0.0;  // that the last substep ended with
    BusPoint now_point_;
    BusPoint trial_point_;
    double trial_time_ = 0.0;
    CalmLimits limits_;
    AtKnot knot_{};
    double removed_before_ = 0.0;  // all packs, at the start of the substep
    Calm calm_;
    bool calm_is_current_ = false;  // holds the members as they are
    bool calm_has_point_ = false;   // the last operating point is the calm's
    std::vector<CalmPack> to_load_;

    void load_calm();
    void leave_calm();
    [[nodiscard]] bool calm_step(double power, double until, BankAdvanced& sum, double& passed);
    BusPoint solve(std::span<Branch> branches, double power) const;
    BusPoint solve_at_rest(std::span<Branch> branches) const;
    BusPoint solve_at_node(std::span<Branch> branches, double node) const;
    [[nodiscard]] Ceiling ceiling(std::span<const Branch> branches) const;
    void faces(Branch& branch, const Member& member, double taking_from, double taking) const;
    [[nodiscard]] bool lag_behind(double time);
    [[nodiscard]] double drift() const;
    void point_now(double power, bool at_trial_end);
    [[nodiscard]] double current_now(std::size_t group) const;
    static void bear(Member& member, double current);
    void bear_now(bool calm);
    void face_mean(Branch& branch, Member& member, double time) const;
    static void lead(Member& member, double current, double time);
    void try_for(double power, double time);
    double change(double power) const;
    bool fit_to_tolerance(double power, double length);
    void before_turns(double power);
    double part_before_knot();
    void before_knots(double power);
    void pass_knot();
    void stand_on_charging_pieces();
    [[nodiscard]] double beyond(const Threshold& threshold, double power, bool at_trial_end) const;
    [[nodiscard]] Threshold first_met(double power, bool at_trial_end) const;
    [[nodiscard]] Threshold before_thresholds(double power);
    void add_lost_in_charging(double& sum, std::size_t group) const;
    [[nodiscard]] CalmEnergy spent() const;
    void take(BankAdvanced& sum);
    [[nodiscard]] std::optional<Threshold> watched_step(double power, double left, bool stuck,
                                                        BankAdvanced& sum);
    [[nodiscard]] Ended stands_at(double power);
    void go_on(Ended& now, double power, double time, BankAdvanced& sum);
    void show(BankAdvanced& sum, const Ended& end, double power) const;
    [[nodiscard]] double total_removed(bool at_trial_end) const;
};

}  // namespace battery
