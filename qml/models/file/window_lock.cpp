#include "models/file/window_lock.hpp"

#include <cerrno>
#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <QFile>
#include <QRandomGenerator>

namespace touch {

namespace {

QString path_of(const QString& folder, const QString& name) {
    return folder + QLatin1Char('/') + name + QStringLiteral(".lock");
}

// Whoever looks at a lock that is just being taken may take its file away.
bool is_still_there(int file, const QByteArray& path) {
    struct stat mine = {};
    struct stat there = {};
    return ::fstat(file, &mine) == 0 && ::stat(path.constData(), &there) == 0 &&
           mine.st_ino == there.st_ino && mine.st_dev == there.st_dev;
}

}  // namespace

QString new_name() {
    return QStringLiteral("%1").arg(QRandomGenerator::system()->generate64(), 16, 16,
                                    QLatin1Char('0'));
}

WindowLock::~WindowLock() {
    let_go();
}

void WindowLock::let_go() {
    if (file_ < 0) return;
    ::unlink(QFile::encodeName(path_).constData());
    ::close(file_);
    file_ = -1;
    name_.clear();
}

bool WindowLock::take(const QString& folder) {
    let_go();
    constexpr int tries = 10;
    for (int once = 0; once < tries; ++once) {
        const QString name = new_name();
        const QByteArray path = QFile::encodeName(path_of(folder, name));
        const int file = ::open(path.constData(), O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC, 0600);
        if (file < 0) return false;
        if (::flock(file, LOCK_EX | LOCK_NB) == 0 && is_still_there(file, path)) {
            path_ = path_of(folder, name);
            name_ = name;
            file_ = file;
            return true;
        }
        ::close(file);
    }
    return false;
}

bool WindowLock::is_held(const QString& folder, const QString& name) {
    const QByteArray path = QFile::encodeName(path_of(folder, name));
    const int file = ::open(path.constData(), O_RDWR | O_CLOEXEC);
    if (file < 0) return false;
    const bool held = ::flock(file, LOCK_EX | LOCK_NB) != 0 && errno == EWOULDBLOCK;
    if (!held) ::unlink(path.constData());  // of a process that was ended
    ::close(file);
    return held;
}

}  // namespace touch
