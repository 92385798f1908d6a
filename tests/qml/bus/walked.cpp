// Every page opened by its entry, every fold on it and every sheet; all that is there tells the right
// role, name, states, value and actions.
#include <utility>

#include <QDir>
#include <QFile>

#include "bus/program.hpp"
#include "bus/wrong.hpp"

namespace bus_tests {

namespace {

// The trees are left where a person can read them.
void leave(const Told& tree, const QString& name) {
    QDir().mkpath(QStringLiteral(CANDLEMARK_BINARY_DIR "/bus"));
    QFile file(QStringLiteral(CANDLEMARK_BINARY_DIR "/bus/") + QString(name).remove(u'/') +
               QStringLiteral(".txt"));
    if (file.open(QIODevice::WriteOnly)) file.write(drawn(tree).toUtf8());
}

QStringList names_of(const QList<Told>& items) {
    QStringList names;
    for (const Told& one : items)
        names << one.name;
    return names;
}

// A sheet: the page it is opened on, the buttons that lead to it, its name.
struct Way {
    QString page;
    QStringList buttons;
    QString sheet;
};

const QString menu = QStringLiteral("File, look and help");

// A file to be opened stands for the sheet of files, a pack's capacity for that of numbers.
const QList<Way> ways{
    {QStringLiteral("Days"), {menu}, QStringLiteral("Menu")},
    {QStringLiteral("Days"), {menu, QStringLiteral("Begin a new plan")}, QStringLiteral("Begin")},
    {QStringLiteral("Days"),
     {menu, QStringLiteral("Files that were open before")},
     QStringLiteral("Open before")},
    {QStringLiteral("Days"), {menu, QStringLiteral("Save under another name")}, QString()},
    {QStringLiteral("Days"),
     {menu, QStringLiteral("Share the answer as a page or a picture")},
     QStringLiteral("Share the answer")},
    {QStringLiteral("Days"), {menu, QStringLiteral("Help for this page")}, QStringLiteral("Help")},
    {QStringLiteral("Days"),
     {menu, QStringLiteral("About this program, with its licences")},
     QStringLiteral("About Candlemark")},
    {QStringLiteral("Days"),
     {QStringLiteral("Theme, size of the text")},
     QStringLiteral("How it is shown")},
    {QStringLiteral("Days"),
     {QStringLiteral("How it was worked out")},
     QStringLiteral("Wednesday")},
    {QStringLiteral("Days"),
     {QStringLiteral("Open a scenario file")},
     QStringLiteral("Open a scenario")},
    {QStringLiteral("Loads"), {QStringLiteral("Add a load")}, QStringLiteral("Pick what it is")},
    {QStringLiteral("Packs"), {QStringLiteral(" Ah. Change")}, QString()},
    {QStringLiteral("Loads"), {QStringLiteral("Name: ")}, QStringLiteral("Name")},
    {QStringLiteral("Sun"), {QStringLiteral("Place: ")}, QStringLiteral("Pick the nearest place")},
    {QStringLiteral("Now"), {QStringLiteral("Write down the volts")}, QString()},
    {QStringLiteral("Now"), {QStringLiteral("Write down a plug-in meter")}, QString()},
    {QStringLiteral("Now"), {QStringLiteral("Write down what the controller")}, QString()},
    {QStringLiteral("Now"), {QStringLiteral("Write down a thermometer")}, QString()},
    {QStringLiteral("Now"), {QStringLiteral("Write down what was switched")}, QString()},
    {QStringLiteral("Now"), {QStringLiteral("Write down what happened")}, QString()},
};

class WalkedByTheAccessibilityBus : public Program {
  protected:
    // Opens all that is folded on the page; a fold that is open says "Hide".
    void open_folds() {
        QStringList opened;
        for (int fold = 0; fold < 40; ++fold) {
            const auto folded = found(window(), Role::push_button, QStringLiteral("Show: "));
            if (!folded) return;
            ASSERT_FALSE(opened.contains(folded->name)) << folded->name.toStdString();
            opened << folded->name;
            act(Role::push_button, folded->name, QStringLiteral("Press"));
            EXPECT_TRUE(waits_until([&] {
                return !found(window(), Role::push_button, folded->name).has_value();
            })) << folded->name.toStdString();
        }
    }
    // What is wrong of a part of the window that stands still; what comes and goes while it is read
    // is read again.
    void look_at(const QString& place, const std::function<Told()>& read) {
        QString before;
        Told shown;
        (void)waits_until([&] {
            shown = read();
            const QString now = drawn(shown);
            return std::exchange(before, now) == now;
        });
        (void)waits_until([&] { return wrong_of(shown = read()).isEmpty(); }, passing);
        leave(shown, place);
        for (const QString& line : wrong_of(shown))
            wrong_ << place + QStringLiteral(": ") + line;
        items_ += count(shown);
    }
    [[nodiscard]] QStringList pages() {
        (void)part(Role::page_tab, QStringLiteral("Days"));
        return names_of(all(window(), [](const Told& one) { return one.role == Role::page_tab; }));
    }
    void expect_nothing_wrong_of(qsizetype least) {
        EXPECT_EQ(wrong_.join(u'\n').toStdString(), "") << wrong_.size() << " of " << items_;
        EXPECT_GT(items_, least);
        RecordProperty("items", static_cast<int>(items_));
        RecordProperty("wrong", static_cast<int>(wrong_.size()));
    }

