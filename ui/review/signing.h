#pragma once

// Asks for a signature: who, of those who may, and their PIN; name, time and meaning stand beside
// it while it is given (21 CFR 11.50(a)). A wrong PIN is said and asked again. A person's code
// answers who signs, as a tap on the name does; their PIN is asked for all the same.

#include <functional>
#include <string>

#include "ui/bench/asker.h"
#include "ui/controls/tap_stamp.h"
#include "ui/models/pin_desk.h"

namespace bathside::ui {

struct Signing {
    StationModel& model;
    Asker& asker;
    PinDesk& pins;
    std::string zone;                          // for the time beside the PIN
    std::function<void(const QString&)> tell;  // why not, or what was done
};

using Signed = std::function<void(const Proven& by, const AnswerTap& tap)>;

/// `meaning`: the sentence that is signed.
void askSignature(Signing& signing, Act act, const QString& meaning, Signed done);
/// It stands to be answered who signs.
[[nodiscard]] bool asksWhoSigns(const Signing& signing);
/// A person's code, on a page where people sign and nobody takes duty: who signs, or refused in
/// words. False: it is another code.
bool takesPerson(Signing& signing, const QString& text, const TapStamp& stamp);
/// That person's own, without a choice.
void askPinOf(Signing& signing, const PersonId& person, const QString& meaning, Signed done);

}  // namespace bathside::ui
