#include "ui/text/language.h"

#include <QCoreApplication>
#include <QLibraryInfo>
#include <QLocale>

namespace bathside::ui {
namespace {

const QString kEnglish = QStringLiteral("en");

}  // namespace

Language::Language(QObject* parent) : QObject(parent), m_code(kEnglish) {}

Language::~Language() { remove(); }

QList<QString> Language::offered() { return {kEnglish, QStringLiteral("es")}; }

// Each in its own words, so not translated.
QString Language::nameOf(const QString& code)
{
    return code == kEnglish ? QStringLiteral("English") : QStringLiteral("Español");
}

QString Language::ofSystem()
{
    const QString system = QLocale::system().name().left(2);
    return offered().contains(system) ? system : kEnglish;
}

void Language::remove()
{
    QCoreApplication::removeTranslator(&m_ours);
    QCoreApplication::removeTranslator(&m_qts);
}

bool Language::use(const QString& code)
{
    if (!offered().contains(code))
        return false;
    remove();
    const bool ours = m_ours.load(QStringLiteral(":/i18n/bathside_%1.qm").arg(code));
    const QString folder = QLibraryInfo::path(QLibraryInfo::TranslationsPath);
    const bool qts = m_qts.load(QStringLiteral("qtbase_%1").arg(code), folder);
    m_code = code;
    QLocale::setDefault(QLocale(code));
    if (qts)
        QCoreApplication::installTranslator(&m_qts);
    if (ours)
        QCoreApplication::installTranslator(&m_ours);
    emit changed();
    return ours && qts;
}

}  // namespace bathside::ui
