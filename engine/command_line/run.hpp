// The command line as a function: arguments in; texts and an exit status out.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "units/result.hpp"
#include "units/time.hpp"

namespace command_line {

// Exit status; scripts rely on these numbers.
enum class Status {
    answered = 0,  // nothing stands in the way
    stop = 1,      // answered, and at least one finding is a stop
    unusable = 2,  // the arguments or the file cannot be used
    defect = 3,    // a fault of the program, or not enough memory
};

// What the program finds around it.
struct Surroundings {
    std::function<units::Result<std::string>()> standard_input;
    int columns = 80;         // of the terminal
    bool utf8 = false;        // the locale's characters
    std::string locale = {};  // of messages, such as "de_AT.UTF-8"
    bool colour = false;      // standard output is a terminal and NO_COLOR is not set
    std::function<bool(double)> progress = {};  // told the share done; false stops it
    // Takes each line of many answers as it comes; false where nobody reads on. Without it they
    // are kept for the end.
    std::function<bool(std::string_view)> line = {};
    std::optional<units::LocalTime> clock = {};  // local standard time
    // Cuts standard output to so many bytes where it is the file of that name.
    std::function<void(const std::string&, std::size_t)> cut_output = {};
};

struct Outcome {
    Status status = Status::answered;
    std::string output = {};  // for standard output
    std::string errors = {};  // for standard error
};

// What is said where memory ends, a whole line.
inline constexpr std::string_view not_enough_memory =
    "candlemark: not enough memory for this; ask for less (fewer weathers, packs, panels or "
    "threads), or give the program more.\n";

//   takes   the arguments without the program's name
[[nodiscard]] Outcome run(const std::vector<std::string>& arguments, const Surroundings& around);

}  // namespace command_line
