#include "words/catalogue.hpp"

#include <cstdint>

#include <fmt/format.h>

#include "words/languages.hpp"
#include "words/toml.hpp"

namespace words {

namespace {

std::string string_at(const toml::table& table, std::string_view key) {
    return table[key].value_or(std::string());
}

// Each template of the language names the same parts as the English; one may be left out, as "one
// pack" does.
bool same_parts(std::string_view english, std::string_view many, const std::string& as) {
    const PartNames all = names_in(many.empty() ? english : many);
    const PartNames own = names_in(as);
    return own.well_formed && names_of_one_are_known(own, all) &&
           (own.count == all.count || (!many.empty() && own.count + 1 == all.count));
}

// The forms of an entry: one text, or a list of them.
std::vector<std::string> forms_of(const toml::table& say) {
    std::vector<std::string> forms;
    if (const auto one = say["as"].value<std::string>()) forms.push_back(*one);
    if (const toml::array* several = say["as"].as_array()) {
        for (const toml::node& form : *several)
            forms.push_back(form.value_or(std::string()));
    }
    return forms;
}

}  // namespace

Catalogue Catalogue::read(const std::vector<std::string_view>& texts) {
    Catalogue catalogue;
    for (const std::string_view text : texts)
        catalogue.add(text);
    return catalogue;
}

void Catalogue::add(std::string_view text) {
    toml::table file;
    try {
        file = toml::parse(text);
    } catch (const toml::parse_error& error) {
        faults_.push_back(
            fmt::format("line {}: {}", error.source().begin.line, error.description()));
        return;
    }
    if (const toml::table* head = file["language"].as_table()) {
        code_ = string_at(*head, "code");
        name_ = string_at(*head, "name");
        decimal_mark_ = (*head)["decimal_mark"].value_or(decimal_mark_);
        plural_ = (*head)["plural"].value_or(plural_);
    }
    const toml::array* says = file["say"].as_array();
    if (says == nullptr) return;
    for (const toml::node& node : *says) {
        const toml::table* say = node.as_table();
        if (say == nullptr) continue;
        const std::string english = string_at(*say, "english");
        Entry entry{.many = string_at(*say, "many"), .as = forms_of(*say)};
        const auto fault = [&](std::string_view why) {
            faults_.push_back(
                fmt::format("line {}: \"{}\": {}", say->source().begin.line, english, why));
        };
        const bool fits = std::ranges::all_of(entry.as, [&](const std::string& form) {
            return same_parts(english, entry.many, form);
        });
        if (entry.as.empty()) {
            fault("says nothing");
        } else if (!fits) {
            fault("has other parts than the English");
        } else if (!entries_.emplace(english, std::move(entry)).second) {
            fault("is there twice");
        }
    }
}

std::size_t Catalogue::form_of(std::int64_t number) const {
    if (plural_ == "other") return 0;
    if (plural_ == "zero and one, other") return number == 0 || number == 1 ? 0 : 1;
    return number == 1 ? 0 : 1;
}

std::string_view Catalogue::text_of(const Saying& saying, std::int64_t number) const {
    const auto found = entries_.find(saying.english);
    if (found == entries_.end() || found->second.many != saying.many) return {};
    const auto& forms = found->second.as;
    return forms[std::min(form_of(number), forms.size() - 1)];
}

namespace {

const std::vector<Catalogue>& catalogues() {
    static const std::vector<Catalogue> all = [] {
        std::vector<Catalogue> read;
        std::map<std::string_view, std::vector<std::string_view>> files;
        for (const LanguageText& file : language_texts())
            files[file.code].push_back(file.text);
        for (const auto& [code, texts] : files)
            read.push_back(Catalogue::read(texts));
        return read;
    }();
    return all;
}

}  // namespace

const Catalogue* catalogue_of(std::string_view code) {
    const auto found = std::ranges::find(catalogues(), code, &Catalogue::code);
    return found == catalogues().end() ? nullptr : &*found;
}

std::vector<std::string_view> catalogue_codes() {
    std::vector<std::string_view> codes;
    for (const Catalogue& one : catalogues())
        codes.push_back(one.code());
    return codes;
}

}  // namespace words
