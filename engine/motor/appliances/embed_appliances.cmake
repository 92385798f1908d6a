# Writes appliances.toml as a C++ string.
file(READ ${INPUT} text)
file(CONFIGURE OUTPUT ${OUTPUT} @ONLY CONTENT [=[
// Made from appliances.toml.
#include "motor/appliances/appliances_text.hpp"

namespace motor {

const std::string_view appliances_text = R"appliances(@text@)appliances";

}  // namespace motor
]=])
