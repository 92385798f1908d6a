// The scenario file on the screen: its text as the person wrote it, changed value by value in
// place, so that comments, order and unknown keys stay.
#pragma once

#include <functional>
#include <string>

#include <QByteArray>
#include <QObject>
#include <QString>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

#include "models/fields/count_step.hpp"
#include "models/file/edit_history.hpp"
#include "units/result.hpp"

namespace touch {

// All there is of the work on one scenario.
struct Work {
    QString path;  // empty until it was saved
    bool example = false;
    QString saved;  // the text as it stands in the file
    QStringList texts;
    qsizetype now = 0;  // which of them is shown
};

class ScenarioDocument : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString text READ text NOTIFY textChanged)
    Q_PROPERTY(QString title READ title NOTIFY textChanged)
    Q_PROPERTY(QString fileName READ file_name NOTIFY fileChanged)
    // A worked example that came with the program, until it is saved as somebody's own.
    Q_PROPERTY(bool example READ example NOTIFY fileChanged)
    Q_PROPERTY(bool changed READ changed NOTIFY changedChanged)
    // There is a text, and it cannot be read as a scenario.
    Q_PROPERTY(bool broken READ broken NOTIFY textChanged)
    // A fault of this program that the text met, in its own words; empty when there is none.
    Q_PROPERTY(QString fault READ fault NOTIFY faultChanged)
    // There is a text that was worked out without a fault, other than this one.
    Q_PROPERTY(bool hasGood READ has_good NOTIFY faultChanged)
    // What could not be done with the file, in plain words; empty when all is well.
    Q_PROPERTY(QString trouble READ trouble NOTIFY troubleChanged)
    Q_PROPERTY(bool canUndo READ can_undo NOTIFY textChanged)
    Q_PROPERTY(bool canRedo READ can_redo NOTIFY textChanged)
    Q_PROPERTY(touch::CountStep* packs READ packs CONSTANT)
    Q_PROPERTY(touch::CountStep* panels READ panels CONSTANT)
    Q_PROPERTY(touch::CountStep* days READ days CONSTANT)

  public:
    explicit ScenarioDocument(QObject* parent = nullptr);
    ~ScenarioDocument() override;

    Q_INVOKABLE void openExample();
    // A worked scenario that came with the program (templates.hpp).
    Q_INVOKABLE void openTemplate(const QString& key);
    // A text of the person's own that lies in no file yet. False when the work on the one before
    // cannot be kept, which is told.
    Q_INVOKABLE bool begin(const QString& text);
    // False, with `trouble` told in the command's words and the document as it was, when the file
    // cannot be opened or holds no text.
    Q_INVOKABLE bool open(const QUrl& file);
    // False, with `trouble` told or `changedOutside` emitted, when it was not saved; the file is
    // then as it was.
    Q_INVOKABLE bool save();
    // To a file that the person agreed to replace where it is there.
    Q_INVOKABLE bool saveAs(const QUrl& file);
    // After `changedOutside`: what the screen shows goes into the file, and what the file holds
    // stays as a version; or what the file holds comes onto the screen, and what the screen shows
    // stays as a version and one step back. False, with `trouble` told, when either cannot be.
    Q_INVOKABLE bool keepMine();
    Q_INVOKABLE bool takeTheirs();

    // After a fault: back to the newest text that was worked out without one. The way forth stays.
    Q_INVOKABLE void backToGood();
    // A fault that came with a page goes with it; that of the plan stays as long as the text does.
    Q_INVOKABLE void leavePage();

    // The whole text to other programs, and a whole text from them: one that cannot be read as a
    // scenario is not taken, and `trouble` tells why.
    Q_INVOKABLE void copyText() const;
    Q_INVOKABLE bool pasteText();
    // Takes up the text of another file as a change of this one.
    Q_INVOKABLE bool takeTextOf(const QString& path);
    Q_INVOKABLE static QString pathOf(const QUrl& file) { return file.toLocalFile(); }
    Q_INVOKABLE static QString nameOf(const QUrl& file) { return file.fileName(); }
    // The folder of the file; until it has one, where people keep papers.
    Q_INVOKABLE QUrl folder() const;
    // Where it would be saved well: its own name, or one after its title in the folder of papers.
    Q_INVOKABLE QUrl suggestedFile() const;
    Q_INVOKABLE static bool isThere(const QUrl& file);
    // The same file where its name ends so already, or where the ending is empty.
    Q_INVOKABLE static QUrl withEnding(const QUrl& file, const QString& ending);
    // Says all of it again, as the language or the units changed.
    Q_INVOKABLE void tellAgain();

    // Changes one line of the text, from 1, whatever it holds; 0 is a new one at the end.
    Q_INVOKABLE void putLine(int line, const QString& words);

    Q_INVOKABLE void undo();
    Q_INVOKABLE void redo();

    // From one text of a scenario to the next.
    using Edit = std::function<units::Result<std::string>(const std::string&)>;

    // Makes a change that leaves the file as readable as it was. Gives why it was not made, in
    // words to stand beside the field; nothing when it was.
    QString change(const Edit& edit);

    // Changes one value of the text. False, with `trouble` told, when the key takes no such value.
    bool put(const QString& key, const QString& value);
    // A new text, which can be taken back.
    void set_text(const QString& text);

    // Keeps the bytes as a version of the file at a path; false when they cannot be kept.
    using VersionKeeper = std::function<bool(const QString& path, const QByteArray& bytes)>;
    void set_version_keeper(VersionKeeper keeper) { version_keeper_ = std::move(keeper); }
    // Asked before another file is opened; false when the work on this one would be lost.
    using Leaver = std::function<bool()>;
    void set_leaver(Leaver leaver) { leaver_ = std::move(leaver); }

    //   takes  of_plan: nothing about this text can be worked out, on any page
    void tell_fault(const QString& what, bool of_plan);
    // The text was worked out without a fault.
    void note_good(const QString& text);
    void tell(const QString& trouble);

    [[nodiscard]] Work work() const;
    void resume(const Work& work);

    [[nodiscard]] QString text() const { return text_; }
    [[nodiscard]] QString title() const { return title_; }
    [[nodiscard]] QString path() const { return path_; }
    [[nodiscard]] QString file_name() const;
    [[nodiscard]] bool broken() const { return broken_ && !text_.isEmpty(); }
    [[nodiscard]] bool example() const { return example_; }
    [[nodiscard]] bool changed() const { return text_ != saved_text_; }
    [[nodiscard]] QString trouble() const { return trouble_; }
    [[nodiscard]] QString fault() const { return fault_; }
    [[nodiscard]] bool has_good() const { return !last_good().isEmpty(); }
    [[nodiscard]] bool can_undo() const { return history_.can_undo(); }
    [[nodiscard]] bool can_redo() const { return history_.can_redo(); }
    [[nodiscard]] CountStep* packs() { return &packs_; }
    [[nodiscard]] CountStep* panels() { return &panels_; }
    [[nodiscard]] CountStep* days() { return &days_; }

  signals:
    void textChanged();
    void fileChanged();
    void changedChanged();
    void troubleChanged();
    void faultChanged();
    void aboutToSave();
    // The file holds another text than the one it was known to hold; nothing was saved.
    void changedOutside();
    void opened();   // a file, from its place
    void leaving();  // the last moment at which its text can be read

  private:
    bool take_text(const QString& text, const QString& called);
    // Saves to a path that holds what the person knows of, or has agreed to replace.
    bool write(const QString& path, bool agreed);
    bool not_saved(const QString& path, const QString& reason);
    bool may_leave(const QString& name);
    // Does what asks the engine; a fault of it is told.
    bool without_fault(const std::function<void()>& work);
    void tell_all();
    [[nodiscard]] QString last_good() const;
    void take_counts();
    void show_text(const QString& text);
    void take_file(const QString& path, const QString& text, bool example);

    EditHistory history_;
    QString text_;
    QString saved_text_;
    QString unsettled_text_;  // that the file came to hold without the disk's word that it stays
    QString path_;
    QString title_;
    QString title_of_;  // the file that has it
    QString trouble_;
    QString fault_;
    bool fault_of_plan_ = false;
    QString good_text_;
    QString good_before_;  // for a fault that only another question met
    VersionKeeper version_keeper_;
    Leaver leaver_;
    QString pack_key_;
    bool example_ = false;
    bool broken_ = false;
    CountStep packs_;
    CountStep panels_;
    CountStep days_;
};

}  // namespace touch
