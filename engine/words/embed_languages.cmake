# Writes the files of languages/<code>/ as C++ strings.
set(texts)
file(GLOB files ${INPUT}/*/*.toml)
foreach(file IN LISTS files)
    get_filename_component(folder ${file} DIRECTORY)
    get_filename_component(code ${folder} NAME)
    file(READ ${file} text)
    string(APPEND texts "    {\"${code}\", R\"language(${text})language\"},\n")
endforeach()
file(CONFIGURE OUTPUT ${OUTPUT} @ONLY CONTENT [=[
// Made from the files of languages/.
#include "words/languages.hpp"

namespace words {

namespace {

constexpr LanguageText texts[] = {
@texts@};

}  // namespace

std::span<const LanguageText> language_texts() {
    return texts;
}

}  // namespace words
]=])
