// Files that a scenario names, such as hours of weather. A scenario may come from anybody, so what
// it names is looked for beside it; elsewhere only where the person at the machine says so.
#pragma once

#include <string>
#include <vector>

#include "units/result.hpp"

namespace scenario {

// As long as this lives, files that scenarios name may also lie in these folders, or below them, or
// be these very files. A fact of the running program, as its working folder is; from any thread.
class AlsoAllowed {
  public:
    explicit AlsoAllowed(std::vector<std::string> paths);
    AlsoAllowed(const AlsoAllowed&) = delete;
    AlsoAllowed& operator=(const AlsoAllowed&) = delete;
    ~AlsoAllowed();

  private:
    std::vector<std::string> paths_;
};

// Where the file lies.
//   name    as the scenario has it; one that is not a whole path is looked for in `folder`, then in
//           the folders that are allowed as well
//   folder  of the scenario; empty: the working folder
//   key     of the scenario, for errors
//   fails   when the file, with its links followed, lies in none of these, or there is none
// What lies outside is not touched, so that a name alone reaches no other machine and no device.
[[nodiscard]] units::Result<std::string> path_of_named_file(const std::string& name,
                                                            const std::string& folder,
                                                            const std::string& key);

}  // namespace scenario
