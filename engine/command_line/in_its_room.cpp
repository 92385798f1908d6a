#include "command_line/in_its_room.hpp"

#include "outage/room.hpp"
#include "scenario/file.hpp"

namespace command_line {

InItsRoom InItsRoom::at_the_coldest(const scenario::ReadScenario& read) {
    InItsRoom made;
    made.scenario_ =
        outage::at_the_coldest(read.scenario, scenario::folder_of(read.file_name), made.taken_);
    return made;
}

InItsRoom InItsRoom::at_the_mean_from(units::LocalTime from, const scenario::ReadScenario& read) {
    InItsRoom made;
    made.scenario_ = outage::at_the_mean_from(from, read.scenario,
                                              scenario::folder_of(read.file_name), made.taken_);
    return made;
}

answers::Answer InItsRoom::told_in(answers::Answer answer) const {
    answer.assumptions.insert(answer.assumptions.end(), taken_.begin(), taken_.end());
    return answer;
}

}  // namespace command_line
