#include "ui/bench/ask_pane.h"

#include <QPainter>

#include "ui/bench/picture_pane.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr qsizetype kMostBeside = 9;  // more tiles than that take the whole width

QString placeOf(const QString& id) { return QStringLiteral("ask.") + id; }

}  // namespace

AskPane::AskPane(const StationModel& model, QWidget* parent)
    : QWidget(parent),
      m_model(model),
      m_choices(new ChoiceGrid(QStringLiteral("ask"), this)),
      m_number(new NumberPad(QStringLiteral("pad"), this)),
      m_letters(new LetterPad(QStringLiteral("letters"), this))
{
    setObjectName(QStringLiteral("ask-pane"));
    for (QWidget* each : {static_cast<QWidget*>(m_choices), static_cast<QWidget*>(m_number),
                          static_cast<QWidget*>(m_letters)})
        each->hide();
    hide();
    connect(m_choices, &ChoiceGrid::chosen, this,
            [this](const QString& id, const TapStamp& stamp) { pick(id, stamp.inputMs); });
    connect(m_number, &NumberPad::accepted, this, [this](qint64 value, const TapStamp& stamp) {
        answer(stamp.inputMs, [this, value, stamp] {
            const AnswerTap tap{stamp.inputMs, QStringLiteral("pad.set")};
            const Counted counted = m_counted;
            const Written given = m_given;
            if (given)
                return given(m_number->typed(), tap);
            counted(value, tap);
        });
    });
    connect(m_letters, &LetterPad::accepted, this,
            [this](const QString& text, const TapStamp& stamp) {
                answer(stamp.inputMs, [this, text, stamp] {
                    const Written written = m_written;
                    written(text, {stamp.inputMs, QStringLiteral("letters.set")});
                });
            });
    connect(m_number, &NumberPad::cancelled, this, &AskPane::close);
    connect(m_letters, &LetterPad::cancelled, this, &AskPane::close);
}

void AskPane::choose(const QString& title, const QList<Choice>& choices, Chosen chosen,
                     std::optional<Step> step)
{
    m_chosen = std::move(chosen);
    m_step = std::move(step);
    m_choices->setTitle(title);
    m_choices->setChoices(choices);
    put(m_choices, choices.size() > kMostBeside ? Room::Whole : Room::Beside);
}

void AskPane::number(const NumberQuestion& question, Counted counted)
{
    m_counted = std::move(counted);
    m_given = {};
    m_step.reset();
    put(m_number, Room::Whole);
    m_number->ask(question);
}

void AskPane::secret(const QString& title, const QString& note, Written given)
{
    m_given = std::move(given);
    m_step.reset();
    put(m_number, Room::Whole);
    m_number->ask({.title = title, .hidden = true, .note = note});
}

void AskPane::text(const TextQuestion& question, Written written)
{
    m_written = std::move(written);
    m_step.reset();
    put(m_letters, Room::Page);
    m_letters->ask(question);
}

void AskPane::look(const QString& words, const std::optional<ChartContent>& picture, Left left)
{
    m_left = std::move(left);
    m_step.reset();
    this->picture()->show(words, picture);
    put(m_picture, Room::Beside);
}

PicturePane* AskPane::picture()
{
    if (m_picture)
        return m_picture;
    m_picture = new PicturePane(QStringLiteral("ask"), this);
    connect(m_picture, &PicturePane::left, this, [this](const TapStamp& stamp) {
        answer(stamp.inputMs, [this, stamp] {
            const Left left = m_left;
            left({stamp.inputMs, placeOf(QStringLiteral("back"))});
        });
    });
    return m_picture;
}

void AskPane::close()
{
    if (!isOpen())
        return;
    m_step.reset();
    put(nullptr, Room::None);
}

QStringList AskPane::offered() const
{
    return m_shown == m_choices ? m_choices->offered() : QStringList();
}

void AskPane::pick(const QString& id, quint64 inputMs)
{
    answer(inputMs, [this, id, inputMs] {
        const Chosen chosen = m_chosen;  // may be replaced by what it asks next
        chosen(id, {inputMs, placeOf(id)});
    });
}

void AskPane::pressStep(const AnswerTap& tap)
{
    if (!m_step || isBounce(tap.inputMs))
        return;
    m_openedMs = tap.inputMs;
    const auto done = m_step->done;
    done(tap);
}

void AskPane::showRefusal(const QString& why)
{
    if (m_shown == m_number)
        m_number->setRefusal(why);
    else if (m_shown == m_letters)
        m_letters->setRefusal(why);
}

// What it covers must not shine through.
void AskPane::paintEvent(QPaintEvent*)
{
    QPainter(this).fillRect(rect(), theme().palette().ground());
}

void AskPane::resizeEvent(QResizeEvent*)
{
    if (m_shown)
        m_shown->setGeometry(rect());
}

void AskPane::put(QWidget* shown, Room room)
{
    if (m_shown && m_shown != shown)
        m_shown->hide();
    m_shown = shown;
    m_room = room;
    setVisible(shown);
    emit changed();  // lays this pane out
    if (!shown)
        return;
    shown->setGeometry(rect());
    shown->show();
    if (shown != m_choices && shown != m_picture)
        shown->setFocus();
}

bool AskPane::isBounce(quint64 inputMs) const
{
    if (inputMs == 0 || m_openedMs == 0 || inputMs < m_openedMs || !m_model.bench().card)
        return false;
    return inputMs - m_openedMs <
           static_cast<quint64>(m_model.bench().card->content().sameTap.count());
}

void AskPane::answer(quint64 inputMs, const std::function<void()>& how)
{
    if (isBounce(inputMs))
        return;
    m_openedMs = inputMs;
    how();
}

}  // namespace bathside::ui
