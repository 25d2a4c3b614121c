#pragma once

// Why a scanned text is not what it begins as.
//
// `at` is a place in the text as it was scanned: its byte, from 0. `ai` is the application
// identifier that the fault is in; empty where there is none.

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>

#include "core/facts/names.h"

namespace bathside {

enum class ScanFaultKind : std::uint8_t {
    Empty,              // nothing, or a symbology identifier and nothing after it
    TooMuch,            // longer than any symbol can hold
    UnknownIdentifier,  // no application identifier that we know begins here
    TooShort,           // the element's data ends before its least length
    TooLong,            // or goes on beyond its greatest: a separator may be missing
    NotADigit,
    SignNotAllowed,  // not one of the 82 signs (General Specifications, figure 7.11-1)
    CheckDigit,
    NoSuchMonth,
    NoSuchDay,
    NoSuchTime,
    Contradiction,   // the same identifier twice, with different data
    NotOurForm,      // begins as one of our own codes and does not go on as one
    CheckCharacter,  // one of our own codes, misread
};
template <>
struct Names<ScanFaultKind> {
    static constexpr std::array<std::string_view, 14> all{
        "empty",        "too-much",         "unknown-identifier", "too-short",      "too-long",
        "not-a-digit",  "sign-not-allowed", "check-digit",        "no-such-month",  "no-such-day",
        "no-such-time", "contradiction",    "not-our-form",       "check-character"};
};

struct ScanFault {
    ScanFaultKind kind{};
    std::size_t at = 0;
    std::string ai;
    friend bool operator==(const ScanFault&, const ScanFault&) = default;
};

}  // namespace bathside
