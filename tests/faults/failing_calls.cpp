#include "failing_calls.hpp"

#include <array>
#include <cerrno>
#include <csignal>
#include <cstdarg>
#include <dlfcn.h>
#include <fcntl.h>
#include <string_view>
#include <sys/random.h>
#include <sys/stat.h>
#include <unistd.h>

namespace failing {
namespace {

constexpr std::array names = {"memory", "open",   "write",  "read",      "pread",    "fsync",
                              "close",  "rename", "unlink", "fstat",     "stat",     "fchmod",
                              "fchown", "flock",  "mkdir",  "getrandom", "readlink", "faccessat"};

thread_local bool counting = false;
thread_local long made = 0;
thread_local long nth = 0;
thread_local int error_then = 0;
thread_local How how_then = How::once;
thread_local std::array<int, names.size()> failed_calls{};

std::size_t place_of(const char* name) {
    std::size_t place = 0;
    while (std::string_view(names[place]) != name) {
        ++place;
    }
    return place;
}

// Whether the call that is about to be made is to fail; errno then says with what.
bool fails(const char* name) {
    if (!counting) {
        return false;
    }
    ++made;
    const bool now = nth > 0 && (made == nth || (how_then == How::ever_after && made > nth));
    if (!now || how_then == How::short_once) {
        return false;
    }
    if (how_then == How::killed) {
        counting = false;
        raise(SIGKILL);
    }
    ++failed_calls[place_of(name)];
    errno = error_then;
    return true;
}

template <class Call>
Call the_systems(const char* name) {
    return reinterpret_cast<Call>(dlsym(RTLD_NEXT, name));
}

}  // namespace

bool memory_fails() {
    return fails("memory");
}

void begin(long n, int error, How how) {
    made = 0;
    nth = n;
    error_then = error;
    how_then = how;
    failed_calls = {};
    counting = true;
}

Calls end() {
    counting = false;
    Calls calls{.made = made, .failed = {}};
    for (std::size_t place = 0; place < names.size(); ++place) {
        if (failed_calls[place] > 0) {
            calls.failed[names[place]] = failed_calls[place];
        }
    }
    return calls;
}

namespace {

// Half of a write that is to be short; all of it otherwise.
std::size_t half_when_short(std::size_t size) {
    if (counting && how_then == How::short_once && made == nth && size > 1) {
        ++failed_calls[place_of("write")];
        return size / 2;
    }
    return size;
}

int opened(const char* system_name, const char* path, int flags, mode_t mode) {
    static_assert(sizeof(mode_t) == sizeof(int));
    if (fails("open")) {
        return -1;
    }
    return the_systems<int (*)(const char*, int, ...)>(system_name)(path, flags, mode);
}

}  // namespace
}  // namespace failing

using failing::fails;
using failing::the_systems;

// NOLINTBEGIN: the names are those of the system
#pragma GCC diagnostic ignored "-Wshadow"  // flock is also a struct
extern "C" {

int open(const char* path, int flags, ...) {
    va_list rest;
    va_start(rest, flags);
    const mode_t mode = (flags & (O_CREAT | O_TMPFILE)) != 0 ? va_arg(rest, mode_t) : 0;
    va_end(rest);
    return failing::opened("open", path, flags, mode);
}
int open64(const char* path, int flags, ...) {
    va_list rest;
    va_start(rest, flags);
    const mode_t mode = (flags & (O_CREAT | O_TMPFILE)) != 0 ? va_arg(rest, mode_t) : 0;
    va_end(rest);
    return failing::opened("open64", path, flags, mode);
}
ssize_t write(int file, const void* bytes, size_t size) {
    return fails("write") ? -1
                          : the_systems<ssize_t (*)(int, const void*, size_t)>("write")(
                                file, bytes, failing::half_when_short(size));
}
ssize_t read(int file, void* bytes, size_t size) {
    return fails("read") ? -1
                         : the_systems<ssize_t (*)(int, void*, size_t)>("read")(file, bytes, size);
}
ssize_t pread(int file, void* bytes, size_t size, off_t at) {
    return fails("pread") ? -1
                          : the_systems<ssize_t (*)(int, void*, size_t, off_t)>("pread")(
                                file, bytes, size, at);
}
int fsync(int file) {
    return fails("fsync") ? -1 : the_systems<int (*)(int)>("fsync")(file);
}
// A close that fails has closed all the same.
int close(int file) {
    const bool failed = fails("close");
    const int error = errno;
    const int closed = the_systems<int (*)(int)>("close")(file);
    if (failed) {
        errno = error;
    }
    return failed ? -1 : closed;
}
int rename(const char* from, const char* to) noexcept {
    return fails("rename") ? -1
                           : the_systems<int (*)(const char*, const char*)>("rename")(from, to);
}
int unlink(const char* path) noexcept {
    return fails("unlink") ? -1 : the_systems<int (*)(const char*)>("unlink")(path);
}
int fstat(int file, struct stat* status) noexcept {
    return fails("fstat") ? -1 : the_systems<int (*)(int, struct stat*)>("fstat")(file, status);
}
int stat(const char* path, struct stat* status) noexcept {
    return fails("stat") ? -1
                         : the_systems<int (*)(const char*, struct stat*)>("stat")(path, status);
}
int fchmod(int file, mode_t mode) noexcept {
    return fails("fchmod") ? -1 : the_systems<int (*)(int, mode_t)>("fchmod")(file, mode);
}
int fchown(int file, uid_t owner, gid_t group) noexcept {
    return fails("fchown") ? -1
                           : the_systems<int (*)(int, uid_t, gid_t)>("fchown")(file, owner, group);
}
int flock(int file, int how) noexcept {
    return fails("flock") ? -1 : the_systems<int (*)(int, int)>("flock")(file, how);
}
int mkdir(const char* path, mode_t mode) noexcept {
    return fails("mkdir") ? -1 : the_systems<int (*)(const char*, mode_t)>("mkdir")(path, mode);
}
ssize_t getrandom(void* bytes, size_t size, unsigned flags) {
    return fails("getrandom")
               ? -1
               : the_systems<ssize_t (*)(void*, size_t, unsigned)>("getrandom")(bytes, size, flags);
}
ssize_t readlink(const char* path, char* bytes, size_t size) noexcept {
    return fails("readlink") ? -1
                             : the_systems<ssize_t (*)(const char*, char*, size_t)>("readlink")(
                                   path, bytes, size);
}
int faccessat(int folder, const char* path, int mode, int flags) noexcept {
    return fails("faccessat") ? -1
                              : the_systems<int (*)(int, const char*, int, int)>("faccessat")(
                                    folder, path, mode, flags);
}

}  // extern "C"

// NOLINTEND
