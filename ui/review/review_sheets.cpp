// What is read of one case, and of a card that waits: each value by its name.

#include <QLocale>

#include "core/bench/card_in_force.h"
#include "core/card/compare.h"
#include "ui/record/field_sheet.h"
#include "ui/review/course_picture.h"
#include "ui/review/review_page.h"
#include "ui/text/facts.h"
#include "ui/text/numbers.h"
#include "ui/text/review.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"
#include "ui/text/words.h"

namespace bathside::ui {
namespace {

QString side(const std::optional<std::string>& value)
{
    return value ? fromCore(*value) : QStringLiteral("–");
}

}  // namespace

QList<Field> ReviewPage::fieldsOf(const ReviewCase& now) const
{
    const Told then = told(now);
    const ReviewCase& one = then.one;
    const Bench& bench = then.state.bench;
    QList<Field> fields;
    const auto add = [&](const QString& name, const QString& value) {
        if (!value.isEmpty())
            fields.append({name, value});
    };
    if (one.deviation) {
        const auto& found = *one.deviation;
        add(tr("Passed by"), overText(found.fact.limit, found.fact.over));
        add(tr("When"), localDateTimeText(found.at.wall, zoneNow()));
        add(tr("On duty"), found.onDuty ? personText(bench.people, *found.onDuty) : QString());
    }
    if (one.hold) {
        add(tr("On hold because"),
            one.hold->fact.words ? fromCore(*one.hold->fact.words) : wordOf(one.hold->fact.why));
        add(tr("Since"), localDateTimeText(one.hold->at.wall, zoneNow()));
    }
    const Bag* bag = one.bag ? bench.bag(*one.bag) : nullptr;
    if (const auto& about = one.about())
        add(tr("Bag"), one.isCarried || (bag && bag->down)
                           ? tr("%1, taken down").arg(idText(*about))
                           : idText(*about));
    if (one.birds)
        add(tr("Birds touched"), countText(*one.birds, QLocale()));
    else if (bag)
        add(tr("Birds touched"), tr("none: it never hung on a line"));
    if (now.isCarried)
        add(tr("From"), fromText(now));
    if (now.deviation && now.deviation->reviewed) {
        const Reviewed& said = *now.deviation->reviewed;
        const QString words =
            said.words.empty() ? QString() : u'.' + QStringLiteral(" ") + fromCore(said.words);
        add(tr("Cause"),
            causeText(said.cause, cardOf(bench, *now.deviation), m_parts.language.cardCode()) +
                words);
        add(tr("Action"), actionText(said.action));
        add(tr("Signed"),
            tr("%1, %2. %3", "name, time, meaning")
                .arg(personText(m_model.bench().people, said.by),
                     localDateTimeText(said.at.wall, zoneNow()), meaningText(Meaning::Reviewed)));
    }
    return fields;
}

void ReviewPage::renderCase()
{
    const auto one = current();
    if (!one)
        return;
    if (one->deviation) {
        const Told then = told(*one);
        m_course->show(
            courseOf(then.state, *then.one.deviation),
            QStringLiteral("+") + overText(one->deviation->fact.limit, one->deviation->fact.over));
    }
    const QList<Field> fields = fieldsOf(*one);
    const QString title = fullTitleOf(*one, zoneNow());
    QString all = title;
    for (const Field& field : fields)
        all += field.name + field.value;
    if (all == m_shown)  // showing it anew would turn it to its first sheet
        return;
    m_shown = all;
    m_sheet->show(ui::roleOf(*one), QStringLiteral("%1 · %2").arg(title, standingText(*one)),
                  fields);
}

void ReviewPage::renderCard()
{
    const Card* card = unapproved(m_model.bench());
    if (!card || m_shown == fromCore(card->hash().text))
        return;
    m_shown = fromCore(card->hash().text);
    QList<Field> fields;
    for (const CardDifference& one : differences(*m_model.bench().card, *card))
        fields.append(
            {fromCore(one.key),
             tr("%1 becomes %2", "value, new value").arg(side(one.before), side(one.after))});
    m_sheet->show(Role::HeadsUp,
                  tr("Card version %1 would take the place of version %2. What changes:")
                      .arg(card->content().version)
                      .arg(m_model.bench().card->content().version),
                  fields);
}

}  // namespace bathside::ui
