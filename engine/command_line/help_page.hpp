// The page of --help, as wide as the reader's window.
#pragma once

#include <memory>

namespace CLI {
class FormatterBase;
}

namespace command_line {

//   columns   of the window; less than 40 is taken as 40, more than 100 as 100
[[nodiscard]] std::shared_ptr<CLI::FormatterBase> help_page(int columns);

}  // namespace command_line
