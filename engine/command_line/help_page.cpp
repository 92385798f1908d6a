#include "command_line/help_page.hpp"

#include <algorithm>

#include <CLI/CLI.hpp>

#include "faces/page.hpp"

namespace command_line {

namespace {

constexpr int name_of_an_option = 28;  // columns, the two before it counted
constexpr int name_of_a_question = 11;
constexpr int least_beside = 34;  // columns for the words beside a name; else they go below it

// A name and what it means: beside it, or below where it is long or the page narrow.
std::string entry(const std::string& name, const std::string& means, int column, int width) {
    const std::string set_in = "  " + name;
    if (means.empty()) return faces::fitted(set_in, width);
    const bool narrow = width - column < least_beside && column > name_of_a_question;
    const int indent = narrow ? 6 : column;
    const bool below = faces::width_of(set_in) + 2 > indent;
    std::string text = below ? faces::fitted(set_in, width) : std::string();
    for (const auto& line :
         faces::wrapped(means, width, faces::padded(below ? std::string() : set_in, indent)))
        text += line + "\n";
    return text;
}

class HelpPage : public CLI::Formatter {
  public:
    explicit HelpPage(int width) : width_(width) {}

    std::string make_option(const CLI::Option* option, bool is_positional) const override {
        return entry(make_option_name(option, is_positional) + make_option_opts(option),
                     make_option_desc(option), name_of_an_option, width_);
    }
    std::string make_subcommand(const CLI::App* command) const override {
        return entry(command->get_name(), command->get_description(), name_of_a_question, width_);
    }
    std::string make_description(const CLI::App* command) const override {
        return faces::fitted(CLI::Formatter::make_description(command), width_);
    }
    std::string make_usage(const CLI::App* command, std::string name) const override {
        return faces::fitted(CLI::Formatter::make_usage(command, std::move(name)), width_);
    }
    std::string make_footer(const CLI::App* command) const override {
        return faces::fitted(CLI::Formatter::make_footer(command), width_);
    }

  private:
    int width_;
};

}  // namespace

std::shared_ptr<CLI::FormatterBase> help_page(int columns) {
    return std::make_shared<HelpPage>(std::clamp(columns, faces::narrowest_page, 100));
}

}  // namespace command_line
