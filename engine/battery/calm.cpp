#include "battery/calm.hpp"

#include <algorithm>
#include <limits>

#include "battery/levels.hpp"

namespace battery {

namespace {

constexpr double never = std::numeric_limits<double>::infinity();
constexpr double at_knot = step::hair_in_bank;
constexpr double least_ohms = step::least_resistance;
using Lanes = step::Four;
alignas(32) constexpr Lanes none{0.0, 0.0, 0.0, 0.0};

// Asked at each call, so that no code runs before the program does.
bool four_at_once() {
#if defined(__x86_64__) && defined(__GNUC__)
    return __builtin_cpu_supports("x86-64-v3");
#else
    return false;
#endif
}

// What the integral of the voltage begins with on this piece, so that it is right above its low
// end.
double at_empty(const OpenCircuit& table, const Piece& piece) {
    const double below = piece.low * (piece.at_zero + 0.5 * piece.slope * piece.low);
    return table.integral(units::StateOfCharge(piece.low)) / units::volt - below;
}

// What a pack may come to in a quiet step: its available well no lower than this, its current no
// larger.
struct Floor {
    double empty = 0.0;  // V, rested
    double current_above = 0.0;
};

// The cold locks more the faster the pack is drawn. Once it stands where the fastest draw would
// find it empty it is held to a gentle one, for which most of that is still there. The rate is
// chosen: a few packs under the loads of a house seldom pass it.
Floor floor_of(const Prepared& pack, const WellState& state) {
    constexpr double gentle_rate = 0.1 / 3600.0;  // of the charge, 1/s
    if (!pack.locks_by_rate || rested_voltage(pack, state) > pack.empty_voltage)
        return {.empty = pack.empty_voltage, .current_above = pack.current_above};
    const double gentle = gentle_rate * pack.total;
    return {.empty = empty_level(pack, gentle),
            .current_above = std::min(pack.current_above, gentle)};
}

// Lanes without a pack: they meet nothing and carry nothing.
Calm::Block without_packs() {
    Calm::Block block{};
    block.resistance = block.coulombic = none + 1.0;
    block.current_above = block.high = block.bound_high = none + never;
    block.cut_off = block.empty = block.restored = none - never;
    block.absent = none - never;
    block.knee = none + never;
    block.available = block.below = none + 1.0;  // what is not there fills nothing
    block.low = block.bound_low = block.least_removed = none - never;
    block.most_removed = none + never;
    return block;
}

bool takes_charge(const CalmPack& of) {
    return of.takes && of.pack.charge_floor < 0.0;
}

bool charges_above(const Piece& piece) {
    return piece.above_at_zero != 0.0 || piece.steeper != 0.0;
}

// What stays as it is however full the pack is.
void put_pack(Calm::Block& block, std::size_t lane, const CalmPack& of) {
    const Prepared& pack = of.pack;
    block.absent[lane] = 0.0;
    block.count[lane] = of.count;
    block.per_count[lane] = 1.0 / of.count;
    block.resistance[lane] = pack.resistance;
    block.inner[lane] = pack.inner;
    block.path[lane] = pack.path;
    block.charging_empty[lane] = pack.charging_empty;
    block.charging_rise[lane] = pack.charging_rise;
    block.per_rated[lane] = pack.per_rated;
    block.in_step.added.up_to_knee.value[lane] = 0.0;
    block.knee[lane] = pack.resists ? of.count * pack.charging_knee : never;
    block.width[lane] = pack.width;
    block.bound[lane] = pack.bound;
    block.bound_gain[lane] = pack.bound_gain;
    block.head_gain[lane] = pack.head_gain;
    block.rate[lane] = pack.rate;
    block.per_total[lane] = pack.per_total;
    block.exchange[lane] = pack.exchange;
    block.capacity[lane] = of.count * pack.total * pack.width;
    block.bound_capacity[lane] = of.count * pack.total * pack.bound;
}

// Which way current may pass, and how easily.
void put_ways(Calm::Block& block, std::size_t lane, const CalmPack& of) {
    block.gives[lane] = of.gives ? of.count : 0.0;
    block.takes[lane] = takes_charge(of) ? of.count : 0.0;
    auto& meets = block.now.meets;
    meets.in_ohms.value[lane] = std::max(least_ohms, of.pack.resistance);
    meets.giving.value[lane] = block.gives[lane] / meets.in_ohms.value[lane];
    meets.receiving.value[lane] = block.takes[lane] / meets.in_ohms.value[lane];
    if (!of.gives)
        block.now.way.taking[lane] = block.mean.way.taking[lane] = block.taking_at_rest[lane] = -1;
}

// What ends the calm.
void put_limits(Calm::Block& block, std::size_t lane, const CalmPack& of) {
    const Floor floor = floor_of(of.pack, of.state);
    block.floor[lane] = of.pack.charge_floor;
    block.current_above[lane] = floor.current_above;
    block.cut_off[lane] = of.pack.pack_cut_off > 0.0 ? of.pack.pack_cut_off : -never;
    block.empty[lane] = floor.empty;
    block.restored[lane] = of.restored_below;
}

// The pieces that the wells stand on, and the one of the efficiency of charging.
void put_pieces(Calm::Block& block, std::size_t lane, const CalmPack& of) {
    const Prepared& pack = of.pack;
    const WellState& state = of.state;
    const int last = pack.open_circuit->pieces() - 1;
    const Piece& piece = pack.open_circuit->piece(state.available_piece);
    const Piece& beneath = pack.open_circuit->piece(state.bound_piece);
    const double hair = at_knot * pack.total;
    block.coulombic[lane] = coulombic(pack, state);
    block.least_removed[lane] = next_charging_piece(pack, state) - hair;
    block.most_removed[lane] = pack.coulombic_edge[state.charging_piece] + hair;
    block.stands_above[lane] = charges_above(piece) ? -1 : 0;
    block.at_zero[lane] = piece.at_zero;
    block.slope[lane] = piece.slope;
    block.counted_slope[lane] = counted_slope(pack, piece);
    block.low[lane] = state.available_piece > 0 ? piece.low - at_knot : -never;
    block.high[lane] = state.available_piece < last ? piece.high + at_knot : never;
    block.bound_at_zero[lane] = beneath.at_zero;
    block.bound_slope[lane] = beneath.slope;
    const bool deep = pack.bound > 0.0;
    block.bound_low[lane] = deep && state.bound_piece > 0 ? beneath.low - at_knot : -never;
    block.bound_high[lane] = deep && state.bound_piece < last ? beneath.high + at_knot : never;
    block.at_empty[lane] = at_empty(*pack.open_circuit, piece);
    block.bound_at_empty[lane] = at_empty(*pack.open_circuit, beneath);
}

void put_wells(Calm::Block& block, std::size_t lane, const WellState& state) {
    block.removed[lane] = state.removed;
    block.head[lane] = state.head;
    block.available[lane] = state.available;
    block.below[lane] = state.bound;
}

}  // namespace

// As a bank that nobody has joined yet.
void Calm::empty_for(const std::vector<CalmPack>& packs, double shared) {
    packs_ = packs.size();
    shared_ = shared;
    const std::size_t blocks = (packs_ + width - 1) / width;
    if (blocks_.size() != blocks) blocks_.resize(blocks, without_packs());
    absorption_ = never;
    removed_ = 0.0;
    any_gives_ = any_takes_ = two_wells_ = resists_ = stands_above_ = false;
    one_efficiency_ = true;
    one_rate_ = packs.front().pack.rate;
    fill_tolerance_ = packs.front().pack.fill_tolerance;
    drift_tolerance_ = packs.front().pack.drift_tolerance;
    decayed_for_ = -1.0;
    at_present_ = false;
    solved_for_.reset();
}

// What is so for the bank as soon as it is so for one of its packs.
void Calm::join(const CalmPack& of) {
    const Prepared& pack = of.pack;
    const bool takes = takes_charge(of);
    one_efficiency_ = one_efficiency_ && pack.coulombic_edge[1] == -never;
    resists_ = resists_ || pack.resists;
    stands_above_ =
        stands_above_ || charges_above(pack.open_circuit->piece(of.state.available_piece));
    if (takes) absorption_ = std::min(absorption_, pack.absorption);
    any_gives_ = any_gives_ || of.gives;
    any_takes_ = any_takes_ || takes;
    two_wells_ = two_wells_ || pack.bound > 0.0;
    if (pack.rate != one_rate_) one_rate_ = -1.0;
    removed_ += of.count * of.state.removed;
}

void Calm::load(const std::vector<CalmPack>& packs, double shared) {
    empty_for(packs, shared);
    for (std::size_t i = 0; i < packs_; ++i) {
        Block& block = blocks_[i / width];
        const std::size_t lane = i % width;
        put_pack(block, lane, packs[i]);
        put_ways(block, lane, packs[i]);
        put_limits(block, lane, packs[i]);
        put_pieces(block, lane, packs[i]);
        put_wells(block, lane, packs[i].state);
        join(packs[i]);
    }
}

void Calm::stands_elsewhere(double removed) {
    removed_ = removed;
    at_present_ = false;
    solved_for_.reset();
}

double Calm::current(std::size_t pack) const {
    return blocks_[pack / width].current_now[pack % width];
}

bool Calm::meets(double power) {
    return four_at_once() ? meets_as<AtOnce::four>(power) : meets_as<AtOnce::two>(power);
}

bool Calm::rests(double& voltage) {
    return four_at_once() ? rests_as<AtOnce::four>(voltage) : rests_as<AtOnce::two>(voltage);
}

double Calm::stored() const {
    return four_at_once() ? stored_as<AtOnce::four>() : stored_as<AtOnce::two>();
}

bool Calm::stands(double power, const CalmLimits& limits) {
    return four_at_once() ? stands_as<AtOnce::four>(power, limits)
                          : stands_as<AtOnce::two>(power, limits);
}

Calm::Tried Calm::step(double power, double time, double tolerance, const CalmLimits& limits) {
    return four_at_once() ? step_as<AtOnce::four>(power, time, tolerance, limits)
                          : step_as<AtOnce::two>(power, time, tolerance, limits);
}

}  // namespace battery
