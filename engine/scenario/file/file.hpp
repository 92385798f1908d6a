// The bytes of a file, read whole.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "scenario/file/document.hpp"
#include "units/result.hpp"

namespace scenario {

// What a file is read as: how large it may be, and the words when it cannot be that.
struct WantedFile {
    std::size_t largest = largest_file;  // bytes
    words::Said usual = words::said<"a scenario file has a few thousand">();
    words::Said remedy = words::said<"give a scenario file, such as outage.toml">();
};

// Every file of a person is read here.
//   fails   when the file is missing, not readable or too large, or when it is, behind its links,
//           a folder, a pipe, a socket or a device: those are not even opened
[[nodiscard]] units::Result<std::string> bytes_of_file(const std::string& path,
                                                       const WantedFile& wanted = {});

// The folder a file lies in, against which paths inside it are taken; "." for a bare name.
[[nodiscard]] std::string folder_of(const std::string& path);

}  // namespace scenario
