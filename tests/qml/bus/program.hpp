// The program itself on a desk of its own, and a person who meets it by the accessibility bus
// alone.
#pragma once

#include <functional>
#include <memory>

#include <QProcess>
#include <QString>
#include <QStringList>
#include <gtest/gtest.h>

#include "bus/desk.hpp"
#include "bus/heard.hpp"
#include "bus/reader.hpp"

namespace bus_tests {

// For one thing to come about on a machine whose processors are all taken.
constexpr int patience = 60'000;  // ms

// Waits until something holds, and lets what the bus tells be heard meanwhile; false when it does
// not within so many ms.
bool waits_until(const std::function<bool()>& holds, int longest = patience);

// Of a window, in pixels.
inline const QString wide = QStringLiteral("1280x900");

class Program : public testing::Test {
  protected:
    // Skips where this machine has no display or no bus to give.
    void SetUp() override;
    void TearDown() override;

    // Starts it on a copy of a shipped scenario, on a text, or on these files (on none it asks what a
    // person has), and waits for its window.
    void open(const QString& scenario, const QString& size = wide);
    void open_text(const QByteArray& text, const QString& size = wide);
    void start(const QStringList& files, const QString& size = wide);
    // All that shows of it now.
    [[nodiscard]] Told window() const { return reader_->read(window_); }
    // Waits for a part; fails the test when it never comes.
    Told part(Role role, const QString& name);
    // Acts on the part of a role and a name, once it is there.
    void act(Role role, const QString& name, const QString& action);
    // Puts a value by the value interface of such a part.
    void put(Role role, const QString& name, double value);
    // Opens a page by its entry on the rail, and waits until the entry tells that it is open.
    Told page(const QString& name);
    // The file that is open, and what it holds on the disk.
    [[nodiscard]] QString file() const { return file_; }
    // Where it lies, which is what the program takes for the person's home.
    [[nodiscard]] QString folder() const { return desk_->folder(); }
    [[nodiscard]] QByteArray file_text() const;
    [[nodiscard]] const Reader& reader() const { return *reader_; }
    [[nodiscard]] Heard& heard() { return *heard_; }

  private:
    std::unique_ptr<Desk> desk_;
    std::unique_ptr<Reader> reader_;
    std::unique_ptr<Heard> heard_;
    QProcess program_;
    QString file_;
    Item window_;
};

}  // namespace bus_tests
