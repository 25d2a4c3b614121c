#include "app/station/trail_copy.h"

#include <QCoreApplication>
#include <QPointer>
#include <QStorageInfo>
#include <QThreadPool>
#include <algorithm>
#include <cerrno>
#include <fstream>
#include <future>
#include <iterator>
#include <memory>

#include "app/station/record_places.h"
#include "core/trail/store/check.h"
#include "core/trail/store/continuation.h"
#include "core/trail/store/disk.h"
#include "ui/text/time.h"

namespace bathside::app {
namespace {

constexpr std::uintmax_t kSpare = 1024 * 1024;  // what a file system needs beside the file

using Written = Result<Head, StoreTrouble>;

/// What any file system takes.
QString inFileName(const StationId& station)
{
    QString name = QString::fromStdString(station.text);
    for (QChar& sign : name) {
        if (!sign.isLetterOrNumber())
            sign = QLatin1Char('-');
    }
    return name;
}

QString nameOfCopy(Session& session)
{
    const auto& shift = session.station().bench().shift;
    const QString at =
        ui::localDateTimeText(session.station().now().wall, shift ? shift->zone : "UTC");
    // "2026-03-14 09:41:07 +01:00" as "2026-03-14-0941"
    return QStringLiteral("%1-trail-%2-%3%4")
        .arg(inFileName(session.name()), at.left(10), at.mid(11, 2), at.mid(14, 2));
}

std::optional<StoreTrouble> roomTrouble(const QString& folder, std::uintmax_t size)
{
    const QStorageInfo volume(folder);
    if (!volume.isValid())
        return std::nullopt;  // the attempt itself will tell
    if (volume.isReadOnly())
        return StoreTrouble{StoreFault::ReadOnly, EROFS};
    if (static_cast<std::uintmax_t>(volume.bytesAvailable()) < size + kSpare)
        return StoreTrouble{StoreFault::NoSpace, ENOSPC};
    return std::nullopt;
}

std::optional<StoreTrouble> makeFolder(const QString& folder)
{
    std::error_code error;
    std::filesystem::create_directories(folder.toStdString(), error);
    if (!error)
        return std::nullopt;
    switch (error.value()) {
        case ENOSPC:
            return StoreTrouble{StoreFault::NoSpace, ENOSPC};
        case EROFS:
            return StoreTrouble{StoreFault::ReadOnly, EROFS};
        case EACCES:
        case EPERM:
            return StoreTrouble{StoreFault::NotPermitted, error.value()};
        default:
            return StoreTrouble{StoreFault::WriteFailed, error.value()};
    }
}

/// All of the copy, and that it ends where the trail did when it was written.
ui::VerifyAnswer checked(const std::filesystem::path& file, const Head& head)
{
    const auto copy = store::TrailDb::open(file, store::Mode::ReadOnly);
    if (!copy)
        return {.chain = {}, .indexesAgree = {}, .trouble = copy.error().trouble};
    const store::Soundness found = store::check(**copy, {head});
    ui::VerifyAnswer answer{found.chain, found.projectionsAgree, found.trouble};
    if (!found.pages.empty() && !answer.trouble)
        answer.trouble = StoreTrouble{StoreFault::Damaged, 0};
    return answer;
}

Written writeTo(store::TrailDb& trail, const std::filesystem::path& target)
{
    const Head head = trail.head();
    if (const auto copied = trail.copyTo(target); !copied)
        return failure(copied.error());
    return head;
}

bool haveSameBytes(const std::filesystem::path& one, const std::filesystem::path& other)
{
    using Bytes = std::istreambuf_iterator<char>;
    std::error_code error;
    if (std::filesystem::file_size(one, error) != std::filesystem::file_size(other, error) || error)
        return false;
    std::ifstream first(one, std::ios::binary), second(other, std::ios::binary);
    return first && second && std::equal(Bytes(first), Bytes(), Bytes(second), Bytes());
}

/// Where its copy is, or may be made: another station's file may have its name there.
std::filesystem::path placeIn(const std::filesystem::path& folder,
                              const std::filesystem::path& part)
{
    std::error_code none;
    std::filesystem::path place = folder / part.filename();
    for (int number = 2; std::filesystem::exists(place, none) && !haveSameBytes(part, place);
         ++number)
        place.replace_filename(part.stem().string() + '-' + std::to_string(number) +
                               part.extension().string());
    return place;
}

/// The damaged files that the trail goes on from stay as they are, so one copy of each will do. A
/// part that was broken off is no copy.
std::optional<StoreTrouble> copyEarlier(const std::vector<store::SoundPart>& parts,
                                        const std::filesystem::path& folder, QStringList& renamed)
{
    std::error_code error;
    for (const store::SoundPart& part : parts) {
        const auto target = placeIn(folder, part.file);
        const std::filesystem::path partial(target.string() + ".partial");
        if (target.filename() != part.file.filename())
            renamed.append(QString::fromStdString(target.filename().string()));
        if (std::filesystem::exists(target, error))
            continue;
        std::filesystem::copy_file(part.file, partial,
                                   std::filesystem::copy_options::overwrite_existing, error);
        if (error)
            return StoreTrouble{StoreFault::WriteFailed, error.value()};
        if (const auto synced = store::syncPath(partial); !synced)
            return synced.error();
        if (const auto named = store::renameDurably(partial, target); !named)
            return named.error();
    }
    return std::nullopt;
}

struct CopyJob {
    QPointer<Session> session;
    QString folder, name;
    std::vector<store::SoundPart> earlier;
    std::uintmax_t size = 0;
    std::function<void(const ui::CopyAnswer&)> done;
    ui::CopyAnswer answer{};
};
using Job = std::shared_ptr<CopyJob>;

/// On the UI thread; dropped where the session is gone by then.
void then(const Job& job, std::function<void(Session&)> what)
{
    QMetaObject::invokeMethod(
        qApp,
        [job, what = std::move(what)] {
            if (job->session)
                what(*job->session);
        },
        Qt::QueuedConnection);
}

void end(const Job& job)
{
    then(job, [job](Session&) { job->done(job->answer); });
}

void write(const Job& job, Session& session)
{
    const std::filesystem::path target = job->answer.file.toStdString();
    auto written = std::make_shared<std::future<Written>>(
        session.store().ask([target](store::TrailDb& trail) { return writeTo(trail, target); }));
    QThreadPool::globalInstance()->start([job, target, written] {
        const Written done = written->get();
        if (done)
            job->answer.check = checked(target, *done);
        else
            job->answer.trouble = done.error();
        end(job);
    });
}

/// On a thread of its own: a stick may be slow.
void prepare(const Job& job)
{
    job->answer.trouble = makeFolder(job->folder);
    if (!job->answer.trouble)
        job->answer.trouble = roomTrouble(job->folder, job->size);
    if (!job->answer.trouble)
        job->answer.trouble =
            copyEarlier(job->earlier, job->folder.toStdString(), job->answer.renamed);
    if (job->answer.trouble)
        return end(job);
    job->answer.file = freeName(job->folder, job->name, QStringLiteral(".db"));
    then(job, [job](Session& session) { write(job, session); });
}

std::uintmax_t sizeOf(const std::filesystem::path& trail)
{
    std::error_code none;
    const auto size = std::filesystem::file_size(store::partsOf(trail).back(), none);
    return none ? 0 : size;
}

}  // namespace

bool isStickMissing(const QString& folder)
{
    const bool isOnStick = folder.startsWith(QLatin1String("/media/")) ||
                           folder.startsWith(QLatin1String("/run/media/"));
    const auto places = recordPlaces();
    return isOnStick && std::ranges::find(places, folder, &ui::RecordPlace::folder) == places.end();
}

void copyTrail(Session& session, const QString& folder,
               std::function<void(const ui::CopyAnswer&)> done)
{
    const Job job = std::make_shared<CopyJob>(CopyJob{.session = &session,
                                                      .folder = folder,
                                                      .name = nameOfCopy(session),
                                                      .earlier = session.earlier(),
                                                      .size = sizeOf(session.trail()),
                                                      .done = std::move(done)});
    QThreadPool::globalInstance()->start([job] { prepare(job); });
}

}  // namespace bathside::app
