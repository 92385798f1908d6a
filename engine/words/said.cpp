#include "words/said.hpp"

#include <iterator>

#include "words/language.hpp"

namespace words {

Said::Said() : saying(&words::saying<"">) {}
Said::Said(std::string as_it_is) : saying(&words::saying<"{text}">) {
    if (as_it_is.empty()) {
        saying = &words::saying<"">;
        return;
    }
    parts.emplace_back(Name{std::move(as_it_is)});
}
Said::Said(const Saying& what, std::vector<Part> with) : saying(&what), parts(std::move(with)) {}
Said::Said(const Said&) = default;
Said::Said(Said&&) noexcept = default;
Said& Said::operator=(const Said&) = default;
Said& Said::operator=(Said&&) noexcept = default;
Said::~Said() = default;

Part::Part() = default;
Part::Part(const Part&) = default;
Part::Part(Part&&) noexcept = default;
Part& Part::operator=(const Part&) = default;
Part& Part::operator=(Part&&) noexcept = default;
Part::~Part() = default;

Said said_of_parts(const Saying& saying, Part* parts, std::size_t count) {
    return {saying, std::vector<Part>(std::make_move_iterator(parts),
                                      std::make_move_iterator(parts + count))};
}

bool Said::empty() const {
    return saying == &words::saying<"">;
}

Said::operator std::string() const {
    return in(english(), *this);
}

bool operator==(const Said& a, const Said& b) {
    return a.saying == b.saying && a.parts == b.parts;
}

bool operator==(const List& a, const List& b) {
    return a.joint == b.joint && a.items == b.items;
}

Said as_sentence(Said clause) {
    if (clause.empty()) return clause;
    return said<"{^text}.">(std::move(clause));
}

Said joined(std::vector<Said> items, List::Joint joint) {
    std::erase_if(items, [](const Said& item) { return item.empty(); });
    if (items.empty()) return {};
    if (items.size() == 1) return std::move(items.front());
    return said<"{text}">(List{.items = std::move(items), .joint = joint});
}

Said together(std::vector<Said> sentences) {
    return joined(std::move(sentences), List::Joint::space);
}

}  // namespace words
