// A scenario for questions of one moment, which know one temperature alone: that of packs that
// follow their room is fixed and told. outage/room.hpp
#pragma once

#include "answers/answer.hpp"
#include "scenario/read.hpp"

namespace command_line {

class InItsRoom {
  public:
    static InItsRoom at_the_coldest(const scenario::ReadScenario& read);
    static InItsRoom at_the_mean_from(units::LocalTime from, const scenario::ReadScenario& read);

    [[nodiscard]] const scenario::Scenario& scenario() const { return scenario_; }
    // The answer with what was taken for the room.
    [[nodiscard]] answers::Answer told_in(answers::Answer answer) const;

  private:
    scenario::Scenario scenario_;
    scenario::Assumptions taken_;
};

}  // namespace command_line
