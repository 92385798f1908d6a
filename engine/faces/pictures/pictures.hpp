// Every picture of an answer as a drawing.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "answers/answer.hpp"
#include "answers/exhibits.hpp"
#include "faces/pictures/drawing.hpp"
#include "words/language.hpp"

namespace faces {

// In the language, whatever the answer is spoken in. Nothing for a kind that no drawing shows. The
// title of the scenario is in the drawing's.
[[nodiscard]] std::optional<Drawing> drawing_of(const answers::Exhibit& exhibit,
                                                const answers::Answer& answer,
                                                const words::Language& language = words::english());

// All but the wiring, which is a drawing of a size of its own (wiring_svg.hpp), in the order they
// are to be seen.
[[nodiscard]] std::vector<Drawing> drawings_of(const answers::Answer& answer,
                                               const words::Language& language = words::english());

// All of them, under each other; empty where the answer has no picture.
[[nodiscard]] std::string in_svg(const answers::Answer& answer,
                                 const words::Language& language = words::english());

}  // namespace faces
