// The way from a file's bytes to the text on the screen and back, and what went wrong, in words.
#pragma once

#include <optional>

#include <QByteArray>
#include <QString>

#include "scenario/file/saving.hpp"

namespace touch {

// The text of a file, from which `bytes_of` makes the very same bytes; a byte order mark stays at
// its head. Nothing when the bytes are not UTF-8: such a text could only be changed as a whole.
[[nodiscard]] std::optional<QString> text_of(const QByteArray& bytes);
[[nodiscard]] QByteArray bytes_of(const QString& text);
// The first line that is not UTF-8, from 1.
[[nodiscard]] int line_that_is_no_text(const QByteArray& bytes);

// The bytes of a plain file; nothing when it cannot be read, is too large or is not there.
[[nodiscard]] std::optional<QByteArray> bytes_in_file(const QString& path);

[[nodiscard]] scenario::Saving save_to(const QString& path, const QByteArray& bytes);

// Why a file was not saved, as a clause: "the disk or the quota is full".
[[nodiscard]] QString reason_in_words(const scenario::Saving& saving);

// A fault of this program as a sentence without its end.
[[nodiscard]] QString fault_in_words(const QString& what);

}  // namespace touch
