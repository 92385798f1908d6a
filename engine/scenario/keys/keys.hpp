// Every key of every table, described once. The reader, the warnings about unknown keys, the
// printer and the listing all follow from these descriptions.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "scenario/file/reading.hpp"
#include "scenario/keys/forms.hpp"

namespace scenario {

enum class Demand { optional, required };

// Which packs take this key from the first pack when they do not give it themselves.
enum class Copied {
    never,
    by_twins,      // packs that are told to be no different
    by_relatives,  // packs of the same chemistry, though of another capacity or voltage
};

// How the screens show a key.
struct OnScreen {
    words::Said label = {};                    // "Capacity, each"; empty: among all keys alone
    std::vector<std::string_view> units = {};  // to pick from, the usual first
    words::Said silent = {};                   // what holds where it is absent, in few words
    std::vector<Pick> picks = {};              // of words and whole numbers: the usual ones
};

struct KeyWords {
    std::string_view name;
    words::Said means = {};  // what it holds, for whoever meets it for the first time
    Demand demand = Demand::optional;
    Copied copied = Copied::never;
    words::Said silent = {};  // what holds where the key is absent; empty: as the table says
    OnScreen on_screen = {};
};

// One key with its value, as the file has it or would have it.
struct Row {
    std::string key;                   // "load.refrigerator.metered.energy", as --set takes it
    std::optional<std::string> value;  // as it stands after the =; nothing where it is absent
    const Node* node = nullptr;        // null where the file is silent
    words::Said silent;                // what holds then
    words::Said said = {};             // the value in words; as written where it has none
    words::Said limits = {};           // what values it takes
    std::string described = {};        // "load.metered.energy", as the reference names it
};
using Rows = std::vector<Row>;

// One key as the reference of the format tells it.
struct ToldKey {
    std::string key;      // "pack.two_well.total"
    std::string of = {};  // the part it belongs to where one list holds several kinds: "fuse"
    words::Said means = {};
    words::Said limits = {};   // empty for tables
    std::string example = {};  // as it stands after the =
    words::Said silent = {};   // what holds where it is absent
    bool required = false;
    bool lent = false;  // by the first table of its kind to those after it
    Shape shape = {};
    OnScreen on_screen = {};
    words::Said group = {};  // of the screens: the label of the table at the top, "Packs"
};
using ToldKeys = std::vector<ToldKey>;

// A table or value on the way to the rows of its keys.
struct Stop {
    std::string path;
    const Node* node = nullptr;
    words::Said silent = {};
    std::string described = {};  // its name in the reference
};

// One key of a table: how it is read, printed, listed and copied.
template <class Table>
class Key {
  public:
    explicit Key(KeyWords described) : words(std::move(described)) {}
    Key(const Key&) = delete;
    Key& operator=(const Key&) = delete;
    virtual ~Key() = default;

    const KeyWords words;
    [[nodiscard]] virtual std::string example() const = 0;
    // What values it takes: "more than 0 Ah, at most 10000 Ah". Empty for tables.
    [[nodiscard]] virtual words::Said limits() const = 0;
    [[nodiscard]] virtual Ends ends() const = 0;
    [[nodiscard]] virtual Shape shape() const = 0;
    virtual void read(Reading&, const Spot&, Table&) const = 0;
    // As it stands after the =; nothing where it is absent.
    [[nodiscard]] virtual std::optional<std::string> print(const Table&) const = 0;
    // A table with its [header]; nothing for other values.
    [[nodiscard]] virtual std::optional<std::string> print_block(const Table&) const = 0;
    virtual void list(Rows&, const Stop&, const Table&) const = 0;
    virtual void copy(const Table& from, Table& to) const = 0;
    // The keys inside its value, where that is a table or a list of them.
    [[nodiscard]] virtual ToldKeys inside() const { return {}; }

