// The one way in which a person's file is written: scenarios, kept work, versions, looks, paper,
// exports. At every moment, whatever fails, the file is whole: as it was, or as it is to be.
#pragma once

#include <string>
#include <string_view>
#include <variant>

#include "units/result.hpp"

namespace scenario {

// How a saving ended. In all but `saved` and `unsettled` the file is byte for byte as it was.
enum class SaveEnd {
    saved,            // the file holds the bytes, and the disk has said so
    changed_outside,  // the file holds something else than it was known to hold
    no_folder,
    not_allowed,      // the folder may not be written to, or is on a disk that is only read
    write_protected,  // the file itself
    not_a_plain_file,
    held,       // another program is writing it and did not let go
    no_room,    // the disk or the quota is full
    too_large,  // beyond what a file may have here
    out_of_memory,
    unsettled,  // the file holds the bytes, but the disk did not say that they stay
    failed
};

struct Saving {
    SaveEnd end = SaveEnd::failed;
    int error = 0;  // the system's number, as errno; zero where there is none

    [[nodiscard]] bool saved() const { return end == SaveEnd::saved; }
};

// Writes a new file beside the old one, has the disk confirm it, reads it back, and renames it into
// place. A link stays a link; permissions stay. A file that is not there is made as the process
// makes files.
[[nodiscard]] Saving save_bytes(const std::string& path, std::string_view bytes) noexcept;

// The same, unless the file is there and holds neither what it is known to hold nor the new bytes.
// Two programs that save by this function never write over each other's text.
[[nodiscard]] Saving save_bytes_over(const std::string& path, std::string_view known,
                                     std::string_view bytes) noexcept;

// Why a file was not saved, for an end that is not `saved`.
[[nodiscard]] units::Error not_saved(const std::string& path, const Saving& saving);

// save_bytes in words.
//   fails   when the file was not saved, with the reason; the file is then as it was
[[nodiscard]] units::Result<std::monostate> save_file(const std::string& path,
                                                      std::string_view text);

}  // namespace scenario
