// A name for this window among all that run, held for as long as the process lives: the system lets
// go of it however the process ends.
#pragma once

#include <QString>

namespace touch {

class WindowLock {
  public:
    WindowLock() = default;
    WindowLock(const WindowLock&) = delete;
    WindowLock& operator=(const WindowLock&) = delete;
    ~WindowLock();

    // Takes a name of its own, which no other has; false when nothing can be written in the folder.
    bool take(const QString& folder);
    void let_go();
    // Empty until it is taken.
    [[nodiscard]] QString name() const { return name_; }

    // Whether a process that lives holds this name.
    [[nodiscard]] static bool is_held(const QString& folder, const QString& name);

  private:
    QString path_;
    QString name_;
    int file_ = -1;
};

// A name that is not used yet: 16 hexadecimal digits.
[[nodiscard]] QString new_name();

}  // namespace touch