  protected:
    // Its row of the listing, with the value as it stands after the =.
    [[nodiscard]] Row row(const Stop& stop, std::optional<std::string> value) const {
        words::Said said = value ? in_words(shape(), *value) : words::Said();
        return {.key = stop.path,
                .value = std::move(value),
                .node = stop.node,
                .silent = silent_in_words(shape(), stop.silent),
                .said = std::move(said),
                .limits = limits(),
                .described = stop.described};
    }
};

template <class Table>
using Keys = std::vector<std::unique_ptr<const Key<Table>>>;

// A key that people write and that does not mean what they hope.
struct Mistake {
    std::string_view name;
    words::Said found;
    words::Said remedy;
    std::vector<std::string_view> stands_for = {};  // keys that are not demanded beside it
};

template <class Table>
struct Description {
    words::Said silent;  // what holds for absent keys unless a key says otherwise
    Keys<Table> keys;
    std::vector<Mistake> mistakes = {};
    // What the keys must be to one another.
    void (*check)(Reading&, const Spot&, const Table&) = nullptr;
    // Which keys a table takes from the first of its kind.
    Copied (*kinship)(const Node& written, const Table& table, const Table& first) = nullptr;
};

// A key whose value has a form. Member says how the value is reached in its table: get gives null
// where it is absent.
template <class Table, class Form, class Member>
class KeyOfForm : public Key<Table> {
  public:
    KeyOfForm(KeyWords described, Form form, Member member)
        : Key<Table>(std::move(described)), form_(std::move(form)), member_(member) {}

    [[nodiscard]] std::string example() const override { return form_.example(); }
    [[nodiscard]] words::Said limits() const override { return form_.limits(); }
    [[nodiscard]] Ends ends() const override { return form_.ends(); }
    [[nodiscard]] Shape shape() const override { return form_.shape(); }
    void read(Reading& reading, const Spot& spot, Table& table) const override {
        if (auto value = form_.read(reading, spot)) {
            member_.set(table, std::move(*value));
        }
    }
    [[nodiscard]] std::optional<std::string> print(const Table& table) const override {
        const auto* value = member_.get(table);
        return value == nullptr ? std::nullopt : std::optional(form_.print(*value));
    }
    [[nodiscard]] std::optional<std::string> print_block(const Table& table) const override {
        if constexpr (requires(const typename Form::Value& value) {
                          form_.print_block(this->words.name, value);
                      }) {
            const auto* value = member_.get(table);
            return value == nullptr ? std::string() : form_.print_block(this->words.name, *value);
        } else {
            return std::nullopt;
        }
    }
    void list(Rows& rows, const Stop& stop, const Table& table) const override {
        const auto* value = member_.get(table);
        if constexpr (requires { form_.list(rows, stop, *value); }) {
            if (value != nullptr) {
                form_.list(rows, stop, *value);
                return;
            }
        }
        rows.push_back(this->row(stop, print(table)));
    }
    void copy(const Table& from, Table& to) const override {
        if (const auto* value = member_.get(from)) {
            member_.set(to, *value);
        }
    }
    [[nodiscard]] ToldKeys inside() const override {
        if constexpr (requires { form_.inside(); }) {
            return form_.inside();
        } else {
            return {};
        }
    }

  private:
    Form form_;
    Member member_;
};

// A member that is always there; empty words and lists count as absent.
template <class Table, class Value>
struct PlainMember {
    Value Table::*member;

    [[nodiscard]] const Value* get(const Table& table) const {
        if constexpr (requires { (table.*member).empty(); }) {
            return (table.*member).empty() ? nullptr : &(table.*member);
        } else {
            return &(table.*member);
        }
    }
    void set(Table& table, Value value) const { table.*member = std::move(value); }
};

template <class Table, class Value>
struct OptionalMember {
    std::optional<Value> Table::*member;

    [[nodiscard]] const Value* get(const Table& table) const {
        return (table.*member).has_value() ? &*(table.*member) : nullptr;
    }
    void set(Table& table, Value value) const { table.*member = std::move(value); }
};

// One kind of a member that may be several.
template <class Table, class Variant, class Value>
struct KindOfMember {
    std::optional<Variant> Table::*member;

    [[nodiscard]] const Value* get(const Table& table) const {
        return (table.*member).has_value() ? std::get_if<Value>(&*(table.*member)) : nullptr;
    }
    void set(Table& table, Value value) const { table.*member = std::move(value); }
};

template <class Table>
using AKey = std::unique_ptr<const Key<Table>>;

// A key whose value is a quantity: most are, so one class a table serves them all.
template <class Table>
class QuantityKey : public Key<Table> {
  public:
    using Get = std::optional<double> (*)(const Table&);  // SI
    using Set = void (*)(Table&, double);

