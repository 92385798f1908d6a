// Every page opened by its entry on the rail; all that shows there tells the right role, name,
// states and value.
#include <QDir>
#include <QFile>

#include "bus/program.hpp"
#include "bus/wrong.hpp"

namespace bus_tests {

namespace {

// The trees are left where a person can read them.
void leave(const Told& tree, const QString& name) {
    QDir().mkpath(QStringLiteral(CANDLEMARK_BINARY_DIR "/bus"));
    QFile file(QStringLiteral(CANDLEMARK_BINARY_DIR "/bus/") + name + QStringLiteral(".txt"));
    if (file.open(QIODevice::WriteOnly)) file.write(drawn(tree).toUtf8());
}

QStringList names_of(const QList<Told>& items) {
    QStringList names;
    for (const Told& one : items)
        names << one.name;
    return names;
}

class WalkedByTheAccessibilityBus : public Program {
  protected:
    // Opens all that is folded on the page; a fold that is open says "Hide".
    void open_folds() {
        for (int fold = 0; fold < 40; ++fold) {
            const auto folded = found(window(), Role::push_button, QStringLiteral("Show: "));
            if (!folded) return;
            EXPECT_TRUE(reader().act(folded->item, QStringLiteral("Press")));
            EXPECT_TRUE(waits_until([&] {
                const Told now = reader().read_alone(folded->item);
                return now.name != folded->name;
            })) << folded->name.toStdString();
        }
    }
};

TEST_F(WalkedByTheAccessibilityBus, every_page_tells_the_right_roles_names_states_and_values) {
    ASSERT_NO_FATAL_FAILURE(open(QStringLiteral("ice_storm.toml")));
    (void)part(Role::page_tab, QStringLiteral("Days"));
    const QStringList pages =
        names_of(all(window(), [](const Told& one) { return one.role == Role::page_tab; }));
    EXPECT_GE(pages.size(), 11);
    qsizetype items = 0;
    QStringList wrong;
    for (const QString& name : pages) {
        (void)page(name);
        open_folds();
        Told shown;
        // What comes and goes while it is read is read again.
        (void)waits_until([&] { return wrong_of(shown = window()).isEmpty(); });
        leave(shown, name);
        for (const QString& line : wrong_of(shown))
            wrong << name + QStringLiteral(": ") + line;
        items += count(shown);
    }
    EXPECT_EQ(wrong.join(u'\n').toStdString(), "");
    EXPECT_GT(items, 500);
    RecordProperty("items", static_cast<int>(items));
}

}  // namespace

}  // namespace bus_tests
