#include "core/record/manifest_seal.h"

#include <gtest/gtest.h>

#include "core/trail/seal.h"

namespace bathside {
namespace {

// Published: RFC 8410, section 10.1, the example's public key and its PEM form.
constexpr const char* kPublishedKey =
    "19bf44096984cdfe8541bac167dc3b96c85086aa30b6b6cb0c5c38ad703166e1";
constexpr const char* kPublishedPem =
    "-----BEGIN PUBLIC KEY-----\n"
    "MCowBQYDK2VwAyEAGb9ECWmEzf6FQbrBZ9w7lshQhqowtrbLDFw4rXAxZuE=\n"
    "-----END PUBLIC KEY-----\n";

TEST(PemTest, isAsTheStandardHasIt)
{
    EXPECT_EQ(pemOf(kPublishedKey), kPublishedPem);
    EXPECT_EQ(pemOf("no key"), "");
}

class ManifestSealTest : public testing::Test {
protected:
    using Flaw = std::optional<SignatureFlaw>;

    ManifestSealTest()
    {
        m_manifest.key = m_key.publicKey();
        m_text = manifestText(m_manifest);
        m_beside = {m_key.rawSignatureOf(m_text), pemOf(m_manifest.key)};
    }
    [[nodiscard]] Flaw flaw(const std::optional<std::string>& key = std::nullopt) const
    {
        return signatureFlaw(m_manifest, m_text, m_beside, key);
    }

    SealKey m_key = SealKey::from({1, 2, 3});
    SealKey m_other = SealKey::from({4});
    Manifest m_manifest;
    std::string m_text;
    BesideManifest m_beside;
};

TEST_F(ManifestSealTest, whatIsSignedByItsKeyIsGood)
{
    EXPECT_EQ(flaw(), std::nullopt);
    EXPECT_EQ(flaw(m_key.publicKey()), std::nullopt);
    m_beside.pem.reset();  // a convenience only
    EXPECT_EQ(flaw(), std::nullopt);
}

TEST_F(ManifestSealTest, anyOtherByteIsNot)
{
    for (std::size_t at = 0; at < m_text.size(); at += 7) {
        m_text[at] = static_cast<char>(m_text[at] ^ 1);
        EXPECT_EQ(flaw(), SignatureFlaw::NotGenuine) << at;
        m_text[at] = static_cast<char>(m_text[at] ^ 1);
    }
    m_beside.signature->pop_back();
    EXPECT_EQ(flaw(), SignatureFlaw::NotGenuine);
    m_beside.signature.reset();
    EXPECT_EQ(flaw(), SignatureFlaw::Missing);
}

TEST_F(ManifestSealTest, anotherKeyIsTold)
{
    EXPECT_EQ(flaw(m_other.publicKey()), SignatureFlaw::OtherKey);
    m_beside.pem = pemOf(m_other.publicKey());
    EXPECT_EQ(flaw(), SignatureFlaw::OtherPem);
    m_beside.signature = m_other.rawSignatureOf(m_text);
    EXPECT_EQ(flaw(), SignatureFlaw::NotGenuine);
}

TEST_F(ManifestSealTest, anUnsignedOneIsMissedOnlyWhereAKeyWasExpected)
{
    m_manifest.key.clear();
    EXPECT_EQ(flaw(), std::nullopt);
    EXPECT_EQ(flaw(m_key.publicKey()), SignatureFlaw::NotSigned);
}

}  // namespace
}  // namespace bathside
