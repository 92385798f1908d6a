#include "support/print_quantities.hpp"

#include "support/in_english.hpp"

namespace units {

void PrintTo(const Error& error, std::ostream* out) {
    *out << error.file << ":" << error.line << ": " << error.where << ": " << error.found << "; "
         << error.remedy;
}

}  // namespace units
