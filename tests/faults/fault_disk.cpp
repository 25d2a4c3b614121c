#include "tests/faults/fault_disk.h"

#include <cerrno>
#include <cstring>
#include <fstream>

namespace bathside::test {
namespace {

constexpr std::size_t kSector = 512;

struct File {
    sqlite3_file base;
    FaultDisk* disk;
    std::string* name;  // its path; SQLite copies this struct by bytes, so no owner here
    sqlite3_file* real;
};

File* of(sqlite3_file* file) { return reinterpret_cast<File*>(file); }

FaultDisk* g_disk = nullptr;
sqlite3_vfs* g_real = nullptr;
int g_errno = 0;

int failWith(int code)
{
    g_errno = g_disk->error() != 0 ? g_disk->error() : EIO;
    return code;
}

void change(std::string& content, const FaultDisk::Change& by)
{
    const auto at = static_cast<std::size_t>(by.at);
    if (by.bytes.empty()) {
        content.resize(std::min(content.size(), at));
        return;
    }
    if (content.size() < at + by.bytes.size())
        content.resize(at + by.bytes.size());
    content.replace(at, by.bytes.size(), by.bytes);
}

int closeFile(sqlite3_file* file)
{
    File* const self = of(file);
    const int code = self->real->pMethods ? self->real->pMethods->xClose(self->real) : SQLITE_OK;
    delete self->name;
    return code;
}

int readFile(sqlite3_file* file, void* to, int size, sqlite3_int64 at)
{
    return of(file)->real->pMethods->xRead(of(file)->real, to, size, at);
}

int writeFile(sqlite3_file* file, const void* from, int size, sqlite3_int64 at)
{
    File* const self = of(file);
    const bool fails = self->disk->fails(DiskOp::Write, *self->name);
    if (self->disk->isDead())
        return failWith(SQLITE_IOERR_WRITE);
    const int landed = fails ? size / 2 : size;  // a write that fails may have got halfway
    if (landed > 0) {
        const int code = self->real->pMethods->xWrite(self->real, from, landed, at);
        if (code != SQLITE_OK)
            return code;
        self->disk->image(*self->name)
            .pending.push_back(
                {at, {static_cast<const char*>(from), static_cast<std::size_t>(landed)}});
    }
    if (fails)
        return failWith(self->disk->error() == ENOSPC ? SQLITE_FULL : SQLITE_IOERR_WRITE);
    return SQLITE_OK;
}

int truncateFile(sqlite3_file* file, sqlite3_int64 size)
{
    File* const self = of(file);
    if (self->disk->fails(DiskOp::Truncate, *self->name) || self->disk->isDead())
        return failWith(SQLITE_IOERR_TRUNCATE);
    self->disk->image(*self->name).pending.push_back({size, {}});
    return self->real->pMethods->xTruncate(self->real, size);
}

// The real sync is left out: nothing here depends on the machine's own power.
int syncFile(sqlite3_file* file, int /*flags*/)
{
    File* const self = of(file);
    FaultDisk::Image& image = self->disk->image(*self->name);
    if (self->disk->fails(DiskOp::Sync, *self->name)) {
        self->disk->loseSync(image);
        return failWith(SQLITE_IOERR_FSYNC);
    }
    if (self->disk->isDead())
        return failWith(SQLITE_IOERR_FSYNC);
    for (const FaultDisk::Change& by : image.pending)
        change(image.durable, by);
    image.pending.clear();
    return SQLITE_OK;
}

int sizeOfFile(sqlite3_file* file, sqlite3_int64* size)
{
    return of(file)->real->pMethods->xFileSize(of(file)->real, size);
}
int lockFile(sqlite3_file* file, int level)
{
    return of(file)->real->pMethods->xLock(of(file)->real, level);
}
int unlockFile(sqlite3_file* file, int level)
{
    return of(file)->real->pMethods->xUnlock(of(file)->real, level);
}
int isReserved(sqlite3_file* file, int* yes)
{
    return of(file)->real->pMethods->xCheckReservedLock(of(file)->real, yes);
}

// SQLITE_FCNTL_PRAGMA: the first entry takes an answer, the second is the name, the third the
// value.
int controlFile(sqlite3_file* file, int op, void* with)
{
    if (op == SQLITE_FCNTL_PRAGMA) {
        char** const words = static_cast<char**>(with);
        if (const std::string* const answer = of(file)->disk->answerTo(words[1])) {
            words[0] = sqlite3_mprintf("%s", answer->c_str());
            return SQLITE_OK;
        }
    }
    return of(file)->real->pMethods->xFileControl(of(file)->real, op, with);
}
int sectorOf(sqlite3_file* file) { return of(file)->real->pMethods->xSectorSize(of(file)->real); }
int traitsOf(sqlite3_file* file)
{
    return of(file)->real->pMethods->xDeviceCharacteristics(of(file)->real);
}

// Version 1: no shared memory, so that only exclusive locking can use a log, as the store does.
const sqlite3_io_methods kMethods = [] {
    sqlite3_io_methods methods{};
    methods.iVersion = 1;
    methods.xClose = closeFile;
    methods.xRead = readFile;
    methods.xWrite = writeFile;
    methods.xTruncate = truncateFile;
    methods.xSync = syncFile;
    methods.xFileSize = sizeOfFile;
    methods.xLock = lockFile;
    methods.xUnlock = unlockFile;
    methods.xCheckReservedLock = isReserved;
    methods.xFileControl = controlFile;
    methods.xSectorSize = sectorOf;
    methods.xDeviceCharacteristics = traitsOf;
    return methods;
}();

int openFile(sqlite3_vfs* /*vfs*/, const char* name, sqlite3_file* file, int flags, int* outFlags)
{
    File* const self = of(file);
    self->base.pMethods = nullptr;
    const std::string path = name ? name : "temporary";
    if (g_disk->fails(DiskOp::Open, path) || g_disk->isDead())
        return failWith(SQLITE_CANTOPEN);
    self->real = reinterpret_cast<sqlite3_file*>(self + 1);
    const int code = g_real->xOpen(g_real, name, self->real, flags, outFlags);
    if (code != SQLITE_OK) {
        g_errno = g_real->xGetLastError(g_real, 0, nullptr);
        return code;
    }
    self->disk = g_disk;
    self->name = new std::string(path);
    self->base.pMethods = &kMethods;
    return SQLITE_OK;
}

int removeFile(sqlite3_vfs* /*vfs*/, const char* name, int sync)
{
    g_disk->remove(name);
    return g_real->xDelete(g_real, name, sync);
}

int lastError(sqlite3_vfs* /*vfs*/, int /*size*/, char* /*text*/) { return g_errno; }

// Keeps a random part of what was not synced: each write whole, up to some sector, or not at all.
void survive(std::string& content, const std::vector<FaultDisk::Change>& pending,
             std::mt19937& random)
{
    for (FaultDisk::Change by : pending) {
        const auto fate = random() % 3;
        if (fate == 0)
            continue;
        if (fate == 1 && by.bytes.size() > kSector)
            by.bytes.resize(kSector * (1 + random() % (by.bytes.size() / kSector)));
        change(content, by);
    }
}

// A spool that was merged goes by another name, which is taken to be on the disk at once.
std::filesystem::path nameNow(const std::string& path)
{
    const std::filesystem::path named(path);
    return std::filesystem::exists(named)
               ? named.filename()
               : std::filesystem::path(named.filename().string() + ".merged");
}

}  // namespace

FaultDisk::FaultDisk() : m_before(sqlite3_vfs_find(nullptr))
{
    g_disk = this;
    g_real = m_before;
    m_vfs = *m_before;
    m_vfs.zName = "bathside-fault-disk";
    m_vfs.szOsFile = static_cast<int>(sizeof(File)) + m_before->szOsFile;
    m_vfs.pNext = nullptr;
    m_vfs.xOpen = openFile;
    m_vfs.xDelete = removeFile;
    m_vfs.xGetLastError = lastError;
    sqlite3_vfs_register(&m_vfs, 1);
}

FaultDisk::~FaultDisk()
{
    sqlite3_vfs_unregister(&m_vfs);
    sqlite3_vfs_register(m_before, 1);
    g_disk = nullptr;
}

void FaultDisk::plan(Fault fault)
{
    m_fault = std::move(fault);
    m_seen = 0;
    m_struck = false;
}

void FaultDisk::heal() { m_fault.nth = 0; }

bool FaultDisk::fails(DiskOp op, const std::string& name)
{
    ++m_operations;
    if (m_fault.nth == 0 || op != m_fault.op || name.find(m_fault.onlyIn) == std::string::npos)
        return false;
    ++m_seen;
    const bool now = m_seen == m_fault.nth || (m_fault.always && m_seen > m_fault.nth);
    m_struck = m_struck || now;
    return now;
}

const std::string* FaultDisk::answerTo(const std::string& pragma) const
{
    const auto found = m_answers.find(pragma);
    return found == m_answers.end() ? nullptr : &found->second;
}

// Some of it got to the disk before the error, the rest never will.
void FaultDisk::loseSync(Image& image)
{
    survive(image.durable, image.pending, m_random);
    image.pending.clear();
}

void FaultDisk::leaveTo(const std::filesystem::path& folder, std::mt19937& random) const
{
    std::filesystem::create_directories(folder);
    for (const auto& [path, image] : m_images) {
        std::string content = image.durable;
        survive(content, image.pending, random);
        std::ofstream(folder / nameNow(path), std::ios::binary) << content;
    }
}

}  // namespace bathside::test
