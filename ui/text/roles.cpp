#include "ui/text/roles.h"

#include "ui/text/words.h"

namespace bathside::ui {

QString roleText(bathside::Role role) { return wordOf(role); }

}  // namespace bathside::ui
