# Writes swaps.toml as a C++ string.
file(READ ${INPUT} text)
file(WRITE ${OUTPUT} "// Made from swaps.toml.\n#include \"fitting/swaps_text.hpp\"\n\nnamespace fitting {\n\nconst std::string_view swaps_text = R\"swaps(${text})swaps\";\n\n}  // namespace fitting\n")
