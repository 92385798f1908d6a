// What lies in a folder, for the program's own dialog: folders first, then the files that are asked
// for, and the places a person goes to.
#pragma once

#include <QAbstractListModel>
#include <QFileInfo>
#include <QString>
#include <QStringList>
#include <QUrl>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

namespace touch {

class FolderModel : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    // As a URL; one that is no folder leads to the home folder.
    Q_PROPERTY(QUrl folder READ folder WRITE set_folder NOTIFY listed)
    Q_PROPERTY(QString path READ path NOTIFY listed)
    // As a dialog has them, such as "Scenario files (*.toml)": the first that fits shows a file.
    Q_PROPERTY(QStringList filters READ filters WRITE set_filters NOTIFY filtersChanged)
    Q_PROPERTY(int count READ count NOTIFY listed)
    Q_PROPERTY(bool canGoUp READ can_go_up NOTIFY listed)
    // Something can be saved there.
    Q_PROPERTY(bool writable READ writable NOTIFY listed)
    // Why nothing is shown, in plain words; empty when all is well.
    Q_PROPERTY(QString trouble READ trouble NOTIFY listed)
    // {name, url, here} each.
    Q_PROPERTY(QVariantList places READ places NOTIFY listed)

  public:
    enum Role { NameRole = Qt::UserRole, DetailRole, SpokenRole, UrlRole, FolderRole };
    static constexpr int most_shown = 2000;  // of a folder; the rest is told of

    explicit FolderModel(QObject* parent = nullptr);

    // Whether the system has a dialog of its own, which people know.
    Q_INVOKABLE static bool platformHasDialog();
    Q_INVOKABLE void goUp();
    // Looks again at what is there.
    Q_INVOKABLE void look();
    Q_INVOKABLE QUrl urlAt(int row) const;
    Q_INVOKABLE bool isFolderAt(int row) const;
    // The file of that name in the folder; none where it is no name of a file.
    Q_INVOKABLE QUrl fileNamed(const QString& name) const;
    // How it is called in its folder, as it is typed.
    Q_INVOKABLE static QString nameOf(const QUrl& file);
    // Where it lies; the folder of documents, or the home folder, where it lies nowhere.
    Q_INVOKABLE static QUrl folderOf(const QUrl& file);

    [[nodiscard]] QUrl folder() const { return QUrl::fromLocalFile(path_); }
    void set_folder(const QUrl& folder);
    [[nodiscard]] QString path() const;
    [[nodiscard]] QStringList filters() const { return filters_; }
    void set_filters(const QStringList& filters);
    [[nodiscard]] int count() const { return static_cast<int>(entries_.size()); }
    [[nodiscard]] bool can_go_up() const;
    [[nodiscard]] bool writable() const;
    [[nodiscard]] QString trouble() const { return trouble_; }
    [[nodiscard]] QVariantList places() const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QHash<int, QByteArray> roleNames() const override;

  signals:
    void listed();
    void filtersChanged();

  private:
    QString path_;
    QStringList filters_;
    QList<QFileInfo> entries_;
    QString trouble_;
};

}  // namespace touch
