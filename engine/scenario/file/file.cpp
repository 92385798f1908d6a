#include "scenario/file/file.hpp"

#include <array>
#include <cerrno>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include "scenario/file/document.hpp"
#include "scenario/words_of_system.hpp"

namespace scenario {
namespace {

using words::Said;
using words::said;

tl::unexpected<units::Errors> refuse(const std::string& path, Said found, Said remedy) {
    return units::fail(units::Error{
        .where = "", .found = std::move(found), .remedy = std::move(remedy), .file = path});
}

Said why_not_opened(int error) {
    return error == ENOENT ? said<"there is no such file">()
                           : said<"the file cannot be opened ({reason})">(words_of_system(error));
}

Said remedy_of(int error) {
    return error == EACCES ? said<"ask for permission to read it, or give another file">()
                           : said<"check the name and the folder">();
}

// What it is in words; nothing for a plain file.
Said kind_other_than_plain(mode_t mode) {
    return S_ISREG(mode)    ? Said()
           : S_ISDIR(mode)  ? said<"this is a folder">()
           : S_ISFIFO(mode) ? said<"this is a pipe between programs, not a file">()
           : S_ISSOCK(mode) ? said<"this is a socket, not a file">()
                            : said<"this is a device, not a file">();
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

tl::unexpected<units::Errors> too_large(const std::string& path, const WantedFile& wanted) {
    return refuse(path,
                  said<"the file has more than {n} bytes; {usual}">(wanted.largest, wanted.usual),
                  wanted.remedy);
}

// To the end, or to the largest size that is wanted.
units::Result<std::string> read_to_the_end(const OpenFile& file, const std::string& path,
                                           const WantedFile& wanted) {
    std::string bytes;
    std::array<char, 65536> part{};
    while (bytes.size() <= wanted.largest) {
        const ssize_t got = read(file.number(), part.data(), part.size());
        if (got < 0 && errno == EINTR) {
            continue;
        }
        if (got < 0) {
            return refuse(path, said<"the file cannot be read ({reason})">(words_of_system(errno)),
                          wanted.remedy);
        }
        if (got == 0) {
            return bytes;
        }
        bytes.append(part.data(), static_cast<std::size_t>(got));
    }
    return too_large(path, wanted);
}

}  // namespace

units::Result<std::string> bytes_of_file(const std::string& path, const WantedFile& wanted) {
    // Looked at before it is opened: opening alone waits at a pipe and acts on some devices.
    struct stat status = {};
    if (stat(path.c_str(), &status) != 0) {
        return refuse(path, why_not_opened(errno), remedy_of(errno));
    }
    if (const Said kind = kind_other_than_plain(status.st_mode); !kind.empty()) {
        return refuse(path, kind, wanted.remedy);
    }
    const OpenFile file(open(path.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK | O_NOCTTY));
    if (!file.is_open()) {
        return refuse(path, why_not_opened(errno), remedy_of(errno));
    }
    // Another may have taken its place in between.
    if (fstat(file.number(), &status) != 0 || !kind_other_than_plain(status.st_mode).empty()) {
        return refuse(path, said<"this is not a plain file">(), wanted.remedy);
    }
    if (status.st_size > 0 && static_cast<std::size_t>(status.st_size) > wanted.largest) {
        return too_large(path, wanted);
    }
    return read_to_the_end(file, path, wanted);
}

std::string folder_of(const std::string& path) {
    const std::size_t slash = path.rfind('/');
    return slash == std::string::npos ? "." : slash == 0 ? "/" : path.substr(0, slash);
}

}  // namespace scenario
