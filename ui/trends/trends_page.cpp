#include "ui/trends/trends_page.h"

#include <QKeyEvent>
#include <algorithm>
#include <cmath>

#include "ui/charts/chart.h"
#include "ui/controls/banner.h"
#include "ui/controls/label.h"
#include "ui/controls/tap_button.h"
#include "ui/frame/frame.h"
#include "ui/record/field_sheet.h"
#include "ui/text/faults.h"
#include "ui/text/refusals.h"
#include "ui/theme/theme.h"
#include "ui/trends/pull_story.h"
#include "ui/trends/trend_words.h"

namespace bathside::ui {

TrendsPage::TrendsPage(Parts parts, QWidget* parent)
    : Page(parent),
      m_parts(std::move(parts)),
      m_model(m_parts.model),
      m_back(button("trends.back")),
      m_what(button("trends.what")),
      m_whose(button("trends.whose")),
      m_days(button("trends.days")),
      m_rules(button("trends.rules")),
      m_limits(button("trends.limits")),
      m_save(button("trends.save")),
      m_open(button("trends.open")),
      m_before(button("trends.before")),
      m_after(button("trends.after")),
      m_close(button("trends.close")),
      m_more(button("trends.more")),
      m_notice(new Banner(QStringLiteral("trends.notice"), this)),
      m_words(new Label(this)),
      m_values(new Chart(QStringLiteral("trends.values"), this)),
      m_ranges(new Chart(QStringLiteral("trends.ranges"), this)),
      m_sheet(new FieldSheet(this)),
      m_ask(new AskPane(m_model, this)),
      m_signing{.model = m_model,
                .asker = *m_ask,
                .pins = m_parts.pins,
                .zone = m_parts.zone,
                .tell = [this](const QString& why) { tell(Role::HeadsUp, why); }}
{
    setObjectName(QStringLiteral("trends"));
    m_sheet->setObjectName(QStringLiteral("trends.story"));
    m_words->setObjectName(QStringLiteral("trends.words"));
    m_words->setCapMm(4, Metrics::kSmall);
    m_ranges->hideReadOut();
    connectTargets();
    connectSource();
    put(View::Charts);
}

TapButton* TrendsPage::button(const char* name)
{
    auto* made = new TapButton(QString::fromLatin1(name), this);
    made->setCapMm(4);
    return made;
}

void TrendsPage::connectTargets()
{
    connect(m_back, &TapButton::pressed, this,
            [this] { emit asksFor(QString::fromLatin1(Frame::kReview)); });
    const auto asks = [this](TapButton* target, void (TrendsPage::*question)()) {
        connect(target, &TapButton::pressed, this, [this, question](const TapStamp& stamp) {
            ask(stamp, [this, question] { (this->*question)(); });
        });
    };
    asks(m_what, &TrendsPage::askWhat);
    asks(m_whose, &TrendsPage::askWhose);
    asks(m_days, &TrendsPage::askDays);
    asks(m_rules, &TrendsPage::askRules);
    asks(m_limits, &TrendsPage::askLimits);
    connect(m_save, &TapButton::pressed, this, &TrendsPage::pressSave);
    connect(m_open, &TapButton::pressed, this, &TrendsPage::pressOpen);
    connect(m_before, &TapButton::pressed, this, [this] { stepBy(-1); });
    connect(m_after, &TapButton::pressed, this, [this] { stepBy(1); });
    connect(m_close, &TapButton::pressed, this, [this] { put(View::Charts); });
    connect(m_more, &TapButton::pressed, this, [this] {
        m_sheet->turn();
        render();
    });
    for (Chart* each : {m_values, m_ranges})
        connect(each, &Chart::touched, this, &TrendsPage::pickNear);
}

void TrendsPage::connectSource()
{
    connect(m_ask, &AskPane::changed, this, [this] {
        place();
        render();
    });
    connect(&m_model, &StationModel::changed, this, whileShown([this] { renderNotice(); }));
    connect(&m_model, &StationModel::refused, this, &TrendsPage::showRefusal);
    connect(&m_parts.source, &ChartSource::pointsRead, this, &TrendsPage::take);
    connect(&m_parts.source, &ChartSource::entriesRead, this,
            [this](Seq of, const std::vector<Entry>& entries) {
                if (of == m_storyOf)
                    m_story.insert(m_story.end(), entries.begin(), entries.end());
            });
    connect(&m_parts.source, &ChartSource::shiftRead, this,
            [this](Seq of, const AroundShift& around) {
                if (of != std::exchange(m_storyOf, 0))
                    return;
                if (around.trouble)
                    return tell(Role::Limit, faultText(*around.trouble));
                put(View::Story);
            });
    connect(&theme(), &Theme::changed, this, [this] {
        place();
        render();
    });
}

void TrendsPage::put(View view)
{
    m_view = view;
    m_ask->close();
    if (const ChartPoint* point = picked(); point && view == View::Story)
        m_sheet->show(Role::Neutral,
                      QStringLiteral("%1: %2").arg(pointText(*point, m_people, zoneNow()),
                                                   valueText(point->series, *point->value)),
                      storyOf(*point, m_story, m_people, zoneNow()));
    place();
    render();
}

// --- the points ----------------------------------------------------------------------------------

void TrendsPage::read()
{
    PointsWanted wanted{.first = m_first, .last = m_last, .baselines = {}, .ask = ++m_asked};
    for (const auto& [chart, stretch] : m_model.bench().baselines)
        wanted.baselines.push_back({stretch.from, stretch.to});
    m_isReading = true;
    m_parts.source.readPoints(wanted);
    render();
}

void TrendsPage::take(const PointsAnswer& answer)
{
    if (answer.ask != m_asked)
        return;
    m_isReading = false;
    m_points = answer.points;
    m_trouble = answer.trouble;
    m_people.learn(m_points.all);
    wish(m_wish);
}

/// Which point: of those shown.
void TrendsPage::pick(std::optional<std::size_t> at)
{
    m_picked = at;
    std::optional<double> x;
    if (at)
        x = static_cast<double>(*at) + 1;
    m_values->lookAt(x);
    m_ranges->lookAt(x);
    render();
}

void TrendsPage::pickNear(double x)
{
    const auto many = static_cast<double>(m_trend.points.size());
    if (many > 0)
        pick(static_cast<std::size_t>(std::clamp(std::round(x), 1.0, many)) - 1);
}

/// Without one picked: the last, or the first.
void TrendsPage::stepBy(int by)
{
    const auto many = static_cast<int>(m_trend.points.size());
    if (many == 0)
        return;
    const int from = m_picked ? static_cast<int>(*m_picked) + by : (by < 0 ? many - 1 : 0);
    pick(static_cast<std::size_t>(std::clamp(from, 0, many - 1)));
}

const ChartPoint* TrendsPage::picked() const
{
    return m_picked && *m_picked < m_trend.points.size() ? &m_trend.points[*m_picked] : nullptr;
}

void TrendsPage::pressOpen()
{
    const ChartPoint* point = picked();
    if (!point)
        return tell(Role::HeadsUp, tr("Tap a point of the chart first, or step to one."));
    m_storyOf = point->seq;
    m_story.clear();
    m_parts.source.readShift(point->seq);
}

void TrendsPage::pressSave()
{
    QString last;
    for (Chart* each : {m_values, m_ranges}) {
        const auto saved = m_parts.save(each->picture(), each->objectName().replace(u'.', u'-'));
        if (!saved)
            return tell(Role::Limit, faultText(saved.error()));
        last = *saved;
    }
    tell(Role::Good, tr("Saved: %1").arg(last));
}

void TrendsPage::tell(Role role, const QString& sentence)
{
    m_toldAt = m_model.now();
    m_toldAs = role;
    m_told = sentence;
    m_ask->showRefusal(sentence);
    renderNotice();
}

void TrendsPage::showRefusal(const Refusal& refusal)
{
    if (isVisible())
        tell(Role::Limit,
             refusalText(refusal, m_model.bench().card.get(), m_parts.language.cardCode()));
}

void TrendsPage::showEvent(QShowEvent* event)
{
    constexpr std::chrono::days kAtFirst{29};
    Page::showEvent(event);
    m_toldAt.reset();
    if (m_last == Day{}) {
        m_last = today();
        m_first = m_last - kAtFirst;
    }
    put(View::Charts);
    read();
}

void TrendsPage::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape)
        return put(View::Charts);
    Page::keyPressEvent(event);
}

}  // namespace bathside::ui
