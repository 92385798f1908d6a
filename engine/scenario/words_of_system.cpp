#include "scenario/words_of_system.hpp"

#include <cerrno>
#include <system_error>

namespace scenario {

using words::said;

words::Said words_of_system(int error) {
    switch (error) {
        case EACCES:
            return said<"Permission denied">();
        case EPERM:
            return said<"Operation not permitted">();
        case ENOENT:
            return said<"No such file or directory">();
        case ENOTDIR:
            return said<"Not a directory">();
        case EISDIR:
            return said<"Is a directory">();
        case EIO:
            return said<"Input/output error">();
        case EROFS:
            return said<"Read-only file system">();
        case ENOSPC:
            return said<"No space left on device">();
        case EDQUOT:
            return said<"Disk quota exceeded">();
        case EFBIG:
            return said<"File too large">();
        case ENOMEM:
            return said<"Cannot allocate memory">();
        case ENAMETOOLONG:
            return said<"File name too long">();
        case ELOOP:
            return said<"Too many levels of symbolic links">();
        case EMFILE:
            return said<"Too many open files">();
        case EWOULDBLOCK:
            return said<"Resource temporarily unavailable">();
        default:
            return std::generic_category().message(error);
    }
}

}  // namespace scenario
