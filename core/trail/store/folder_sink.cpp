#include "core/trail/store/folder_sink.h"

#include <QFile>
#include <cerrno>

#include "core/trail/store/disk.h"

namespace bathside::store {
namespace {

class PartFile final : public SinkFile {
public:
    PartFile(std::filesystem::path target, std::filesystem::path part, std::string name)
        : m_target(std::move(target)),
          m_part(std::move(part)),
          m_name(std::move(name)),
          m_file(m_part)
    {
    }

    ~PartFile() override
    {
        if (!m_finished)
            m_file.remove();
    }

    [[nodiscard]] bool open()
    {
        return m_file.open(QIODevice::WriteOnly | QIODevice::Truncate | QIODevice::Unbuffered);
    }

    Result<void, SinkFault> write(std::string_view bytes) override
    {
        errno = 0;
        const auto size = static_cast<qint64>(bytes.size());
        if (m_file.write(bytes.data(), size) != size)
            return failure(SinkFault{m_name, errno});
        return {};
    }

    Result<void, SinkFault> finish() override
    {
        m_file.close();
        if (const auto synced = syncPath(m_part); !synced)
            return failure(SinkFault{m_name, synced.error().errorNumber});
        if (const auto renamed = renameDurably(m_part, m_target); !renamed)
            return failure(SinkFault{m_name, renamed.error().errorNumber});
        m_finished = true;
        return {};
    }

private:
    std::filesystem::path m_target;
    std::filesystem::path m_part;
    std::string m_name;
    QFile m_file;
    bool m_finished = false;
};

}  // namespace

Result<std::unique_ptr<SinkFile>, SinkFault> FolderSink::open(const std::string& name)
{
    std::error_code error;
    std::filesystem::create_directories(m_folder, error);
    if (error)
        return failure(SinkFault{m_folder.string(), error.value()});
    auto file =
        std::make_unique<PartFile>(m_folder / name, m_folder / ("." + name + ".part"), name);
    errno = 0;
    if (!file->open())
        return failure(SinkFault{name, errno});
    return file;
}

}  // namespace bathside::store
