// What one language says for each saying. Its files under languages/ are compiled into the program.
#pragma once

#include <cstdint>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "words/saying.hpp"

namespace words {

class Catalogue {
  public:
    // The texts of a language's files, one of which says what language it is:
    //     [language]
    //     code = "de"
    //     name = "Deutsch"
    //     decimal_mark = ","
    //     plural = "one, other"     # or "zero and one, other", or "other" where words do not change
    //     [[say]]
    //     english = "{n} pack"
    //     many = "{n} packs"
    //     as = ["{n} Pack", "{n} Packs"]
    // Faults are collected; what is faulty is left out.
    [[nodiscard]] static Catalogue read(const std::vector<std::string_view>& texts);

    struct Entry {
        std::string many;             // the English for many, as the file has it
        std::vector<std::string> as;  // a form of each plural of the language, or one for all
    };

    [[nodiscard]] std::string_view code() const { return code_; }
    [[nodiscard]] std::string_view name() const { return name_; }
    [[nodiscard]] std::string_view decimal_mark() const { return decimal_mark_; }
    [[nodiscard]] std::string_view plural() const { return plural_; }
    [[nodiscard]] const std::vector<std::string>& faults() const { return faults_; }
    // By the English of the saying.
    [[nodiscard]] const std::map<std::string, Entry, std::less<>>& entries() const {
        return entries_;
    }

    // The template for so many, or an empty text where there is none.
    [[nodiscard]] std::string_view text_of(const Saying& saying, std::int64_t number) const;

  private:
    std::string code_;
    std::string name_;
    std::string decimal_mark_ = ".";
    std::string plural_ = "one, other";
    std::map<std::string, Entry, std::less<>> entries_;
    std::vector<std::string> faults_;

    void add(std::string_view text);
    [[nodiscard]] std::size_t form_of(std::int64_t number) const;
};

// Of the compiled-in files; nullptr where there is none of this code.
[[nodiscard]] const Catalogue* catalogue_of(std::string_view code);
[[nodiscard]] std::vector<std::string_view> catalogue_codes();

}  // namespace words
