// A person's line as words, each of which must find a meaning.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace notes {

struct Word {
    std::string written;  // as typed, without a comma or full stop behind it
    std::string plain;    // in small letters
    bool taken = false;   // it has a meaning
};

class Words {
  public:
    explicit Words(std::string_view line);

    [[nodiscard]] std::size_t size() const { return words_.size(); }
    [[nodiscard]] bool is_free(std::size_t at) const {
        return at < words_.size() && !words_[at].taken;
    }
    // In small letters; empty where there is no such word or it is taken.
    [[nodiscard]] std::string_view plain(std::size_t at) const;
    [[nodiscard]] const std::string& written(std::size_t at) const { return words_[at].written; }

    void take(std::size_t at, std::size_t count = 1);
    // Where these words stand one after the other, all free.
    [[nodiscard]] std::optional<std::size_t> find(const std::vector<std::string>& phrase) const;
    // Takes the phrase where it stands, "switched off" as two words.
    bool take_phrase(std::string_view phrase);
    // Takes all of these wherever they stand.
    void take_all(const std::vector<std::string_view>& words);

    // What nobody took, as typed.
    [[nodiscard]] std::vector<std::string> left() const;

  private:
    std::vector<Word> words_;
};

// In small letters; other bytes than A to Z stay.
[[nodiscard]] std::string small_letters(std::string_view text);
[[nodiscard]] std::vector<std::string> split(std::string_view text);

}  // namespace notes
