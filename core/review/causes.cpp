#include "core/review/causes.h"

namespace bathside {

std::string textOf(Disposition disposition, const std::string& note)
{
    const std::string name(nameOf(disposition));
    return note.empty() ? name : name + ": " + note;
}

std::string actionText(const std::string& remedy, const std::string& disposition)
{
    return disposition.empty() ? remedy : remedy + "; bag: " + disposition;
}

}  // namespace bathside
