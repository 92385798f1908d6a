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

std::string folder_of(const std::string& path) {
    const std::size_t slash = path.rfind('/');
    return slash == std::string::npos ? "." : slash == 0 ? "/" : path.substr(0, slash);
}

}  // namespace scenario
