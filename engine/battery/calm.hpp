// A bank's substep in which nothing happens: every pack gives or takes freely, no knot, limit or
// threshold is met. Lanes packs at once, in plain SI numbers; whatever else happens is left to
// bank.cpp, which gives the same answer to rounding. method.md (36b)
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "battery/prepared.hpp"
#include "battery/step/in_bank.hpp"
#include "battery/substep.hpp"

namespace battery {

// A group of packs as the lanes take it up.
//   gives, takes     may carry current out of itself, into itself
//   restored_below   removed charge of one pack that ends the calm; minus infinity for none
struct CalmPack {
    const Prepared& pack;
    const WellState& state;
    double count = 1.0;
    bool gives = true;
    bool takes = true;
    double restored_below = 0.0;
};

// The voltages and charges of a whole bank beyond which it is not calm; infinities for none.
struct CalmLimits {
    double cut_off = 0.0;
    double voltage_above = 0.0;
    double removed_above = 0.0;
    double removed_below = 0.0;
    double filled_to = 0.0;
};

// J, of the whole bank; its charge in C.
struct CalmEnergy {
    double at_bus = 0.0;
    double charge = 0.0;
    double in_inner = 0.0;
    double in_paths = 0.0;
    double between = 0.0;
    double in_charging = 0.0;
};

struct CalmPoint {
    double voltage = 0.0;
    double current = 0.0;
    double node = 0.0;
    double source = 0.0;
};

class Calm {
  public:
    static constexpr std::size_t width = 4;
    using Lanes [[gnu::vector_size(32)]] = double;
    using Mask [[gnu::vector_size(32)]] = std::int64_t;

    using Face = step::Facing<Lanes, Mask>;  // of a whole group
    struct alignas(32) Block {
        // of the packs; a lane without a pack has count 0
        Lanes count, per_count, resistance, inner, path, coulombic, width, bound, bound_gain;
        Lanes head_gain, rate, per_total, exchange, gives, takes, floor, current_above, cut_off;
        Lanes empty, restored;
        // what charging adds to the resistance, up to a knee of the group's; and from what
        Lanes charging_empty, charging_rise, per_rated, knee;
        Mask stands_above;  // on a piece whose charging voltage stands higher
        Lanes absent;       // minus infinity where there is no pack
        // of the pieces they stand on; infinite ends where there is no piece beyond
        Lanes counted_slope;  // of the available well's, against the tolerance
        Lanes at_zero, slope, low, high, bound_at_zero, bound_slope, bound_low, bound_high;
        // of all packs: charge of each well when full, and the voltage's integral from where the
        // well is empty to there, were the piece as long
        Lanes capacity, at_empty, bound_capacity, bound_at_empty;
        // removed charge between which its efficiency of charging is the one above
        Lanes least_removed, most_removed;
        // state
        Lanes removed, head, available, below, current_now;
        // trial
        Lanes left, once, twice, thrice;
        step::InStep<Lanes, Mask> in_step;
        Face now, mean;
        Mask taking_at_rest, held_at_rest;
    };

    void load(const std::vector<CalmPack>& packs, double shared);

    // The bus at this moment, whatever limits and thresholds are met; false where bank.cpp must
    // look.
    [[nodiscard]] bool meets(double power);
    // Likewise without any power: the voltage at the far end.
    [[nodiscard]] bool rests(double& voltage);
    [[nodiscard]] double stored() const;  // J, of all packs; method.md (15)

    // Whether the bank stands free of every limit and threshold at this power, at this moment.
    [[nodiscard]] bool stands(double power, const CalmLimits& limits);

    enum class Tried {
        done,       // the state has moved on
        too_long,   // beyond the tolerance: nothing has moved; ask for a part of the time
        disturbed,  // something happens: nothing has moved
    };
    //   moved   change of a rested voltage in the time; see Bank::change
    [[nodiscard]] Tried step(double power, double time, double tolerance, const CalmLimits& limits);
    [[nodiscard]] double moved() const { return moved_; }
    [[nodiscard]] const CalmEnergy& energy() const { return energy_; }  // of the last step
    // Largest current of one pack in the last step or at its end.
    [[nodiscard]] double largest() const { return largest_; }
    [[nodiscard]] const CalmPoint& point() const { return point_; }  // of the last asking

