#pragma once

// The language of the screen: our catalogue and Qt's own, switched at run time.
//
// Every widget gets QEvent::LanguageChange and sets its texts again in changeEvent(). The default
// QLocale follows, so numbers and dates do too. GUI thread only. A catalogue that is not there is a
// missing part of the program: use() returns false and English stays.

#include <QList>
#include <QObject>
#include <QString>
#include <QTranslator>
#include <string>

namespace bathside::ui {

class Language final : public QObject {
    Q_OBJECT

public:
    explicit Language(QObject* parent = nullptr);
    ~Language() override;

    /// "en", "es"
    [[nodiscard]] static QList<QString> offered();
    /// A language in its own words: "English", "Español".
    [[nodiscard]] static QString nameOf(const QString& code);
    /// The offered one that the system asks for, else English.
    [[nodiscard]] static QString ofSystem();

    bool use(const QString& code);
    /// ISO 639-1, also for the card's words.
    [[nodiscard]] const QString& code() const noexcept { return m_code; }
    [[nodiscard]] std::string cardCode() const { return m_code.toStdString(); }

signals:
    void changed();

private:
    void remove();

    QString m_code;
    QTranslator m_ours, m_qts;
};

}  // namespace bathside::ui
