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
    // Waits until the value that a spin button tells is this one.
    void expect_value(const QString& name, double value) {
        EXPECT_TRUE(waits_until([&] {
            const auto turned = found(window(), Role::spin_button, name);
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
    expect_value(name, 3.0);
    act(Role::spin_button, name, QStringLiteral("Increase"));
    expect_value(name, 4.0);
    save();
    expect_saved("\ncount = 4\n");
    reader().set_value(part(Role::spin_button, name).item, 6.0);
    expect_value(name, 6.0);
    save();
    expect_saved("\ncount = 6\n");
    act(Role::push_button, QStringLiteral("Take the last change back"), press);
    expect_value(name, 5.0);
}

TEST_F(UsedByTheAccessibilityBus, the_tilt_goes_to_the_value_that_is_put) {
    ASSERT_NO_FATAL_FAILURE(open(QStringLiteral("ice_storm.toml")));
    (void)page(QStringLiteral("Sun"));
    const QString name = QStringLiteral("Tilt from level");
    expect_value(name, 60.0);
    reader().set_value(part(Role::spin_button, name).item, 45.0);
    expect_value(name, 45.0);
    save();
    expect_saved("tilt = \"45 deg\"");
}

TEST_F(UsedByTheAccessibilityBus, a_radio_button_is_chosen_by_its_action) {
    ASSERT_NO_FATAL_FAILURE(open(QStringLiteral("ice_storm.toml")));
    (void)page(QStringLiteral("Loads"));
    const QString wanted = QStringLiteral("4 comfort");
    EXPECT_FALSE(part(Role::radio_button, wanted).is(State::checked));
    heard().forget();
    act(Role::radio_button, wanted, QStringLiteral("Toggle"));
    EXPECT_TRUE(waits_until([&] {
        const auto now = found(window(), Role::radio_button, wanted);
        return now && now->is(State::checked);
    }));
    EXPECT_TRUE(waits_until([&] {
        return std::ranges::any_of(heard().events(), [](const Event& one) {
            return one.detail == QStringLiteral("checked") && one.number == 1;
        });
    })) << "that it is checked is not told of its own accord";
    const QList<Told> checked = all(window(), [](const Told& one) {
        static const QRegularExpression priority(QStringLiteral("^[1-5] "));
        return one.role == Role::radio_button && one.is(State::checked) &&
               priority.match(one.name).hasMatch();
    });
    EXPECT_EQ(checked.size(), 1);
    save();
    expect_saved("\npriority = 4\n");
}

// Either an announcement, or a notification that comes into sight, as readers before those read it.
TEST_F(UsedByTheAccessibilityBus, a_new_sentence_is_announced) {
    ASSERT_NO_FATAL_FAILURE(open(QStringLiteral("ice_storm.toml")));
    (void)page(QStringLiteral("Days"));
    const auto announced = [this](const QString& words) {
        return std::ranges::any_of(heard().events(), [&](const Event& one) {
            if (one.kind == QStringLiteral("Announcement")) return one.text == words;
            if (one.kind != QStringLiteral("StateChanged") || one.number != 1 ||
                one.detail != QStringLiteral("showing"))
                return false;
            const Told shown = reader().read_alone(one.of);
            return shown.role == Role::notification && shown.name == words;
        });
    };
    EXPECT_TRUE(waits_until([&] { return announced(sentence()); })) << sentence().toStdString();
    const QString before = sentence();
    EXPECT_TRUE(before.contains(QStringLiteral("Jan"))) << before.toStdString();
    heard().forget();
    act(Role::spin_button, QStringLiteral("Expansion packs"), QStringLiteral("Decrease"));
    EXPECT_TRUE(waits_until([&] { return sentence() != before && announced(sentence()); }))
        << sentence().toStdString();
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
