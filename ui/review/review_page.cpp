#include "ui/review/review_page.h"

#include <QKeyEvent>

#include "core/bench/card_in_force.h"
#include "ui/controls/banner.h"
#include "ui/frame/frame.h"
#include "ui/record/field_sheet.h"
#include "ui/review/course_picture.h"
#include "ui/text/refusals.h"
#include "ui/text/review.h"
#include "ui/theme/theme.h"
#include "ui/trends/trends_page.h"

namespace bathside::ui {

ReviewPage::ReviewPage(Parts parts, QWidget* parent)
    : Page(parent),
      m_parts(std::move(parts)),
      m_model(m_parts.model),
      m_bench(button("review.bench")),
      m_back(button("review.back")),
      m_more(button("review.more")),
      m_judge(button("review.judge")),
      m_card(button("review.card")),
      m_approve(button("review.approve")),
      m_charts(button("review.charts")),
      m_notice(new Banner(QStringLiteral("review.notice"), this)),
      m_course(new CoursePicture(this)),
      m_sheet(new FieldSheet(this)),
      m_ask(new AskPane(m_model, this)),
      m_signing{.model = m_model,
                .asker = *m_ask,
                .pins = m_parts.pins,
                .zone = m_parts.zone,
                .tell = [this](const QString& sentence) { tell(sentence); }},
      m_talk(m_signing)
{
    setObjectName(QStringLiteral("review"));
    m_sheet->setObjectName(QStringLiteral("review.sheet"));
    connectAll();
    put(View::List);
}

TapButton* ReviewPage::button(const char* name)
{
    auto* made = new TapButton(QString::fromLatin1(name), this);
    made->setCapMm(4);
    return made;
}

void ReviewPage::connectAll()
{
    connect(m_bench, &TapButton::pressed, this,
            [this] { emit asksFor(QString::fromLatin1(Frame::kBench)); });
    connect(m_back, &TapButton::pressed, this, [this] { put(View::List); });
    connect(m_more, &TapButton::pressed, this, &ReviewPage::pressMore);
    connect(m_judge, &TapButton::pressed, this, &ReviewPage::pressJudge);
    connect(m_card, &TapButton::pressed, this, [this] { put(View::Card); });
    connect(m_approve, &TapButton::pressed, this, &ReviewPage::pressApprove);
    connect(m_charts, &TapButton::pressed, this,
            [this] { emit asksFor(QString::fromLatin1(TrendsPage::kPage)); });
    connect(m_ask, &AskPane::changed, this, [this] {
        place();
        render();
    });
    connect(&m_model, &StationModel::changed, this, whileShown([this] { render(); }));
    connect(&m_model, &StationModel::refused, this, &ReviewPage::showRefusal);
    connect(&theme(), &Theme::changed, this, [this] {
        place();
        render();
    });
    connectPast();
}

void ReviewPage::ask(const TapStamp& stamp, const std::function<void()>& question)
{
    m_signing.zone = zoneNow();
    m_ask->opening(stamp.inputMs);
    question();
    if (m_model.isInCriticalWindow())
        m_ask->close();
}

void ReviewPage::put(View view)
{
    m_view = view;
    m_page = 0;
    m_shown.clear();
    m_ask->close();
    place();
    render();
}

// --- taps ----------------------------------------------------------------------------------------

void ReviewPage::pressTile(std::size_t index)
{
    const auto all = cases();
    const std::size_t at = static_cast<std::size_t>(m_page) * m_tiles.size() + index;
    if (at >= all.size())
        return;
    m_seq = all[at].seq();
    askPast(all[at]);
    put(View::Case);
}

void ReviewPage::pressMore()
{
    if (m_view == View::List)
        m_page = (m_page + 1) % pages();
    else
        m_sheet->turn();
    render();
}

void ReviewPage::pressJudge(const TapStamp& stamp)
{
    if (const auto one = current())
        ask(stamp, [this, one] { m_talk.begin(*one, m_parts.language.cardCode()); });
}

void ReviewPage::pressApprove(const TapStamp& stamp)
{
    const Card* card = unapproved(m_model.bench());
    if (!card)
        return;
    ask(stamp, [this, hash = card->hash()] {
        askSignature(m_signing, Act::Approve,
                     tr("Card version %1. %2", "number, meaning")
                         .arg(unapproved(m_model.bench())->content().version)
                         .arg(meaningText(Meaning::Approved)),
                     [this, hash](const Proven& by, const AnswerTap& tap) {
                         if (m_model.say(ApproveCard{by.person(), hash}, tap.inputMs,
                                         QStringLiteral("review.approved"))) {
                             put(View::List);
                             tell(tr("The new card is approved; it holds from the next bag."));
                         }
                     });
    });
}

void ReviewPage::tell(const QString& sentence)
{
    m_toldAt = m_model.now();
    m_told = sentence;
    m_ask->showRefusal(sentence);
    render();
}

void ReviewPage::showRefusal(const Refusal& refusal)
{
    if (isVisible())
        tell(refusalText(refusal, m_model.bench().card.get(), m_parts.language.cardCode()));
}

void ReviewPage::showEvent(QShowEvent* event)
{
    Page::showEvent(event);
    m_toldAt.reset();
    put(View::List);
}

void ReviewPage::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape)
        return put(View::List);
    Page::keyPressEvent(event);
}

}  // namespace bathside::ui
