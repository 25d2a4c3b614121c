#pragma once

// Whom or what something is about, in words: "ampoule 2", "bag B4", "line A", "the bath".

#include <QString>

#include "core/facts/subject.h"

namespace bathside::ui {

/// Within a pull: the ampoule by its number alone.
[[nodiscard]] QString subjectText(const Subject& subject);
/// On the record: "ampoule 2 of pull 3".
[[nodiscard]] QString fullSubjectText(const Subject& subject);

/// Words of core (UTF-8) as text.
[[nodiscard]] QString fromCore(const std::string& text);
template <typename Id>
[[nodiscard]] QString idText(const Id& id)
{
    return fromCore(id.text);
}

}  // namespace bathside::ui
