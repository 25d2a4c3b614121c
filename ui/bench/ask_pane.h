#pragma once

// The Asker of the bench page: a grid of choices beside the big button, or a pad over both.
//
// A tap that comes within the same-place lock of the card after the tap that brought the question
// is the same finger bouncing and answers nothing; told by the input's own time, not by a timer.
// Cancel closes.

#include <QWidget>

#include "ui/bench/asker.h"
#include "ui/models/station_model.h"

namespace bathside::ui {

class PicturePane;

class AskPane final : public QWidget, public Asker {
    Q_OBJECT

public:
    enum class Room : std::uint8_t {
        None,
        Beside,  // the lanes' place; the big button stays
        Whole,   // over both; the bottom row stays
        Page,    // over everything, for letters
    };

    AskPane(const StationModel& model, QWidget* parent);

    void choose(const QString& title, const QList<Choice>& choices, Chosen chosen,
                std::optional<Step> step) override;
    void number(const NumberQuestion& question, Counted counted) override;
    void text(const TextQuestion& question, Written written) override;
    void secret(const QString& title, const QString& note, Written given) override;
    void look(const QString& words, const std::optional<ChartContent>& picture, Left left) override;
    void close() override;
    [[nodiscard]] QStringList offered() const override;
    void pick(const QString& id, quint64 inputMs) override;

    /// A PIN is asked for.
    [[nodiscard]] bool asksSecret() const { return m_shown == m_number && m_given; }
    [[nodiscard]] Room room() const noexcept { return m_room; }
    /// The big button and the clock are covered.
    [[nodiscard]] bool coversStep() const noexcept
    {
        return m_room == Room::Whole || m_room == Room::Page;
    }
    [[nodiscard]] bool isOpen() const noexcept { return m_room != Room::None; }
    [[nodiscard]] const std::optional<Step>& step() const noexcept { return m_step; }
    /// The big button was pressed while a question stands.
    void pressStep(const AnswerTap& tap);
    /// The tap that is about to bring a question.
    void opening(quint64 inputMs) { m_openedMs = inputMs; }
    void showRefusal(const QString& why);

signals:
    /// Another question, or none: lay out and render anew.
    void changed();

protected:
    void resizeEvent(QResizeEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    void put(QWidget* shown, Room room);
    [[nodiscard]] bool isBounce(quint64 inputMs) const;
    [[nodiscard]] PicturePane* picture();
    void answer(quint64 inputMs, const std::function<void()>& how);

    const StationModel& m_model;
    ChoiceGrid* m_choices;
    NumberPad* m_number;
    LetterPad* m_letters;
    PicturePane* m_picture = nullptr;  // made when there is one to show
    QWidget* m_shown = nullptr;
    Room m_room = Room::None;
    Chosen m_chosen;
    Counted m_counted;
    Written m_written;
    Left m_left;
    Written m_given;  // none: the pad asks for a number
    std::optional<Step> m_step;
    quint64 m_openedMs = 0;
};

}  // namespace bathside::ui
