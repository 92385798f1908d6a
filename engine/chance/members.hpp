// The members of a chance: the same for every question that is asked of a scenario, and how the
// outage ends for each. method.md (1) to (4)
#pragma once

#include <cstdint>
#include <vector>

#include "chance/draw.hpp"
#include "chance/figures.hpp"
#include "chance/world.hpp"
#include "outage/course.hpp"

namespace chance {

struct MemberEnd {
    units::Duration lasts{};
    bool survives = false;
    outage::LimitedBy limited_by = outage::LimitedBy::none;

    friend bool operator==(const MemberEnd&, const MemberEnd&) = default;
};

// The unit and its loads, as they are asked about.
//   packs    all kinds together, as outage::with_count takes it
//   panels   as outage::with_panels takes it
struct Asked {
    int packs = 1;
    int panels = 0;
    SwitchedOff off = {};
};

// As the scenario has them, with everything on.
[[nodiscard]] Asked as_it_is(const World& world);

[[nodiscard]] MemberEnd end_in(const outage::Course& course);

class Members {
  public:
    //   blocks   of 64 members, at least one; more of them begin with the same ones
    Members(World world, std::uint64_t seed, int blocks);

    [[nodiscard]] int count() const { return blocks_ * lanes; }
    [[nodiscard]] int blocks() const { return blocks_; }
    [[nodiscard]] const World& world() const { return world_; }

    // Of member `number`, from 0.
    [[nodiscard]] Values values(int number) const;

    // The same with these unknowns drawn anew, by their places in names().
    [[nodiscard]] std::vector<double> redrawn(int number,
                                              const std::vector<std::size_t>& places) const;

    // By the clock: what faster ways must give to the last bit.
    [[nodiscard]] MemberEnd end_of(int number, const Asked& asked) const;

    //   gives     one a member, the same to the last bit for any number of threads
    //   threads   0 takes as many as the machine has
    [[nodiscard]] std::vector<MemberEnd> ends(const Asked& asked, unsigned threads = 0) const;

    // The chance alone, as in `figures`.
    [[nodiscard]] double share_that_outlasts(const std::vector<MemberEnd>& ends) const;

    [[nodiscard]] Figures figures(const std::vector<MemberEnd>& ends,
                                  units::Probability goal) const;

  private:
    World world_;
    std::uint64_t seed_;
    int blocks_;
    std::vector<double> values_;  // member by member

    [[nodiscard]] std::vector<Outcome> outcomes(const std::vector<MemberEnd>& ends) const;
};

// What ends most of those that end early; none where nothing is of the majority.
[[nodiscard]] outage::LimitedBy mostly_limited_by(const std::vector<MemberEnd>& ends);

}  // namespace chance
