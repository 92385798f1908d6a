// The members: one value of everything that is not known each, drawn as the plan draws them and
// moved by the meters of single loads in closed form. method.md (2)
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "chance/world.hpp"
#include "estimate/likelihood.hpp"
#include "estimate/meters.hpp"
#include "estimate/weighing/matrix.hpp"
#include "scenario/scenario.hpp"

namespace estimate {

//   values   one a member: of each name, as chance::Values has them
//   own      likewise
//   weights  sum to 1
//   rounds   in which they were moved to where the readings put them
struct Members {
    std::vector<std::string> names;
    std::vector<std::vector<double>> values;
    std::vector<OwnErrors> own;
    std::vector<double> weights;
    int rounds = 0;

    [[nodiscard]] double effective() const;
    [[nodiscard]] bool are_alike() const;  // all of one weight
};

// All that is not known: the names of the world, then the errors that meters and tables have of
// their own. Each has a score, normally spread with deviation 1 as long as nothing is read; of a
// load with a meter, once that is read.
class Unknowns {
  public:
    //   meters   in the order of their times
    Unknowns(const scenario::Scenario& scenario, const chance::World& world,
             const std::vector<Metered>& meters);

    //   scores   by member, by unknown
    struct Drawn {
        Members members;
        Matrix scores;
    };
    // Members of the plan.
    //   first, blocks   of 64 members
    [[nodiscard]] Drawn drawn(std::uint64_t seed, int first, int blocks) const;

    // Gives a member these scores, of the unknowns at these places; all others stay to the last
    // bit.
    void put(Members& members, std::size_t member, const double* scores,
             const std::vector<std::size_t>& places) const;

    // Members with these scores.
    //   scores   by member, of all unknowns
    [[nodiscard]] Members with(const Matrix& scores) const;

    [[nodiscard]] std::size_t count() const;

  private:
    // How the score of a metered load becomes that of its draw.
    struct OfMeter {
        std::size_t place = 0;
        Normal after;
        chance::Sides sides;
    };

    std::vector<std::string> names_;
    std::vector<OfMeter> metered_;

    [[nodiscard]] double value_at(std::size_t place, double score) const;
    [[nodiscard]] const OfMeter* meter_of(std::size_t place) const;
};

// The values of these members for another world of the same scenario, by name.
[[nodiscard]] std::vector<std::vector<double>> values_for(const chance::World& world,
                                                          const Members& members);

}  // namespace estimate
