// The main jobs by the accessibility bus alone.
#include <algorithm>

#include <QFile>
#include <QRegularExpression>

#include "bus/program.hpp"

namespace bus_tests {

namespace {

const QString press = QStringLiteral("Press");

class UsedByTheAccessibilityBus : public Program {
  protected:
    // Waits until the value that a spin button or a slider tells is this one.
    void expect_value(Role role, const QString& name, double value) {
        EXPECT_TRUE(waits_until([&] {
            const auto turned = found(window(), role, name);
            return turned && turned->value && turned->value->current == value;
        })) << name.toStdString()
            << " does not come to " << value;
    }
    // Waits until the file on the disk holds this.
    void expect_saved(const QByteArray& words) {
        EXPECT_TRUE(waits_until([&] { return file_text().contains(words); }))
            << words.toStdString() << " is not in the file";
    }
    void save() { act(Role::push_button, QStringLiteral("Save the scenario file"), press); }
    [[nodiscard]] QString sentence() const {
        const auto said = found(window(), Role::notification, QString());
        return said ? said->name : QString();
    }
};

TEST_F(UsedByTheAccessibilityBus, a_spin_button_is_turned_by_its_action_and_by_its_value) {
    ASSERT_NO_FATAL_FAILURE(open(QStringLiteral("ice_storm.toml")));
    (void)page(QStringLiteral("Days"));
    const QString name = QStringLiteral("Expansion packs");
    expect_value(Role::spin_button, name, 3.0);
    heard().forget();
    act(Role::spin_button, name, QStringLiteral("Increase"));
    expect_value(Role::spin_button, name, 4.0);
    const Item turned = part(Role::spin_button, name).item;
    EXPECT_TRUE(waits_until([&] {
        return std::ranges::any_of(heard().events(), [&](const Event& one) {
            return one.of == turned && one.detail == QStringLiteral("accessible-value");
        });
    })) << "that it has another value is not told of its own accord";
    save();
    expect_saved("\ncount = 4\n");
    put(Role::spin_button, name, 6.0);
    expect_value(Role::spin_button, name, 6.0);
    save();
    expect_saved("\ncount = 6\n");
    act(Role::push_button, QStringLiteral("Take the last change back"), press);
    expect_value(Role::spin_button, name, 5.0);
}

// The buttons below the picture and the picture itself.
TEST_F(UsedByTheAccessibilityBus, the_tilt_goes_to_the_value_that_is_put) {
    ASSERT_NO_FATAL_FAILURE(open(QStringLiteral("ice_storm.toml")));
    (void)page(QStringLiteral("Sun"));
    const QString steps = QStringLiteral("Tilt from level");
    const QString picture = QStringLiteral("Tilt of the panels");
    expect_value(Role::spin_button, steps, 60.0);
    expect_value(Role::slider, picture, 60.0);
    put(Role::spin_button, steps, 45.0);
    expect_value(Role::spin_button, steps, 45.0);
    save();
    expect_saved("tilt = \"45 deg\"");
    put(Role::slider, picture, 30.0);
    expect_value(Role::slider, picture, 30.0);
    act(Role::slider, picture, QStringLiteral("Decrease"));
    expect_value(Role::spin_button, steps, 25.0);
    save();
    expect_saved("tilt = \"25 deg\"");
}

// It stays the same item, so that a reader does not lose its place.
TEST_F(UsedByTheAccessibilityBus, a_radio_button_is_chosen_by_its_action) {
    ASSERT_NO_FATAL_FAILURE(open(QStringLiteral("ice_storm.toml")));
    (void)page(QStringLiteral("Loads"));
    const QString wanted = QStringLiteral("4 comfort");
    const Told before = part(Role::radio_button, wanted);
    EXPECT_FALSE(before.is(State::checked));
    heard().forget();
    act(Role::radio_button, wanted, QStringLiteral("Toggle"));
    EXPECT_TRUE(waits_until([&] {
        const auto now = found(window(), Role::radio_button, wanted);
        return now && now->is(State::checked);
    }));
    EXPECT_EQ(part(Role::radio_button, wanted).item, before.item);
    EXPECT_TRUE(waits_until([&] {
        return std::ranges::any_of(heard().events(), [&](const Event& one) {
            return one.of == before.item && one.detail == QStringLiteral("checked") &&
                   one.number == 1;
        });
    })) << "that it is checked is not told of its own accord";
    const Told group = part(Role::panel, QStringLiteral("Kept on before others"));
    EXPECT_EQ(group.parts.size(), 5);
    EXPECT_EQ(
        std::ranges::count_if(group.parts, [](const Told& one) { return one.is(State::checked); }),
        1);
    save();
    expect_saved("\npriority = 4\n");
}

TEST_F(UsedByTheAccessibilityBus, what_is_given_the_keyboard_says_so) {
    ASSERT_NO_FATAL_FAILURE(open(QStringLiteral("ice_storm.toml")));
    (void)page(QStringLiteral("Loads"));
    const QString wanted = QStringLiteral("Take this load out");
    heard().forget();
    act(Role::push_button, wanted, QStringLiteral("SetFocus"));
    EXPECT_TRUE(waits_until([&] {
        const auto now = found(window(), Role::push_button, wanted);
        return now && now->is(State::focused) && now->is(State::showing);
    })) << "it has not come into sight with the keyboard";
    const Item focused = part(Role::push_button, wanted).item;
    EXPECT_TRUE(waits_until([&] {
        return std::ranges::any_of(heard().events(), [&](const Event& one) {
            return one.of == focused && one.detail == QStringLiteral("focused") && one.number == 1;
        });
    })) << "that the keyboard is there is not told of its own accord";
}

// Either an announcement, or a notification that comes into sight, as readers before those read it.
TEST_F(UsedByTheAccessibilityBus, a_new_sentence_is_announced_once) {
    ASSERT_NO_FATAL_FAILURE(open(QStringLiteral("ice_storm.toml")));
    (void)page(QStringLiteral("Days"));
    const auto times_announced = [this] {
        const auto said = found(window(), Role::notification, QString());
        return said ? std::ranges::count_if(heard().events(),
                                            [&](const Event& one) {
                                                if (one.kind == QStringLiteral("Announcement"))
                                                    return one.text == said->name;
                                                return one.of == said->item && one.number == 1 &&
                                                       one.detail == QStringLiteral("showing");
                                            })
                    : 0;
    };
    EXPECT_TRUE(waits_until([&] { return times_announced() > 0; })) << sentence().toStdString();
    const QString before = sentence();
    EXPECT_TRUE(before.contains(QStringLiteral("until"))) << before.toStdString();
    heard().forget();
    act(Role::spin_button, QStringLiteral("Expansion packs"), QStringLiteral("Decrease"));
    EXPECT_TRUE(waits_until([&] { return sentence() != before && times_announced() > 0; }))
        << sentence().toStdString();
    EXPECT_EQ(times_announced(), 1);
}

TEST_F(UsedByTheAccessibilityBus, a_file_is_opened_a_load_changed_the_packs_read_and_all_saved) {
    ASSERT_NO_FATAL_FAILURE(open(QStringLiteral("ice_storm.toml")));
    const QString other = QStringLiteral("summer_storm.toml");
    const QString copy = folder() + u'/' + other;
    ASSERT_TRUE(QFile::copy(QStringLiteral(CANDLEMARK_SOURCE_DIR "/scenarios/") + other, copy));
    const QString before = sentence();
    act(Role::push_button, QStringLiteral("Open a scenario file"), press);
    (void)part(Role::dialog, QStringLiteral("Open a scenario"));
    act(Role::push_button, other, press);
    EXPECT_TRUE(waits_until([&] { return sentence() != before; }));

    (void)page(QStringLiteral("Loads"));
    act(Role::push_button, QStringLiteral("fans"), press);
    act(Role::push_button, QStringLiteral(" W. Change"), press);
    for (const char* sign : {"8", "7"})
        act(Role::push_button, QString::fromLatin1(sign), press);
    act(Role::push_button, QStringLiteral("Done"), press);
    (void)part(Role::push_button, QStringLiteral("87 W. Change"));

    (void)page(QStringLiteral("How many"));
    const Told cell = part(Role::table_cell, QStringLiteral("Packs: "));
    static const QRegularExpression chance(
        QStringLiteral("^Packs: \\d+, panels: \\d+. It lasts to the end .+ times in 100."));
    EXPECT_TRUE(chance.match(cell.name).hasMatch()) << cell.name.toStdString();
    EXPECT_TRUE(reader().act(cell.item, press));
    (void)part(Role::label, cell.name);

    save();
    EXPECT_TRUE(waits_until([&] {
        QFile saved(copy);
        return saved.open(QIODevice::ReadOnly) && saved.readAll().contains("\"87 W\"");
    }));
}

}  // namespace

}  // namespace bus_tests
