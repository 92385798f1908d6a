// The scenario file on the screen: its text as the person wrote it, changed value by value in
// place, so that comments, order and unknown keys stay.
#pragma once

#include "models/count_step.hpp"
#include <QObject>
#include <QString>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

namespace touch {

class ScenarioDocument : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString text READ text NOTIFY textChanged)
    Q_PROPERTY(QString title READ title NOTIFY textChanged)
    Q_PROPERTY(QString fileName READ file_name NOTIFY fileChanged)
    // A worked example that came with the program, until it is saved as somebody's own.
    Q_PROPERTY(bool example READ example NOTIFY fileChanged)
    Q_PROPERTY(bool changed READ changed NOTIFY changedChanged)
    // What could not be done with the file, in plain words; empty when all is well.
    Q_PROPERTY(QString trouble READ trouble NOTIFY troubleChanged)
    Q_PROPERTY(touch::CountStep* packs READ packs CONSTANT)
    Q_PROPERTY(touch::CountStep* panels READ panels CONSTANT)
    Q_PROPERTY(touch::CountStep* days READ days CONSTANT)

  public:
    explicit ScenarioDocument(QObject* parent = nullptr);

    Q_INVOKABLE void openExample();
    // False, with `trouble` told and the document as it was, when the file cannot be read.
    Q_INVOKABLE bool open(const QUrl& file);
    // Writes beside the file and renames, so that a power cut leaves the old or the new one.
    Q_INVOKABLE bool save();
    Q_INVOKABLE bool saveAs(const QUrl& file);

    // Changes one value of the text. False, with `trouble` told, when the key takes no such value.
    bool put(const QString& key, const QString& value);
    void set_text(const QString& text);

    [[nodiscard]] QString text() const { return text_; }
    [[nodiscard]] QString title() const { return title_; }
    [[nodiscard]] QString file_name() const;
    [[nodiscard]] bool example() const { return example_; }
    [[nodiscard]] bool changed() const { return text_ != saved_text_; }
    [[nodiscard]] QString trouble() const { return trouble_; }
    [[nodiscard]] CountStep* packs() { return &packs_; }
    [[nodiscard]] CountStep* panels() { return &panels_; }
    [[nodiscard]] CountStep* days() { return &days_; }

  signals:
    void textChanged();
    void fileChanged();
    void changedChanged();
    void troubleChanged();

  private:
    void tell(const QString& trouble);
    void take_counts();
    void take_file(const QString& path, const QString& text, bool example);

    QString text_;
    QString saved_text_;
    QString path_;
    QString title_;
    QString trouble_;
    QString pack_key_;
    bool example_ = false;
    CountStep packs_;
    CountStep panels_;
    CountStep days_;
};

}  // namespace touch
