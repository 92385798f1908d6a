# Writes the text of places.csv as a C++ array of characters: no limit on the length of a literal,
# no quoting.
file(READ ${INPUT} bytes HEX)
string(REGEX REPLACE "([0-9a-f][0-9a-f])" "0x\\1," bytes "${bytes}")
string(REGEX REPLACE "((0x[0-9a-f][0-9a-f],){24})" "\\1\n" bytes "${bytes}")
file(WRITE ${OUTPUT} "// Made from places.csv by embed_places.cmake.
#include <string_view>

namespace solar {

extern const std::string_view places_text;

namespace {
constexpr unsigned char bytes[] = {
${bytes}};
}  // namespace

const std::string_view places_text{reinterpret_cast<const char*>(bytes), sizeof bytes};

}  // namespace solar
")
