#pragma once

// A printed day sheet held against the record: its code, scanned on any page, is looked up, and
// whether it agrees is written down and said in a sentence.
//
// Not in the critical window: then it says to scan it later. Ends with the frame. UI thread.

#include <QObject>
#include <optional>

#include "ui/frame/frame.h"
#include "ui/models/record_source.h"

namespace bathside::ui {

class SealWitness final : public QObject {
    Q_OBJECT

public:
    /// `source` lives as long as the frame.
    SealWitness(StationModel& model, RecordSource& source, Frame& frame);

private:
    void ask(const SealCode& code, const TapStamp& stamp);
    void take(const WitnessAnswer& answer);
    void say(const WitnessAnswer& answer);
    void sayLater();

    StationModel& m_model;
    RecordSource& m_source;
    Frame& m_frame;
    std::optional<TapStamp> m_asked;  // a question to the source stands
};

}  // namespace bathside::ui
