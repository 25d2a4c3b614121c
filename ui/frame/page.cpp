#include "ui/frame/page.h"

#include "ui/models/station_model.h"

namespace bathside::ui {

void Page::drawWhileShown(const StationModel& model, std::function<void()> draw)
{
    connect(&model, &StationModel::changed, this, [this, draw = std::move(draw)] {
        if (isVisible())
            draw();
    });
}

}  // namespace bathside::ui