    struct Wells {
        double removed, head, available, bound;
    };
    [[nodiscard]] Wells wells(std::size_t pack) const {
        const Block& block = blocks_[pack / width];
        const std::size_t lane = pack % width;
        return {block.removed[lane], block.head[lane], block.available[lane], block.below[lane]};
    }
    [[nodiscard]] double current(std::size_t pack) const;  // of one pack, at point()

    // For who takes the quiet steps of many banks abreast: the first packs as this one has them,
    // and the lowest voltage that those which take charge are held at.
    [[nodiscard]] Block& first_block() { return blocks_.front(); }
    [[nodiscard]] double absorption() const { return absorption_; }
    [[nodiscard]] double removed() const { return removed_; }
    [[nodiscard]] double fill_tolerance() const { return fill_tolerance_; }
    [[nodiscard]] double drift_tolerance() const { return drift_tolerance_; }
    // The wells of the blocks are others now.
    void stands_elsewhere(double removed);

  private:
    // What a processor takes at once; every one gives the same bits.
    enum class AtOnce { two, four };
    template <AtOnce at_once>
    [[nodiscard]] bool meets_as(double power);
    template <AtOnce at_once>
    [[nodiscard]] bool rests_as(double& voltage);
    template <AtOnce at_once>
    [[nodiscard]] double stored_as() const;
    template <AtOnce at_once>
    [[nodiscard]] bool stands_as(double power, const CalmLimits& limits);
    template <AtOnce at_once>
    [[nodiscard]] Tried step_as(double power, double time, double tolerance,
                                const CalmLimits& limits);

    std::vector<Block> blocks_;
    std::size_t packs_ = 0;
    double shared_ = 0.0;
    double absorption_ = 0.0;  // the lowest of those that take
    double fill_tolerance_ = 0.0;
    double drift_tolerance_ = 0.0;
    double removed_ = 0.0;  // from all packs
    double then_removed_ = 0.0;
    double decayed_for_ = -1.0;
    bool at_present_ = false;           // Block::now is of the present state, not of a trial's end
    std::optional<double> solved_for_;  // the power for which it and point_ are, then
    double one_rate_ = -1.0;            // negative where they differ
    bool any_gives_ = true;
    bool any_takes_ = true;
    bool two_wells_ = false;
    bool resists_ = false;        // some meet more than the inner resistance when charged
    bool stands_above_ = false;   // some stand where charging has a curve of its own
    bool one_efficiency_ = true;  // of charging, at every fill
    double moved_ = 0.0;
    double largest_ = 0.0;
    CalmEnergy energy_;
    CalmPoint point_;

    template <Face Block::*face>
    class Abreast;

    void empty_for(const std::vector<CalmPack>& packs, double shared);
    void join(const CalmPack& of);
    [[nodiscard]] bool still(double power) const;
    void decay_for(double time);
    [[nodiscard]] bool solve_mean(double power, double time, CalmPoint& point);
    void stand_at(bool then);
    [[nodiscard]] bool stand_under(double power);
    template <Face Block::*face>
    [[nodiscard]] CalmPoint highest_of_all() const;
    [[nodiscard]] step::Watts<double> asked_of(double power) const;
    [[nodiscard]] bool solve_now(double power, CalmPoint& point);
    [[nodiscard]] bool follow(double power, double time, double tolerance, const CalmPoint& point);
    [[nodiscard]] bool free_of_thresholds(double power, bool then, const CalmPoint& point,
                                          const CalmLimits& limits);
    [[nodiscard]] double lost_between(double time) const;
    [[nodiscard]] CalmEnergy spent(double time, const CalmPoint& mean) const;
    void take(double time, const CalmPoint& mean);
};

}  // namespace battery
