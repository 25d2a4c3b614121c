#include "ui/bench/picture_pane.h"

#include "ui/controls/label.h"
#include "ui/controls/tap_button.h"
#include "ui/theme/theme.h"

namespace bathside::ui {
namespace {

constexpr double kWordsMm = 22;  // three lines

}  // namespace

PicturePane::PicturePane(const QString& place, QWidget* parent)
    : QWidget(parent),
      m_words(new Label(this)),
      m_chart(new Chart(place + QStringLiteral(".picture"), this)),
      m_back(new TapButton(place + QStringLiteral(".back"), this))
{
    setObjectName(place + QStringLiteral(".look"));
    m_words->setCapMm(4, Metrics::kSmall);
    m_back->setMark(Mark::Back);
    m_back->setRole(Role::Quiet);
    connect(m_back, &TapButton::pressed, this, &PicturePane::left);
    connect(&theme(), &Theme::changed, this, &PicturePane::arrange);
}

void PicturePane::show(const QString& words, const std::optional<ChartContent>& picture)
{
    m_words->setText(words);
    m_back->setWord(tr("back"));
    m_hasPicture = picture.has_value();
    m_chart->setVisible(m_hasPicture);
    if (picture)
        m_chart->show(*picture);
    arrange();
}

void PicturePane::resizeEvent(QResizeEvent*) { arrange(); }

void PicturePane::arrange()
{
    const Metrics& metrics = theme().metrics();
    const int gap = metrics.gapPx(), back = metrics.ceilPx(Metrics::kMinimum);
    const int room = height() - back - gap;
    const int words = m_hasPicture ? metrics.ceilPx(kWordsMm) : room;
    m_words->setGeometry(0, 0, width(), words);
    m_chart->setGeometry(0, words, width(), room - words);
    m_back->setGeometry(0, height() - back, width() / 2, back);
}

}  // namespace bathside::ui
