#include "scenario/file/saving.hpp"

#include <algorithm>
#include <array>
#include <cerrno>
#include <csignal>
#include <cstdint>
#include <ctime>
#include <exception>
#include <fcntl.h>
#include <new>
#include <optional>
#include <sys/file.h>
#include <sys/random.h>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>
#include <utility>

#include <fmt/format.h>

#include "scenario/file/file.hpp"
#include "scenario/words_of_system.hpp"

namespace scenario {
namespace {

using words::Said;
using words::said;

constexpr int most_links = 40;             // as the system follows
constexpr std::size_t longest_name = 200;  // of 255 bytes, the rest is for what stands beside it
constexpr int looks_for_the_lock = 200;    // each a hundredth of a second: 2 s
constexpr mode_t of_everybody = 0666;      // less what the process takes away
constexpr mode_t permission_bits = 07777;

Saving ended(SaveEnd end) {
    return {.end = end, .error = errno};
}

SaveEnd end_of(int error) {
    switch (error) {
        case ENOSPC:
        case EDQUOT:
            return SaveEnd::no_room;
        case EFBIG:
            return SaveEnd::too_large;
        case EACCES:
        case EPERM:
        case EROFS:
            return SaveEnd::not_allowed;
        case ENOENT:
        case ENOTDIR:
            return SaveEnd::no_folder;
        case ENOMEM:
            return SaveEnd::out_of_memory;
        default:
            return SaveEnd::failed;
    }
}

Saving failed_now() {
    const int error = errno;
    return {.end = end_of(error), .error = error};
}

template <class Call>
auto again_when_interrupted(const Call& call) {
    auto result = call();
    while (result < 0 && errno == EINTR) {
        result = call();
    }
    return result;
}

class Descriptor {
  public:
    explicit Descriptor(int number) : number_(number) {}
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    ~Descriptor() { close_now(); }

    [[nodiscard]] int number() const { return number_; }
    [[nodiscard]] bool is_open() const { return number_ >= 0; }
    bool close_now() {
        const int number = std::exchange(number_, -1);
        return number < 0 || close(number) == 0 || errno == EINTR;  // Linux closes all the same
    }

  private:
    int number_;
};

// Beyond a limit on the size of files the system sends a signal that ends the program; here the
// failed write is enough. Held back for this thread alone, and taken away if it came.
class SizeSignalHeldBack {
  public:
    SizeSignalHeldBack() {
        sigemptyset(&signal_);
        sigaddset(&signal_, SIGXFSZ);
        pthread_sigmask(SIG_BLOCK, &signal_, &before_);
    }
    SizeSignalHeldBack(const SizeSignalHeldBack&) = delete;
    SizeSignalHeldBack& operator=(const SizeSignalHeldBack&) = delete;
    ~SizeSignalHeldBack() {
        const int error = errno;
        if (sigismember(&before_, SIGXFSZ) == 0) {
            const timespec at_once = {};
            while (sigtimedwait(&signal_, nullptr, &at_once) == SIGXFSZ) {
            }
        }
        pthread_sigmask(SIG_SETMASK, &before_, nullptr);
        errno = error;
    }

  private:
    sigset_t signal_{};
    sigset_t before_{};
};

std::string name_in(const std::string& path) {
    return path.substr(path.rfind('/') + 1);
}

// A name that nobody can lay something under beforehand; empty when the system gives no chance.
std::string name_beside(const std::string& target) {
    std::uint64_t chance = 0;
    const ssize_t got =
        again_when_interrupted([&] { return getrandom(&chance, sizeof chance, 0); });
    return got == sizeof chance ? fmt::format("{}/.{}.{:016x}", folder_of(target),
                                              name_in(target).substr(0, longest_name), chance)
                                : std::string();
}

// A new file, taken away at the end of its life unless it has become the one that is saved.
class FileBeside {
  public:
    FileBeside(std::string path, mode_t mode)
        : path_(std::move(path)),
          file_(path_.empty() ? -1
                              : open(path_.c_str(), O_RDWR | O_CREAT | O_EXCL | O_CLOEXEC, mode)),
          made_(file_.is_open()) {}
    FileBeside(const FileBeside&) = delete;
    FileBeside& operator=(const FileBeside&) = delete;
    ~FileBeside() {
        if (made_) {
            const int error = errno;
            unlink(path_.c_str());
            errno = error;
        }
    }

    [[nodiscard]] bool made() const { return made_; }
    [[nodiscard]] int number() const { return file_.number(); }
    bool close_now() { return file_.close_now(); }
    bool become(const std::string& target) {
        if (rename(path_.c_str(), target.c_str()) != 0) {
            return false;
        }
        made_ = false;
        return true;
    }

