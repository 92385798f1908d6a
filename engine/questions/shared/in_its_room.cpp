#include "questions/shared/in_its_room.hpp"

#include "outage/room.hpp"
#include "scenario/file/file.hpp"

namespace questions {

InItsRoom at_the_coldest(const scenario::ReadScenario& read) {
    InItsRoom made;
    made.scenario =
        outage::at_the_coldest(read.scenario, scenario::folder_of(read.file_name), made.taken);
    return made;
}

InItsRoom at_the_mean_from(units::LocalTime from, const scenario::ReadScenario& read) {
    InItsRoom made;
    made.scenario = outage::at_the_mean_from(from, read.scenario,
                                             scenario::folder_of(read.file_name), made.taken);
    return made;
}

}  // namespace questions
