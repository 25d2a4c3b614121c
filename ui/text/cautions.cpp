#include "ui/text/cautions.h"

#include <QCoreApplication>
#include <QStringList>

namespace bathside::ui {
namespace {

struct CautionText {
    Q_DECLARE_TR_FUNCTIONS(bathside::ui::Cautions)
};

}  // namespace

QString cautionsText()
{
    const QStringList all{
        CautionText::tr("Cryogen burns skin and eyes and displaces the oxygen of a closed room."),
        CautionText::tr("Frozen ampoules can burst."),
        CautionText::tr("Eye or face protection, insulated gloves, tongs, ventilation."),
        CautionText::tr("Glass cuts: open it away from you, thumb clear."),
        CautionText::tr("Needles and glass: sharps container."),
        CautionText::tr("Self-injection: medical advice at once."),
        CautionText::tr("Label, veterinarian, site rules and law come first."),
    };
    return all.join(u' ');
}

}  // namespace bathside::ui
