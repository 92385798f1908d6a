// What a screen reader asks of a program over the accessibility bus. Numbers of roles and states
// are those of the AT-SPI 2 protocol (AtspiRole and AtspiStateType of at-spi2-core).
#pragma once

#include <functional>
#include <optional>

#include <QDBusConnection>
#include <QDBusPendingCall>
#include <QRect>
#include <QString>
#include <QStringList>
#include <QVariant>

namespace bus_tests {

enum class Role : unsigned {
    invalid = 0,
    alert = 2,
    check_box = 7,
    dialog = 16,
    filler = 20,
    frame = 23,
    image = 27,
    label = 29,
    list = 31,
    list_item = 32,
    page_tab = 37,
    page_tab_list = 38,
    panel = 39,
    progress_bar = 42,
    push_button = 43,
    radio_button = 44,
    scroll_bar = 48,
    scroll_pane = 49,
    slider = 51,
    spin_button = 52,
    table = 55,
    table_cell = 56,
    column_header = 57,
    row_header = 58,
    text = 61,
    unknown = 67,
    application = 75,
    chart = 80,
    heading = 83,
    table_row = 90,
    notification = 101,
};

enum class State : unsigned {
    checked = 4,
    editable = 7,
    enabled = 8,
    focusable = 11,
    focused = 12,
    selectable = 22,
    selected = 23,
    sensitive = 24,
    showing = 25,
};

// A program, or a part of one, as the bus addresses it.
struct Item {
    QString program;
    QString path;
    friend bool operator==(const Item&, const Item&) = default;
};

struct Value {
    double current = 0;
    double least = 0;
    double most = 0;
    double step = 0;
};

// What was read of an item at one moment.
struct Told {
    Item item;
    Role role = Role::invalid;
    QString name;
    QString description;
    quint64 states = 0;
    QRect place;  // on the screen, or beyond its edge where it is scrolled to; empty while hidden
    QStringList actions;
    std::optional<Value> value;
    QStringList interfaces;
    QList<Told> parts;

    [[nodiscard]] bool is(State state) const {
        return (states >> static_cast<unsigned>(state) & 1U) != 0;
    }
};

class Reader {
  public:
    // Joins the bus at an address; leaves it at the end.
    explicit Reader(const QString& address);
    ~Reader();
    Reader(const Reader&) = delete;
    Reader& operator=(const Reader&) = delete;

    [[nodiscard]] QDBusConnection bus() const { return bus_; }
    // From now on programs tell of events of this kind.
    void wants(const QString& event) const;
    // Those that have joined the bus.
    [[nodiscard]] QList<Item> programs() const;
    // What an item holds, hidden ones too.
    [[nodiscard]] QList<Item> children(const Item& item) const;
    // An item and all below it that is not hidden; what is scrolled out of sight is not hidden.
    [[nodiscard]] Told read(const Item& item) const;
    [[nodiscard]] Told read_alone(const Item& item) const;
    // By name; false when the item has no such action, refuses it or is gone.
    [[nodiscard]] bool act(const Item& item, const QString& action) const;
    // By the value interface; false when the item has none or is gone.
    [[nodiscard]] bool set_value(const Item& item, double value) const;

  private:
    [[nodiscard]] QDBusPendingCall ask(const Item& item, const QString& interface,
                                       const QString& method, const QVariantList& with = {}) const;
    [[nodiscard]] QDBusPendingCall ask_property(const Item& item, const QString& interface,
                                                const QString& name) const;
    [[nodiscard]] QList<Told> read_alone(const QList<Item>& items) const;
    [[nodiscard]] QList<Told> below(const Item& item) const;

    QDBusConnection bus_;
};

// All of a tree for which something holds, in the order in which they are read out.
QList<Told> all(const Told& tree, const std::function<bool(const Told&)>& holds);
// The first with a role and this name, or else the first whose name holds it; none when there is
// none.
std::optional<Told> found(const Told& tree, Role role, const QString& name);

}  // namespace bus_tests
