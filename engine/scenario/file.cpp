#include "scenario/file.hpp"

#include <array>
#include <cerrno>
#include <fcntl.h>
#include <sys/stat.h>
#include <system_error>
#include <unistd.h>

#include <fmt/format.h>

#include "scenario/document.hpp"

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

std::string why_not_opened(int error) {
    return error == ENOENT ? "there is no such file"
                           : fmt::format("the file cannot be opened ({})", system_words(error));
}

std::string remedy_of(int error) {
    return error == EACCES ? "ask for leave to read it, or give another file"
                           : "check the name and the folder";
}

// What it is in words; null for a plain file.
const char* kind_other_than_plain(mode_t mode) {
    return S_ISREG(mode)    ? nullptr
           : S_ISDIR(mode)  ? "this is a folder"
           : S_ISFIFO(mode) ? "this is a pipe between programs, not a file"
           : S_ISSOCK(mode) ? "this is a socket, not a file"
                            : "this is a device, not a file";
}

// Closes its file at the end of its life.
class OpenFile {
  public:
    explicit OpenFile(int number) : number_(number) {}
    OpenFile(const OpenFile&) = delete;
    OpenFile& operator=(const OpenFile&) = delete;
    ~OpenFile() {
        if (is_open()) {
            close(number_);
        }
    }

    [[nodiscard]] int number() const { return number_; }
    [[nodiscard]] bool is_open() const { return number_ >= 0; }

  private:
    int number_;
};

}  // namespace

units::Result<std::string> bytes_of_file(const std::string& path, const WantedFile& wanted) {
    // Looked at before it is opened: opening alone waits at a pipe and acts on some devices.
    struct stat status = {};
    if (stat(path.c_str(), &status) != 0) {
        return refuse(path, why_not_opened(errno), remedy_of(errno));
    }
    if (const char* kind = kind_other_than_plain(status.st_mode)) {
        return refuse(path, kind, std::string(wanted.remedy));
    }
    const OpenFile file(open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK | O_NOCTTY));
    if (!file.is_open()) {
        return refuse(path, why_not_opened(errno), remedy_of(errno));
    }
    // Another may have taken its place in between.
    if (fstat(file.number(), &status) != 0 || kind_other_than_plain(status.st_mode) != nullptr) {
        return refuse(path, "this is not a plain file", std::string(wanted.remedy));
    }
    const auto too_large = [&] {
        return refuse(
            path, fmt::format("the file has more than {} bytes; {}", wanted.largest, wanted.usual),
            std::string(wanted.remedy));
    };
    if (status.st_size > 0 && static_cast<std::size_t>(status.st_size) > wanted.largest) {
        return too_large();
    }
    std::string bytes;
    std::array<char, 65536> part{};
    while (bytes.size() <= wanted.largest) {
        const ssize_t got = read(file.number(), part.data(), part.size());
        if (got < 0 && errno == EINTR) {
            continue;
        }
        if (got < 0) {
            return refuse(path, fmt::format("the file cannot be read ({})", system_words(errno)),
                          std::string(wanted.remedy));
        }
        if (got == 0) {
            return bytes;
        }
        bytes.append(part.data(), static_cast<std::size_t>(got));
    }
    return too_large();
}

std::string folder_of(const std::string& path) {
    const std::size_t slash = path.rfind('/');
    return slash == std::string::npos ? "." : slash == 0 ? "/" : path.substr(0, slash);
}

}  // namespace scenario