  private:
    std::string path_;
    Descriptor file_;
    bool made_;
};

bool write_all(int file, std::string_view bytes) {
    while (!bytes.empty()) {
        const ssize_t written =
            again_when_interrupted([&] { return write(file, bytes.data(), bytes.size()); });
        if (written < 0) {
            return false;
        }
        if (written == 0) {  // neither an error nor a byte: there is no more room
            errno = ENOSPC;
            return false;
        }
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return true;
}

enum class Held { these, others, unreadable };

// Whether an open file holds exactly these bytes.
Held looked_at(int file, std::string_view bytes) {
    std::array<char, 65536> part{};
    off_t at = 0;
    while (true) {
        const ssize_t got =
            again_when_interrupted([&] { return pread(file, part.data(), part.size(), at); });
        if (got < 0) {
            return Held::unreadable;
        }
        if (got == 0) {
            return bytes.empty() ? Held::these : Held::others;
        }
        const auto size = static_cast<std::size_t>(got);
        if (size > bytes.size() || !std::equal(part.data(), part.data() + size, bytes.data())) {
            return Held::others;
        }
        bytes.remove_prefix(size);
        at += got;
    }
}

// The file that links lead to, whether or not it is there, so that the link stays when the file is
// replaced. Nothing when they lead in a circle.
std::optional<std::string> where_links_lead(std::string path) {
    for (int links = 0; links <= most_links; ++links) {
        std::array<char, 4096> target{};
        const ssize_t size = readlink(path.c_str(), target.data(), target.size());
        if (size < 0) {
            return errno == EINVAL || errno == ENOENT ? std::optional(std::move(path))
                                                      : std::nullopt;
        }
        const std::string to(target.data(), static_cast<std::size_t>(size));
        path = to.starts_with('/') ? to : folder_of(path) + '/' + to;
    }
    errno = ELOOP;
    return std::nullopt;
}

// Those of the file before. Where the group cannot be kept, the new one may do no more than
// everybody.
bool give_permissions(int file, const struct stat& before) {
    mode_t mode = before.st_mode & permission_bits;
    struct stat now = {};
    if (fstat(file, &now) != 0) {
        return false;
    }
    const bool other_hands = now.st_uid != before.st_uid || now.st_gid != before.st_gid;
    if (other_hands && fchown(file, before.st_uid, before.st_gid) != 0 &&
        fchown(file, static_cast<uid_t>(-1), before.st_gid) != 0) {
        const mode_t as_everybody = (mode & S_IRWXO) << 3U;
        mode = (mode & (S_IRWXU | S_IRWXO)) | (mode & as_everybody);
    }
    return fchmod(file, mode) == 0;
}

// Held while a file is looked at and replaced, by everybody who saves in this way. The lock lies on
// the file that is about to give way; who waited for it finds another in its place and begins anew.
class Turn {
  public:
    enum class State { taken, no_file, held, failed };

    explicit Turn(const std::string& path) {
        for (int look = 0; look < looks_for_the_lock; ++look) {
            file_.emplace(open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK | O_NOCTTY));
            if (!file_->is_open()) {
                state_ = errno == ENOENT ? State::no_file : State::failed;
                return;
            }
            const bool locked = flock(file_->number(), LOCK_EX | LOCK_NB) == 0;
            // A disk without locks takes none.
            if (locked || errno != EWOULDBLOCK) {
                struct stat mine = {};
                struct stat there = {};
                if (fstat(file_->number(), &mine) != 0) {
                    state_ = State::failed;
                    return;
                }
                const bool is_there = stat(path.c_str(), &there) == 0;
                if (!is_there && errno != ENOENT) {
                    state_ = State::failed;
                    return;
                }
                if (is_there && mine.st_ino == there.st_ino && mine.st_dev == there.st_dev) {
                    state_ = State::taken;
                    return;
                }
            }
            constexpr timespec moment = {.tv_sec = 0, .tv_nsec = 10'000'000};
            nanosleep(&moment, nullptr);
        }
        errno = EWOULDBLOCK;
        state_ = State::held;
    }
    [[nodiscard]] State state() const { return state_; }
    [[nodiscard]] int number() const { return file_->number(); }

  private:
    std::optional<Descriptor> file_;
    State state_ = State::failed;
};

// Without this the new name may be lost with the power, though the bytes are not.
bool settle(const Descriptor& folder) {
    // A folder that may be written to and not read cannot be asked; some disks have no answer.
    return !folder.is_open() ||
           again_when_interrupted([&] { return fsync(folder.number()); }) == 0 || errno == EINVAL ||
           errno == ENOTSUP;
}

Saving replace(const std::string& target, const struct stat* before, std::string_view bytes) {
    const Descriptor folder(open(folder_of(target).c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (!folder.is_open() && errno != EACCES) {
        return failed_now();
    }
    // While it is written nobody else may read what perhaps nobody else may read afterwards.
    FileBeside beside(name_beside(target), before == nullptr ? of_everybody : S_IRUSR | S_IWUSR);
    if (!beside.made()) {
        return failed_now();
    }
    if (!write_all(beside.number(), bytes) ||
        (before != nullptr && !give_permissions(beside.number(), *before)) ||
        again_when_interrupted([&] { return fsync(beside.number()); }) != 0) {
        return failed_now();
    }
    const Held holds = looked_at(beside.number(), bytes);
    if (holds == Held::others) {
        return {.end = SaveEnd::failed, .error = EIO};
    }
    if (holds == Held::unreadable || !beside.close_now() || !beside.become(target)) {
        return failed_now();
    }
    return settle(folder) ? Saving{.end = SaveEnd::saved, .error = 0} : ended(SaveEnd::unsettled);
}

Saving save(const std::string& path, const std::string_view* known, std::string_view bytes) {
    const SizeSignalHeldBack held_back;
    const std::optional<std::string> target = where_links_lead(path);
    if (!target) {
        return failed_now();
    }
    struct stat before = {};
    if (stat(target->c_str(), &before) != 0) {
        return errno == ENOENT ? replace(*target, nullptr, bytes) : failed_now();
    }
    if (!S_ISREG(before.st_mode)) {
        return {.end = SaveEnd::not_a_plain_file, .error = 0};
    }
    if (faccessat(AT_FDCWD, target->c_str(), W_OK, AT_EACCESS) != 0) {
        return errno == EACCES ? ended(SaveEnd::write_protected) : failed_now();
    }
    if (known == nullptr) {
        return replace(*target, &before, bytes);
    }
    const Turn turn(*target);
    if (turn.state() == Turn::State::no_file) {
        return replace(*target, nullptr, bytes);
    }
    if (turn.state() != Turn::State::taken) {
        return turn.state() == Turn::State::held ? ended(SaveEnd::held) : failed_now();
    }
    const Held holds = looked_at(turn.number(), *known);
    const Held holds_new = holds == Held::others ? looked_at(turn.number(), bytes) : holds;
    if (holds == Held::unreadable || holds_new == Held::unreadable) {
        return failed_now();
    }
    if (holds_new == Held::others) {
        return {.end = SaveEnd::changed_outside, .error = 0};
    }
    return replace(*target, &before, bytes);
}

Saving save_or_say_why(const std::string& path, const std::string_view* known,
                       std::string_view bytes) noexcept {
    try {
        return save(path, known, bytes);
    } catch (const std::bad_alloc&) {
        return {.end = SaveEnd::out_of_memory, .error = ENOMEM};
    } catch (const std::exception&) {
        return {.end = SaveEnd::failed, .error = 0};
    }
}

struct Reason {
    Said found;
    Said remedy;
};

Reason reason_of(SaveEnd end) {
    switch (end) {
        case SaveEnd::changed_outside:
            return {said<"the file was changed by another program since it was read">(),
                    said<"look at both before one replaces the other">()};
        case SaveEnd::no_folder:
            return {said<"its folder is not there">(), said<"choose a folder that is there">()};
        case SaveEnd::not_allowed:
            return {said<"nothing can be written in its folder">(),
                    said<"choose a folder you may write to">()};
        case SaveEnd::write_protected:
            return {said<"the file is write-protected">(), said<"give it another name">()};
        case SaveEnd::not_a_plain_file:
            return {said<"this is no plain file">(), said<"give it another name">()};
        case SaveEnd::held:
            return {said<"another program is writing the file">(), said<"try again in a moment">()};
        case SaveEnd::no_room:
            return {said<"the disk or the quota is full">(),
                    said<"make room or choose another disk">()};
        case SaveEnd::too_large:
            return {said<"the file is larger than files may be here">(),
                    said<"choose another disk">()};
        case SaveEnd::out_of_memory:
            return {said<"there is not enough memory">(),
                    said<"close other programs and try again">()};
        case SaveEnd::unsettled:
            return {said<"the disk did not say that the file stays if the power fails">(),
                    said<"save it again">()};
        case SaveEnd::saved:
        case SaveEnd::failed:
            break;
    }
    return {said<"the file cannot be written">(), said<"choose another folder">()};
}

}  // namespace

Saving save_bytes(const std::string& path, std::string_view bytes) noexcept {
    return save_or_say_why(path, nullptr, bytes);
}

Saving save_bytes_over(const std::string& path, std::string_view known,
                       std::string_view bytes) noexcept {
    return save_or_say_why(path, &known, bytes);
}

units::Error not_saved(const std::string& path, const Saving& saving) {
    const auto [found, remedy] = reason_of(saving.end);
    const bool as_it_was = saving.end != SaveEnd::unsettled && saving.end != SaveEnd::no_folder;
    return {.where = "",
            .found = saving.error == 0
                         ? found
                         : said<"{what} ({reason})">(found, words_of_system(saving.error)),
            .remedy = as_it_was ? said<"{remedy}; the file there is unchanged">(remedy) : remedy,
            .file = path};
}

units::Result<std::monostate> save_file(const std::string& path, std::string_view text) {
    const Saving saving = save_bytes(path, text);
    if (!saving.saved()) {
        return units::fail(not_saved(path, saving));
    }
    return std::monostate();
}

}  // namespace scenario
