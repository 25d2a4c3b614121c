#include "app/station/draft_file.h"

#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>
#include <utility>

namespace bathside::app {

DraftFile::DraftFile(std::filesystem::path file) : m_file(std::move(file))
{
    constexpr qint64 kLargest = 1024 * 1024;
    QFile stored(QString::fromStdString(m_file.string()));
    if (!stored.open(QIODevice::ReadOnly) || stored.size() > kLargest)
        return;
    const QJsonObject all = QJsonDocument::fromJson(stored.readAll()).object();
    for (auto one = all.begin(); one != all.end(); ++one)
        m_drafts[one.key()] = one.value().toString().toStdString();
}

std::filesystem::path DraftFile::beside(const std::filesystem::path& trail)
{
    return std::filesystem::path(trail).replace_extension(".drafts");
}

std::string DraftFile::kept(const QString& name) const
{
    const auto found = m_drafts.find(name);
    return found == m_drafts.end() ? std::string() : found->second;
}

void DraftFile::keep(const QString& name, const std::string& document)
{
    if (kept(name) == document)
        return;
    if (document.empty())
        m_drafts.erase(name);
    else
        m_drafts[name] = document;
    write();
}

void DraftFile::write() const
{
    QJsonObject all;
    for (const auto& [name, document] : m_drafts)
        all.insert(name, QString::fromStdString(document));
    QSaveFile file(QString::fromStdString(m_file.string()));
    if (!file.open(QIODevice::WriteOnly))
        return;
    file.setPermissions(QFileDevice::ReadOwner | QFileDevice::WriteOwner);
    file.write(QJsonDocument(all).toJson());
    file.commit();
}

}  // namespace bathside::app