  private:
    static constexpr int passing = 5'000;  // ms, for what is wrong only while it comes about
    QStringList wrong_;
    qsizetype items_ = 0;
};

TEST_F(WalkedByTheAccessibilityBus, every_page_tells_the_right_roles_names_states_and_values) {
    ASSERT_NO_FATAL_FAILURE(open(QStringLiteral("ice_storm.toml")));
    const QStringList names = pages();
    EXPECT_GE(names.size(), 11);
    for (const QString& name : names) {
        (void)page(name);
        ASSERT_NO_FATAL_FAILURE(open_folds());
        look_at(name, [this] { return window(); });
    }
    expect_nothing_wrong_of(500);
}

TEST_F(WalkedByTheAccessibilityBus, every_page_does_so_in_a_window_a_hand_wide) {
    ASSERT_NO_FATAL_FAILURE(open(QStringLiteral("ice_storm.toml"), QStringLiteral("390x844")));
    for (const QString& name : pages()) {
        (void)page(name);
        look_at(name + QStringLiteral(", narrow"), [this] { return window(); });
    }
    expect_nothing_wrong_of(300);
}

TEST_F(WalkedByTheAccessibilityBus, the_page_of_a_broken_file_does_so) {
    ASSERT_NO_FATAL_FAILURE(
        open_text("format = 1\n[outage]\nstarts = 2026-01-14T18:00:00\n"
                  "lasts = \"4 potatoes\"\n"));
    (void)part(Role::list, QStringLiteral("Lines of the file"));
    look_at(QStringLiteral("A broken file"), [this] { return window(); });
    expect_nothing_wrong_of(20);
}

TEST_F(WalkedByTheAccessibilityBus, every_question_of_a_first_run_does_so) {
    ASSERT_NO_FATAL_FAILURE(start({}));
    for (int question = 1; question <= 5; ++question) {
        (void)part(Role::heading, QStringLiteral("Question %1 of 5").arg(question));
        look_at(QStringLiteral("Question %1").arg(question), [this] { return window(); });
        if (question < 5)
            act(Role::push_button, QStringLiteral("To the next question"), QStringLiteral("Press"));
    }
    expect_nothing_wrong_of(100);
}

TEST_F(WalkedByTheAccessibilityBus, every_sheet_does_so) {
    ASSERT_NO_FATAL_FAILURE(open(QStringLiteral("ice_storm.toml")));
    QString open_page;
    const auto sheet = [this] { return found(window(), Role::dialog, QString()); };
    for (const Way& way : ways) {
        if (std::exchange(open_page, way.page) != way.page) (void)page(way.page);
        // Only while the outage lasts something can be written down.
        if (way.page == QStringLiteral("Now") &&
            found(window(), Role::push_button, QStringLiteral("The power went out now")))
            act(Role::push_button, QStringLiteral("The power went out now"),
                QStringLiteral("Press"));
        for (const QString& button : way.buttons)
            act(Role::push_button, button, QStringLiteral("Press"));
        (void)part(Role::dialog, way.sheet);
        const QString place = way.page + QStringLiteral(", ") + way.buttons.constLast();
        look_at(place, [&] { return sheet().value_or(Told{}); });
        act(Role::push_button, QStringLiteral("Close"), QStringLiteral("Press"));
        ASSERT_TRUE(waits_until([&] { return !sheet(); })) << place.toStdString();
    }
    expect_nothing_wrong_of(200);
}

}  // namespace

}  // namespace bus_tests
