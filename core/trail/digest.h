#pragma once

// What hashing and sealing share of libcrypto.

#include <cstdlib>
#include <memory>

#include <openssl/evp.h>

namespace bathside {

/// Without its own algorithms the library cannot be relied on for anything.
inline void require(bool worked)
{
    if (!worked)
        std::abort();
}

struct FreeDigest {
    void operator()(EVP_MD_CTX* context) const { EVP_MD_CTX_free(context); }
};
using DigestContext = std::unique_ptr<EVP_MD_CTX, FreeDigest>;

}  // namespace bathside
