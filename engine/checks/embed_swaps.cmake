# Writes swaps.toml as a C++ string.
file(READ ${INPUT} text)
file(WRITE ${OUTPUT} "// Made from swaps.toml.\n#include \"checks/swaps_text.hpp\"\n\nnamespace checks {\n\nconst std::string_view swaps_text = R\"swaps(${text})swaps\";\n\n}  // namespace checks\n")
