// The work on the screen, kept so that a power cut, a kill or a restart loses nothing older than a
// moment: the text with its way back and forth, and the last ten versions of a file saved over.
//
// Each piece of work lies in a file of its own, named by the whole path of the scenario and by the
// window it is on. A window holds its name for as long as its process lives; a piece whose name
// nobody holds was left behind, and is taken up or offered again.
#pragma once

#include <optional>

#include <QByteArray>
#include <QObject>
#include <QString>
#include <QTimer>
#include <QUrl>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "models/file/scenario_document.hpp"
#include "models/file/window_lock.hpp"

namespace touch {

class KeptWork : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(touch::ScenarioDocument* document READ document WRITE set_document NOTIFY changed)
    // Where it is kept; empty keeps nothing.
    Q_PROPERTY(QString folder READ folder WRITE set_folder NOTIFY changed)
    // Why unsaved work cannot be kept; empty while it can.
    Q_PROPERTY(QString trouble READ trouble NOTIFY troubleChanged)
    // What was taken up, or lies elsewhere; empty when there is nothing to tell.
    Q_PROPERTY(QString told READ told NOTIFY toldChanged)
    // Unsaved work that is on no window, the newest first: {piece, name, detail} each.
    Q_PROPERTY(QVariantList left READ left NOTIFY leftChanged)

  public:
    static constexpr int at_most_after = 1000;   // ms from a change to its being kept
    static constexpr int again_after = 5000;     // ms, where it could not be kept
    static constexpr int most_starts = 3;        // with work that ended the program each time
    static constexpr int settled_after = 10000;  // ms of a start, after which it counts as one
    static constexpr int most_left = 20;         // pieces; of more, the oldest are put away

    explicit KeptWork(QObject* parent = nullptr);
    ~KeptWork() override;

    // The place for this person's work on this machine.
    Q_INVOKABLE static QString usualFolder();

    // Takes up the work that was left behind: the newest when no file is asked for, before that
    // which is saved what is not; else only work on that file that was not saved. False when there
    // is none; the document is then as it was.
    Q_INVOKABLE bool resume(const QUrl& file);

    // The versions that were saved over, the newest first: {path, shown} each.
    Q_INVOKABLE QVariantList versionsKept() const;

    // Brings a piece onto the screen; what is there is kept first. False when it has gone.
    Q_INVOKABLE bool takeUp(const QString& piece);
    // Offers a piece no longer; its text stays as a version of its file.
    Q_INVOKABLE bool putAway(const QString& piece);
    // What was told has been read.
    Q_INVOKABLE void heard();

    [[nodiscard]] ScenarioDocument* document() const { return document_; }
    void set_document(ScenarioDocument* document);
    [[nodiscard]] QString folder() const { return folder_; }
    void set_folder(const QString& folder);
    [[nodiscard]] QString trouble() const { return trouble_; }
    [[nodiscard]] QString told() const { return told_; }
    [[nodiscard]] QVariantList left() const;

    // Writes at once; false when it cannot be written.
    bool keep();

  signals:
    void changed();
    void troubleChanged();
    void toldChanged();
    void leftChanged();

  private:
    struct Piece {
        QString file;  // within work_folder
        QString key;
        QString window;
    };

    [[nodiscard]] QString work_folder() const;
    [[nodiscard]] QString place(const QString& file) const;
    [[nodiscard]] QList<Piece> all_pieces() const;
    // Of windows that are no more, the newest first.
    [[nodiscard]] QList<Piece> left_behind() const;
    bool hold_a_name();
    bool keep_as(const Work& work, bool unsaved);
    void keep_at_the_end();
    // Makes a piece this window's own; false when another was faster.
    bool claim(const Piece& piece);
    bool leave();
    bool put_away(const QString& piece);
    void look_for_left();
    void take_up(const Work& work, const QString& shown);
    //   starts   of the program with this work, this one counted
    void go_on_with(const Work& work, int starts, const QString& shown);
    void tell_of_other_windows();
    // Beside what was told and not put away yet.
    void tell(const QString& words);
    void set_trouble(const QString& trouble);
    [[nodiscard]] bool is_on_another_window(const QString& path) const;

    ScenarioDocument* document_ = nullptr;
    QString folder_;
    QString own_;  // the file of this window's piece; empty when there is none
    QString trouble_;
    QString told_;
    int starts_ = 0;            // with this work, before it is known that none ends the program
    bool told_of_all_ = false;  // what lies there of other files is told once
    WindowLock name_;
    QTimer timer_;
};

}  // namespace touch
