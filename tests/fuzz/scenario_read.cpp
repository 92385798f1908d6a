// Any bytes: reading gives values or errors; what is read prints and reads back; saving keeps the
// file readable.
#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <string_view>

#include "scenario/listing.hpp"
#include "scenario/print.hpp"
#include "scenario/read.hpp"
#include "scenario/save.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const auto saved = scenario::with_value(text, "pack.main.count", "2");
    const auto read = scenario::read_scenario(text, "fuzz.toml", {});
    if (read) {
        (void)scenario::listing(*read);
        if (!scenario::read_scenario(scenario::print(read->scenario), "printed.toml")) {
            std::abort();
        }
    } else if (read.error().empty()) {
        std::abort();
    }
    return 0;
}
