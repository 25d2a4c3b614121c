#include "ui/stores/stores_page.h"

#include <QKeyEvent>

#include "ui/controls/banner.h"
#include "ui/frame/frame.h"
#include "ui/record/field_sheet.h"
#include "ui/stores/ask_lot.h"
#include "ui/stores/intake_sheet.h"
#include "ui/stores/reckoning_view.h"
#include "ui/text/refusals.h"
#include "ui/theme/theme.h"

namespace bathside::ui {

StoresPage::StoresPage(Parts parts, QWidget* parent)
    : Page(parent),
      m_parts(std::move(parts)),
      m_model(m_parts.model),
      m_bench(button("stores.bench")),
      m_more(button("stores.more")),
      m_receive(button("stores.receive")),
      m_file(button("stores.file")),
      m_take(button("stores.take")),
      m_warnings(button("stores.warnings")),
      m_sums(button("stores.sums")),
      m_notice(new Banner(QStringLiteral("stores.notice"), this)),
      m_sheet(new FieldSheet(this)),
      m_reckoning(new ReckoningView(this)),
      m_ask(new AskPane(m_model, this)),
      m_signing{.model = m_model,
                .asker = *m_ask,
                .pins = m_parts.pins,
                .zone = m_parts.zone,
                .tell = [this](const QString& text) { tell(text); }},
      m_context{.model = m_model,
                .draft = m_draft,
                .asker = *m_ask,
                .language = m_parts.language,
                .zone = m_parts.zone,
                .goTo = [this](const QString& page) { emit asksFor(page); },
                .draftChanged = [] {},
                .later = [this] { m_ask->close(); },
                .sign =
                    [this](const QString& meaning, const JudgedBy& judged) {
                        askSignature(
                            m_signing, Act::Judge, meaning,
                            [judged](const Proven& by, const AnswerTap&) { judged(by.person()); });
                    }}
{
    setObjectName(QStringLiteral("stores"));
    m_sheet->setObjectName(QStringLiteral("stores.sheet"));
    connectAll();
    put(View::Lots);
}

TapButton* StoresPage::button(const char* name)
{
    auto* made = new TapButton(QString::fromLatin1(name), this);
    made->setCapMm(4);
    return made;
}

void StoresPage::connectAll()
{
    connect(m_bench, &TapButton::pressed, this,
            [this] { emit asksFor(QString::fromLatin1(Frame::kBench)); });
    connect(m_more, &TapButton::pressed, this, &StoresPage::pressMore);
    connect(m_receive, &TapButton::pressed, this,
            [this](const TapStamp& stamp) { ask(stamp, [this] { askReceipt(m_context); }); });
    connect(m_file, &TapButton::pressed, this, &StoresPage::pressFile);
    connect(m_take, &TapButton::pressed, this, &StoresPage::pressTake);
    connect(m_warnings, &TapButton::pressed, this,
            [this] { put(m_view == View::Warnings ? View::Lots : View::Warnings); });
    connect(m_sums, &TapButton::pressed, this,
            [this] { put(m_view == View::Sums ? View::Lots : View::Sums); });
    connect(m_ask, &AskPane::changed, this, [this] {
        place();
        render();
    });
    connect(&m_model, &StationModel::changed, this, whileShown([this] { render(); }));
    connect(&m_model, &StationModel::refused, this, &StoresPage::showRefusal);
    connect(&m_model, &StationModel::taken, this, [this] { m_refusedAt.reset(); });
    connect(&theme(), &Theme::changed, this, [this] {
        place();
        render();
    });
}

void StoresPage::ask(const TapStamp& stamp, const std::function<void()>& question)
{
    m_ask->opening(stamp.inputMs);
    question();
    if (m_model.isInCriticalWindow())
        m_ask->close();
}

void StoresPage::put(View view)
{
    m_view = view;
    m_page = 0;
    m_ask->close();
    place();
    render();
}

// --- taps ----------------------------------------------------------------------------------------

void StoresPage::pressTile(std::size_t index, const TapStamp& stamp)
{
    const auto all = lots();
    const std::size_t at = static_cast<std::size_t>(m_page) * m_tiles.size() + index;
    if (at >= all.size())
        return;
    const Stock of = all[at]->of;
    ask(stamp, [this, of] { askLot(m_context, of); });
}

void StoresPage::pressMore()
{
    if (m_view == View::Sums)
        m_reckoning->turn();
    else if (m_view == View::Lots)
        m_page = (m_page + 1) % pages();
    else
        m_sheet->turn();
    renderBar();
    renderTiles();
}

void StoresPage::pressFile(const TapStamp& stamp)
{
    ask(stamp, [this] {
        constexpr qsizetype kMost = 8;
        QList<Choice> choices;
        for (const DeliveryFile& file : m_parts.deliveries.files()) {
            if (choices.size() < kMost)
                choices.append({.id = QStringLiteral("file:") + file.path,
                                .word = file.name,
                                .line = file.stick.isEmpty() ? tr("this computer") : file.stick});
        }
        const QString title = choices.isEmpty()
                                  ? tr("No CSV file was found on a stick or in the documents.")
                                  : tr("Which delivery?");
        choices.append({.id = QStringLiteral("back"),
                        .word = tr("back"),
                        .role = Role::Quiet,
                        .mark = Mark::Back});
        m_ask->choose(title, choices,
                      [this](const QString& id, const AnswerTap&) {
                          m_ask->close();
                          if (id.startsWith(QLatin1String("file:")))
                              readFile(id.mid(5));
                      },
                      {});
    });
}

void StoresPage::readFile(const QString& path)
{
    const auto text = m_parts.deliveries.read(path);
    m_deliveryTaken = false;
    m_delivery = intakeFor(m_model.bench(), text.value_or(""));
    put(View::Delivery);
    showSheet(
        text ? sheetOf(m_delivery, IntakeStage::Offered)
             : Sheet{Role::Limit, tr("That file cannot be read, or is larger than 1 MiB."), {}});
}

void StoresPage::pressTake(const TapStamp& stamp)
{
    if (!takes())
        return;
    if (!m_model.say(deliveryOf(m_delivery), stamp.inputMs, m_take->place()))
        return;
    m_deliveryTaken = true;
    showSheet(sheetOf(m_delivery, IntakeStage::Taken));
}

void StoresPage::showSheet(const Sheet& sheet)
{
    m_sheet->show(sheet.role, sheet.title, sheet.fields);
    render();
}

void StoresPage::showRefusal(const Refusal& refusal)
{
    if (!isVisible())
        return;
    tell(refusalText(refusal, m_model.bench().card.get(), m_parts.language.cardCode()));
}

void StoresPage::tell(const QString& whyNot)
{
    m_refusedAt = m_model.now();
    m_refusal = whyNot;
    m_ask->showRefusal(m_refusal);
    render();
}

void StoresPage::showEvent(QShowEvent* event)
{
    Page::showEvent(event);
    m_refusedAt.reset();
    put(View::Lots);
}

void StoresPage::keyPressEvent(QKeyEvent* event)
{
    if (event->key() == Qt::Key_Escape)
        return put(View::Lots);
    Page::keyPressEvent(event);
}

}  // namespace bathside::ui