    QuantityKey(KeyWords described, const QuantityWords& quantity, Get get, Set set)
        : Key<Table>(std::move(described)), quantity_(quantity), get_(get), set_(set) {}

    [[nodiscard]] std::string example() const override { return example_of(quantity_); }
    [[nodiscard]] words::Said limits() const override { return limits_of(quantity_); }
    [[nodiscard]] Ends ends() const override { return ends_of(quantity_); }
    [[nodiscard]] Shape shape() const override { return shape_of(quantity_); }
    void read(Reading& reading, const Spot& spot, Table& table) const override {
        if (const std::optional<double> si = read_quantity(reading, spot, quantity_)) {
            set_(table, *si);
        }
    }
    [[nodiscard]] std::optional<std::string> print(const Table& table) const override {
        const std::optional<double> si = get_(table);
        return si ? std::optional(print_quantity(quantity_, *si)) : std::nullopt;
    }
    [[nodiscard]] std::optional<std::string> print_block(const Table&) const override {
        return std::nullopt;
    }
    void list(Rows& rows, const Stop& stop, const Table& table) const override {
        rows.push_back(this->row(stop, print(table)));
    }
    void copy(const Table& from, Table& to) const override {
        if (const std::optional<double> si = get_(from)) {
            set_(to, *si);
        }
    }

  private:
    QuantityWords quantity_;
    Get get_;
    Set set_;
};

// What a pointer to a member says of its table and its value.
template <class Pointer>
struct MemberOf;
template <class Table_, class Value_>
struct MemberOf<Value_ Table_::*> {
    using Table = Table_;
    using Access = PlainMember<Table, Value_>;
};
template <class Table_, class Value_>
struct MemberOf<std::optional<Value_> Table_::*> {
    using Table = Table_;
    using Access = OptionalMember<Table, Value_>;
};

template <class Access, auto member, class Table, class Quantity>
[[nodiscard]] AKey<Table> quantity_key(KeyWords words, const QuantityForm<Quantity>& form) {
    return std::make_unique<const QuantityKey<Table>>(
        std::move(words), form.words,
        [](const Table& table) -> std::optional<double> {
            const Quantity* value = Access{member}.get(table);
            return value == nullptr ? std::nullopt : std::optional(units::in_si(*value));
        },
        [](Table& table, double si) { table.*member = units::from_si<Quantity>(si); });
}

// key<&Pack::capacity>({.name = "capacity"}, positive_to(…, "100 Ah"))
template <auto member, class Form>
[[nodiscard]] auto key(KeyWords words, Form form) {
    using Table = typename MemberOf<decltype(member)>::Table;
    using Access = typename MemberOf<decltype(member)>::Access;
    if constexpr (requires { form.words.dimension; }) {
        return quantity_key<Access, member, Table>(std::move(words), form);
    } else {
        return AKey<Table>(std::make_unique<const KeyOfForm<Table, Form, Access>>(
            std::move(words), std::move(form), Access{member}));
    }
}

template <auto member, class Form>
[[nodiscard]] auto key_of_kind(KeyWords words, Form form) {
    using Table = typename MemberOf<decltype(member)>::Table;
    using Variant =
        typename std::remove_cvref_t<decltype(std::declval<Table>().*member)>::value_type;
    using Access = KindOfMember<Table, Variant, typename Form::Value>;
    return AKey<Table>(std::make_unique<const KeyOfForm<Table, Form, Access>>(
        std::move(words), std::move(form), Access{member}));
}

// Keys in the order in which they are printed.
template <class Table, class... More>
[[nodiscard]] Keys<Table> keys_of(AKey<Table> first, More... more) {
    Keys<Table> keys;
    keys.reserve(1 + sizeof...(more));
    keys.push_back(std::move(first));
    (keys.push_back(std::move(more)), ...);
    return keys;
}

// Groups of keys, one behind the other.
template <class Table, class... More>
[[nodiscard]] Keys<Table> joined(Keys<Table> first, More... more) {
    const auto behind = [&first](Keys<Table> group) {
        for (AKey<Table>& one : group) {
            first.push_back(std::move(one));
        }
    };
    (behind(std::move(more)), ...);
    return first;
}

}  // namespace scenario
