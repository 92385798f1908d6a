// An answer in a reader's language. All that is said in it is put into words once, so that every
// face shows the same; faces add only words of their own.
#pragma once

#include "answers/answer.hpp"
#include "faces/page.hpp"
#include "words/language.hpp"

namespace faces {

// The same answer, with each of its sayings as finished text of the language. Names, codes and
// numbers stay. In English it is the answer as it was.
[[nodiscard]] answers::Answer spoken(answers::Answer answer, const words::Language& language);
// As this page is to look: in ASCII before it is laid out, so that columns stay below each other.
[[nodiscard]] answers::Answer spoken(answers::Answer answer, const Look& look);

}  // namespace faces
