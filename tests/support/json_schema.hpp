// Holds a JSON value against a JSON schema: as much of draft 7 as the schemas of this program use.
// A word of a schema that is not known here is a complaint, so that none is passed over.
//   source   [JSON Schema draft 7], validation, sections 6.1 to 6.7 and 7
#pragma once

#include <regex>
#include <string>
#include <vector>

#include <nlohmann/json.hpp>

namespace json_schema {

using Json = nlohmann::json;
using Complaints = std::vector<std::string>;  // "/answer/lasts: is no object"

class Schema {
  public:
    explicit Schema(Json whole) : whole_(std::move(whole)) {}

    [[nodiscard]] Complaints complaints(const Json& value) const {
        return against(whole_, value, "");
    }
    // Against one of its definitions.
    [[nodiscard]] Complaints complaints(const std::string& definition, const Json& value) const {
        return against(whole_.at("definitions").at(definition), value, "");
    }

  private:
    [[nodiscard]] static bool is_of(const std::string& type, const Json& value) {
        if (type == "integer") return value.is_number_integer();
        if (type == "number") return value.is_number();
        if (type == "string") return value.is_string();
        if (type == "boolean") return value.is_boolean();
        if (type == "null") return value.is_null();
        return type == "array" ? value.is_array() : type == "object" && value.is_object();
    }

    [[nodiscard]] static bool is_of_types(const Json& types, const Json& value) {
        if (types.is_string()) return is_of(types.get<std::string>(), value);
        return std::any_of(types.begin(), types.end(),
                           [&](const Json& type) { return is_of(type.get<std::string>(), value); });
    }

    [[nodiscard]] Complaints of_object(const Json& schema, const Json& value,
                                       const std::string& at) const {
        Complaints all;
        for (const auto& name : schema.value("required", Json::array()))
            if (!value.contains(name.get<std::string>()))
                all.push_back(at + ": lacks " + name.get<std::string>());
        const Json known = schema.value("properties", Json::object());
        for (const auto& [name, member] : value.items()) {
            Complaints of_member;
            if (known.contains(name)) {
                of_member = against(known[name], member, at + '/' + name);
            } else if (schema.contains("additionalProperties")) {
                const auto& more = schema["additionalProperties"];
                if (more.is_boolean() && !more.get<bool>())
                    all.push_back(at + ": has " + name);
                else if (more.is_object())
                    of_member = against(more, member, at + '/' + name);
            }
            all.insert(all.end(), of_member.begin(), of_member.end());
        }
        return all;
    }

    [[nodiscard]] Complaints of_array(const Json& schema, const Json& value,
                                      const std::string& at) const {
        Complaints all;
        if (value.size() < schema.value("minItems", std::size_t{0}) ||
            value.size() > schema.value("maxItems", value.size()))
            all.push_back(at + ": has " + std::to_string(value.size()) + " entries");
        if (!schema.contains("items")) return all;
        for (std::size_t i = 0; i < value.size(); ++i) {
            const auto of_item = against(schema["items"], value[i], at + '/' + std::to_string(i));
            all.insert(all.end(), of_item.begin(), of_item.end());
        }
        return all;
    }

    [[nodiscard]] static Complaints of_text(const Json& schema, const std::string& text,
                                            const std::string& at) {
        Complaints all;
        if (text.size() < schema.value("minLength", std::size_t{0}) ||
            text.size() > schema.value("maxLength", text.size()))
            all.push_back(at + ": is " + std::to_string(text.size()) + " long");
        if (schema.contains("pattern") &&
            !std::regex_search(text, std::regex(schema["pattern"].get<std::string>())))
            all.push_back(at + ": \"" + text + "\" is not written so");
        return all;
    }

    [[nodiscard]] static Complaints of_number(const Json& schema, const Json& value,
                                              const std::string& at) {
        const double number = value.get<double>();
        const bool out =
            number < schema.value("minimum", number) || number > schema.value("maximum", number);
        return out ? Complaints{at + ": " + value.dump() + " is out of range"} : Complaints{};
    }

    [[nodiscard]] Complaints of_several(const Json& schema, const Json& value,
                                        const std::string& at) const {
        Complaints all;
        for (const auto& one : schema.value("allOf", Json::array())) {
            const auto more = against(one, value, at);
            all.insert(all.end(), more.begin(), more.end());
        }
        if (schema.contains("if") && against(schema["if"], value, at).empty()) {
            const auto more = against(schema["then"], value, at);
            all.insert(all.end(), more.begin(), more.end());
        }
        if (!schema.contains("anyOf")) return all;
        Complaints none;
        for (const auto& one : schema["anyOf"]) {
            const auto more = against(one, value, at);
            if (more.empty()) return all;
            none.insert(none.end(), more.begin(), more.end());
        }
        all.push_back(at + ": is none of several");
        all.insert(all.end(), none.begin(), none.end());
        return all;
    }

    [[nodiscard]] static Complaints unknown_words(const Json& schema, const std::string& at) {
        static const std::vector<std::string> known{
            "$schema",  "$id",         "title",     "description",
            "examples", "definitions", "type",      "enum",
            "const",    "properties",  "required",  "items",
            "minItems", "maxItems",    "minimum",   "additionalProperties",
            "maximum",  "minLength",   "maxLength", "pattern",
            "anyOf",    "allOf",       "if",        "then"};
        Complaints all;
        for (const auto& [word, meaning] : schema.items())
            if (std::find(known.begin(), known.end(), word) == known.end())
                all.push_back(at + ": the schema says " + word + ", which is not known");
        return all;
    }

    [[nodiscard]] Complaints against(const Json& schema, const Json& value,
                                     const std::string& at) const {
        if (schema.contains("$ref")) {
            const auto name = schema["$ref"].get<std::string>();
            return against(whole_.at(Json::json_pointer(name.substr(1))), value, at);
        }
        Complaints all = unknown_words(schema, at);
        const auto add = [&all](const Complaints& more) {
            all.insert(all.end(), more.begin(), more.end());
        };
        if (schema.contains("type") && !is_of_types(schema["type"], value))
            all.push_back(at + ": " + value.dump().substr(0, 60) + " is no " +
                          schema["type"].dump());
        if (schema.contains("const") && schema["const"] != value)
            all.push_back(at + ": is not " + schema["const"].dump());
        if (schema.contains("enum") &&
            std::find(schema["enum"].begin(), schema["enum"].end(), value) == schema["enum"].end())
            all.push_back(at + ": " + value.dump() + " is none of them");
        if (value.is_object()) add(of_object(schema, value, at));
        if (value.is_array()) add(of_array(schema, value, at));
        if (value.is_string()) add(of_text(schema, value.get<std::string>(), at));
        if (value.is_number()) add(of_number(schema, value, at));
        add(of_several(schema, value, at));
        return all;
    }

    Json whole_;
};

}  // namespace json_schema
