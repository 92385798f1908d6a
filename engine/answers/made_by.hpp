// What an answer that is kept was made from, so that it can be made again: the program, what it was
// asked, and the content of the files it read.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace answers {

struct MadeBy {
    struct File {
        std::string name;    // as it was given; "standard input" where it came from there
        std::string sha256;  // of its bytes, 64 hexadecimal digits, as sha256sum prints them
    };
    std::string version;                 // of this program: "0.1.0"
    std::vector<std::string> arguments;  // as they were given, the question first
    std::uint64_t seed = 1;              // of the weathers, given or not
    std::vector<File> files = {};        // the scenario, then what it names
};

}  // namespace answers
