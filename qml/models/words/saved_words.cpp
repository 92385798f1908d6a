#include "models/words/saved_words.hpp"

#include <QFile>
#include <QObject>

#include "scenario/file/file.hpp"

namespace touch {

namespace {

const QByteArray byte_order_mark = QByteArrayLiteral("\xEF\xBB\xBF");

}  // namespace

std::optional<QString> text_of(const QByteArray& bytes) {
    QString text = QString::fromUtf8(bytes);
    if (bytes.startsWith(byte_order_mark) && !text.startsWith(QChar(QChar::ByteOrderMark)))
        text.prepend(QChar(QChar::ByteOrderMark));
    return bytes_of(text) == bytes ? std::optional(text) : std::nullopt;
}

QByteArray bytes_of(const QString& text) {
    return text.toUtf8();
}

int line_that_is_no_text(const QByteArray& bytes) {
    const QList<QByteArray> lines = bytes.split('\n');
    for (qsizetype line = 0; line < lines.size(); ++line)
        if (!text_of(lines[line])) return static_cast<int>(line) + 1;
    return 1;
}

std::optional<QByteArray> bytes_in_file(const QString& path) {
    const auto bytes = scenario::bytes_of_file(QFile::encodeName(path).toStdString());
    if (!bytes) return std::nullopt;
    return QByteArray::fromStdString(*bytes);
}

scenario::Saving save_to(const QString& path, const QByteArray& bytes) {
    return scenario::save_bytes(QFile::encodeName(path).toStdString(),
                                {bytes.constData(), static_cast<std::size_t>(bytes.size())});
}

QString reason_in_words(const scenario::Saving& saving) {
    using scenario::SaveEnd;
    switch (saving.end) {
        case SaveEnd::changed_outside:
            return QObject::tr("another program changed it");
        case SaveEnd::no_folder:
            return QObject::tr("its folder is not there");
        case SaveEnd::not_allowed:
            return QObject::tr("nothing can be written in its folder");
        case SaveEnd::write_protected:
            return QObject::tr("it is write-protected");
        case SaveEnd::not_a_plain_file:
            return QObject::tr("it is no plain file");
        case SaveEnd::held:
            return QObject::tr("another program is writing it");
        case SaveEnd::no_room:
            return QObject::tr("the disk or the quota is full");
        case SaveEnd::too_large:
            return QObject::tr("it is larger than files may be there");
        case SaveEnd::out_of_memory:
            return QObject::tr("there is not enough memory");
        case SaveEnd::unsettled:
            return QObject::tr("the disk did not say that it stays if the power fails");
        case SaveEnd::saved:
        case SaveEnd::failed:
            break;
    }
    return QObject::tr("the disk refuses it");
}

QString fault_in_words(const QString& what) {
    return what.isEmpty() ? QObject::tr("A fault of this program")
                          : QObject::tr("A fault of this program (%1)").arg(what);
}

}  // namespace touch
