#include "core/trail/store/sqlite_trouble.h"

#include <cerrno>

#include <sqlite3.h>

namespace bathside::store {
namespace {

StoreTrouble definite(int code, int error)
{
    switch (code & 0xff) {
        case SQLITE_FULL:
            return {StoreFault::NoSpace, error != 0 ? error : ENOSPC};
        case SQLITE_BUSY:
        case SQLITE_LOCKED:
            return {StoreFault::InUse, error};
        case SQLITE_READONLY:
            return {StoreFault::ReadOnly, error != 0 ? error : EROFS};
        case SQLITE_PERM:
        case SQLITE_AUTH:
            return {StoreFault::NotPermitted, error != 0 ? error : EACCES};
        case SQLITE_CORRUPT:
            return {StoreFault::Damaged, error};
        case SQLITE_NOTADB:
            return {StoreFault::Foreign, error};
        case SQLITE_CONSTRAINT:
        case SQLITE_MISMATCH:
            return {StoreFault::OutOfStep, error};
        default:
            return troubleOfSystem(error);
    }
}

}  // namespace

StoreTrouble troubleOf(int code, int error, Moment moment)
{
    const int kind = code & 0xff;
    const bool nothingWritten =
        kind == SQLITE_FULL || kind == SQLITE_BUSY || kind == SQLITE_CONSTRAINT;
    if (moment == Moment::AtCommit && !nothingWritten)
        return {StoreFault::Unconfirmed, error};
    return definite(code, error);
}

StoreTrouble troubleOfSystem(int error)
{
    switch (error) {
        case ENOSPC:
        case EDQUOT:
            return {StoreFault::NoSpace, error};
        case EROFS:
            return {StoreFault::ReadOnly, error};
        case EACCES:
        case EPERM:
            return {StoreFault::NotPermitted, error};
        default:
            return {StoreFault::WriteFailed, error};
    }
}

}  // namespace bathside::store
