# Writes the tables of this folder as C++ strings, one variable a file.
set(body "")
foreach(name IN ITEMS conductors ampacity fuses connectors)
    file(READ ${FOLDER}/${name}.toml text)
    string(APPEND body "const std::string_view ${name}_text = R\"table(${text})table\";\n\n")
endforeach()
file(WRITE ${OUTPUT} "// Made from the tables of engine/wiring.\n#include \"wiring/tables_text.hpp\"\n\nnamespace wiring {\n\n${body}}  // namespace wiring\n")
