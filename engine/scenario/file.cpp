#include "scenario/file.hpp"

#include <array>
#include <cerrno>
#include <cstdlib>
#include <cstring>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <fmt/format.h>

#include "scenario/document.hpp"
#include "scenario/save.hpp"

namespace scenario {
namespace {

tl::unexpected<units::Errors> refuse(const std::string& path, std::string found,
                                     std::string remedy) {
    return units::fail(units::Error{
        .where = "", .found = std::move(found), .remedy = std::move(remedy), .file = path});
}

std::string system_words(int error) {
    return std::generic_category().message(error);
}

// Closes its file at the end of its life.
class OpenFile {
  public:
    explicit OpenFile(int number) : number_(number) {}
    OpenFile(const OpenFile&) = delete;
    OpenFile& operator=(const OpenFile&) = delete;
    ~OpenFile() { close_now(); }

    [[nodiscard]] int number() const { return number_; }
    [[nodiscard]] bool is_open() const { return number_ >= 0; }
    bool close_now() {
        const bool closed = number_ < 0 || close(number_) == 0;
        number_ = -1;
        return closed;
    }

  private:
    int number_;
};

bool write_all(int file, std::string_view text) {
    while (!text.empty()) {
        const ssize_t written = write(file, text.data(), text.size());
        if (written < 0 && errno == EINTR) {
            continue;
        }
        if (written < 0) {
            return false;
        }
        text.remove_prefix(static_cast<std::size_t>(written));
    }
    return true;
}

// The file a link leads to, so that the link stays when the file is replaced.
std::string where_links_lead(const std::string& path) {
    char* const real = realpath(path.c_str(), nullptr);
    std::string found = real == nullptr ? path : std::string(real);
    std::free(real);
    return found;
}

// Without this the new name may be lost with the power, though the bytes are not.
void settle_folder(const std::string& folder) {
    const OpenFile open_folder(open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (open_folder.is_open()) {
        fsync(open_folder.number());
    }
}

}  // namespace

units::Result<std::string> bytes_of_file(const std::string& path) {
    const OpenFile file(open(path.c_str(), O_RDONLY | O_CLOEXEC));
    if (!file.is_open()) {
        const int error = errno;
        return refuse(path,
                      error == ENOENT
                          ? "there is no such file"
                          : fmt::format("the file cannot be opened ({})", system_words(error)),
                      error == EACCES ? "ask for leave to read it, or give another file"
                                      : "check the name and the folder");
    }
    struct stat status = {};
    if (fstat(file.number(), &status) == 0 && S_ISDIR(status.st_mode)) {
        return refuse(path, "this is a folder", "give a scenario file, such as outage.toml");
    }
    std::string bytes;
    std::array<char, 65536> part{};
    while (bytes.size() <= largest_file) {
        const ssize_t got = read(file.number(), part.data(), part.size());
        if (got < 0 && errno == EINTR) {
            continue;
        }
        if (got < 0) {
            return refuse(path, fmt::format("the file cannot be read ({})", system_words(errno)),
                          "give a scenario file, such as outage.toml");
        }
        if (got == 0) {
            return bytes;
        }
        bytes.append(part.data(), static_cast<std::size_t>(got));
    }
    return refuse(path,
                  fmt::format("the file has more than {} bytes; a scenario file has a few thousand",
                              largest_file),
                  "give a scenario file, such as outage.toml");
}

units::Result<std::monostate> save_file(const std::string& path, std::string_view text) {
    const std::string target = where_links_lead(path);
    std::string beside = target + ".XXXXXX";
    OpenFile file(mkostemp(beside.data(), O_CLOEXEC));
    if (!file.is_open()) {
        return refuse(path,
                      fmt::format("nothing can be written in its folder ({})", system_words(errno)),
                      "choose a folder you may write to; the file there is unchanged");
    }
    struct stat before = {};
    const bool existed = stat(target.c_str(), &before) == 0;
    // A new file gets what the process gives new files.
    const mode_t mask = umask(0);
    umask(mask);
    const mode_t mode = existed ? before.st_mode & 07777 : 0666 & ~mask;
    const bool written = write_all(file.number(), text) && fchmod(file.number(), mode) == 0 &&
                         fsync(file.number()) == 0;
    const bool closed = written && file.close_now();
    if (!closed || rename(beside.c_str(), target.c_str()) != 0) {
        const int error = errno;
        unlink(beside.c_str());
        return refuse(path, fmt::format("the file cannot be written ({})", system_words(error)),
                      "make room or choose another folder; the file there is unchanged");
    }
    settle_folder(folder_of(target));
    return std::monostate();
}

std::string folder_of(const std::string& path) {
    const std::size_t slash = path.rfind('/');
    return slash == std::string::npos ? "." : slash == 0 ? "/" : path.substr(0, slash);
}

}  // namespace scenario
