#include "words/identity.hpp"

#include <fmt/format.h>

namespace words {

namespace {

std::string in_full(double value) {
    return fmt::format("{:a}", value);
}

struct Identify {
    std::string& text;

    void operator()(const Name& name) const { text += name.text; }
    void operator()(const Amount& amount) const {
        text += fmt::format("{}:{}:{}:{}:{}", int(amount.dimension), in_full(amount.si),
                            amount.digits, amount.unit, amount.decimals);
    }
    void operator()(const Between& between) const {
        text += fmt::format("{}:{}:{}:{}", int(between.dimension), in_full(between.low),
                            in_full(between.high), between.digits);
    }
    void operator()(const Moment& moment) const {
        text += fmt::format("{}:{}", in_full(moment.since_1970), int(moment.form));
    }
    void operator()(const Count& count) const {
        text += fmt::format("{}:{}", count.number, count.in_words);
    }
    void operator()(const Number& number) const {
        text += fmt::format("{}:{}:{}", in_full(number.value), number.digits, number.decimals);
    }
    void operator()(const Said& said) const { text += identity_of(said); }
    void operator()(const List& list) const {
        text += fmt::format("{}", int(list.joint));
        for (const Said& item : list.items)
            text += identity_of(item);
    }
};

}  // namespace

std::string identity_of(const Said& said) {
    // Lengths keep what follows one another from running together.
    std::string text = fmt::format("{}:{}", said.saying->english.size(), said.saying->english);
    for (const Part& part : said.parts) {
        std::string one;
        std::visit(Identify{one}, part.held());
        text += fmt::format("|{}:{}:{}", part.held().index(), one.size(), one);
    }
    return text;
}

}  // namespace words
