// How the person wants things shown: theme, size of the text, units, clock, language. Kept from one
// start to the next.
#pragma once

#include <QObject>
#include <QQmlEngine>
#include <QString>
#include <QTranslator>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

namespace touch {

class Look : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(QString theme READ theme WRITE set_theme NOTIFY changed)  // one of themes()
    Q_PROPERTY(bool dark READ dark NOTIFY changed)
    // Nothing was kept of an earlier start.
    Q_PROPERTY(bool first READ first NOTIFY changed)
    // Black and white alone, with heavy edges.
    Q_PROPERTY(bool strong READ strong NOTIFY changed)
    Q_PROPERTY(double textScale READ text_scale WRITE set_text_scale NOTIFY changed)  // 1 to 2
    Q_PROPERTY(bool still READ still WRITE set_still NOTIFY changed)           // nothing glides on
    Q_PROPERTY(QString units READ units WRITE set_units NOTIFY told)           // metric, us
    Q_PROPERTY(QString clock READ clock WRITE set_clock NOTIFY told)           // 24, 12
    Q_PROPERTY(QString language READ language WRITE set_language NOTIFY told)  // en, de, es
    // {value, label} of each language there is a catalogue of, as it calls itself.
    Q_PROPERTY(QVariantList languages READ languages CONSTANT)
    Q_PROPERTY(QString decimalMark READ decimal_mark NOTIFY told)  // "." or ","

    // Why it cannot be kept for the next start; empty while it can.
    Q_PROPERTY(QString trouble READ trouble NOTIFY troubleChanged)

  public:
    explicit Look(QQmlEngine* engine, QObject* parent = nullptr);
    [[nodiscard]] static QStringList themes();
    static Look* create(QQmlEngine* engine, QJSEngine* script);

    // Takes up what was kept in a folder, and keeps there what is changed from now on.
    Q_INVOKABLE void keepIn(const QString& folder);
    // An amount as it stands in the file, with the decimal mark of the language.
    Q_INVOKABLE QString amount(const QString& of_file) const;
    // A unit of the file as it is shown ("°C") and as it is read out ("degrees Celsius").
    Q_INVOKABLE QString unitShown(const QString& of_file) const;
    Q_INVOKABLE QString unitSpoken(const QString& of_file) const;

    [[nodiscard]] QString theme() const { return theme_; }
    void set_theme(const QString& theme);
    [[nodiscard]] bool dark() const;
    [[nodiscard]] bool first() const { return first_; }
    [[nodiscard]] bool strong() const { return theme_ == QStringLiteral("contrast"); }
    [[nodiscard]] double text_scale() const { return text_scale_; }
    void set_text_scale(double scale);
    [[nodiscard]] bool still() const { return still_; }
    void set_still(bool still);
    [[nodiscard]] QString units() const { return units_; }
    void set_units(const QString& units);
    [[nodiscard]] QString clock() const { return clock_; }
    void set_clock(const QString& clock);
    [[nodiscard]] QString language() const { return language_; }
    void set_language(const QString& language);
    [[nodiscard]] QVariantList languages() const;
    [[nodiscard]] QString decimal_mark() const;
    [[nodiscard]] QString trouble() const { return trouble_; }

  signals:
    void troubleChanged();
    void changed();  // sizes and colours
    void told();     // words and figures

  protected:
    bool eventFilter(QObject* object, QEvent* event) override;

  private:
    void keep();
    void tell();

    QQmlEngine* engine_ = nullptr;
    QTranslator translator_;
    QString file_;
    QString trouble_;
    QString theme_ = QStringLiteral("dark");
    double text_scale_ = 1.0;
    bool still_ = false;
    bool first_ = true;
    QString units_ = QStringLiteral("metric");
    QString clock_ = QStringLiteral("24");
    QString language_ = QStringLiteral("en");
};

}  // namespace touch
