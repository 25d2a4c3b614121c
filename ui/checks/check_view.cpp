#include "ui/checks/check_view.h"

#include <QCoreApplication>
#include <QLocale>

#include "ui/text/numbers.h"
#include "ui/text/subjects.h"

namespace bathside::ui {
namespace {

struct CheckViewText {
    Q_DECLARE_TR_FUNCTIONS(CheckText)
};

constexpr const char* kLineNames[] = {"A", "B", "C", "D", "E", "F"};

QString birdsText(const Bench& bench, const LineId& line)
{
    const auto known = bench.lines.find(line);
    const std::int64_t birds = known == bench.lines.end() ? 0 : known->second.birds;
    return CheckViewText::tr("%1 birds").arg(countText(birds, QLocale()));
}

}  // namespace

LineId CheckContext::lineNow() const
{
    const auto& lines = bench.bench().lines;
    return line.empty() && lines.size() == 1 ? lines.begin()->first : line;
}

const Line* CheckContext::known() const
{
    const auto& lines = bench.bench().lines;
    const auto found = lines.find(lineNow());
    return found == lines.end() ? nullptr : &found->second;
}

QString CheckContext::lineName() const
{
    return lineNow().empty() ? QString() : subjectText(subjectOf(lineNow()));
}

CheckAction CheckView::lineAction() const
{
    const QString name = m_context.lineName();
    return {.place = QStringLiteral("checks.line"),
            .word = name.isEmpty() ? CheckViewText::tr("line …") : name,
            .line = CheckViewText::tr("another …", "line"),
            .role = name.isEmpty() ? Role::Primary : Role::Neutral,
            .press = [this](const AnswerTap&) {
                QList<Choice> choices;
                for (const auto& [id, line] : bench().lines)
                    choices.append({.id = QStringLiteral("line:") + idText(id),
                                    .word = subjectText(subjectOf(id)),
                                    .line = birdsText(bench(), id)});
                for (const char* other : kLineNames) {
                    if (choices.size() < 6 && !bench().lines.contains({other}))
                        choices.append({.id = QStringLiteral("line:") + QString::fromLatin1(other),
                                        .word = subjectText(subjectOf(LineId{other}))});
                }
                choose(CheckViewText::tr("Which line?"), choices,
                       [this](const QString& id, const AnswerTap&) {
                           m_context.line = {id.mid(5).toStdString()};
                           done();
                       });
            }};
}

// A deviation names the birds as they were counted last: so they can be counted here too.
CheckAction CheckView::birdsAction() const
{
    constexpr qint64 kMost = 10'000'000;
    const LineId line = m_context.lineNow();
    const Line* known = m_context.known();
    const NumberQuestion question{
        .title =
            CheckViewText::tr("%1: birds done so far, in all", "a line").arg(m_context.lineName()),
        .unit = CheckViewText::tr("birds"),
        .lowest = known ? known->birds : 0,
        .highest = kMost};
    return {.place = QStringLiteral("checks.count"),
            .word = CheckViewText::tr("count …", "birds"),
            .line = birdsText(bench(), line),
            .reason = line.empty() ? CheckViewText::tr("Choose a line first.") : QString(),
            .press = [this, line, question](const AnswerTap&) {
                if (line.empty())
                    return;
                ask(question, [this, line](qint64 total, const AnswerTap& tap) {
                    m_context.bench.say(CountBirds{line, total}, tap);
                });
            }};
}

void CheckView::ask(const NumberQuestion& question, Asker::Counted counted) const
{
    m_context.bench.asker.number(question, std::move(counted));
}

void CheckView::choose(const QString& title, QList<Choice> choices, Asker::Chosen chosen) const
{
    choices.append({.id = QStringLiteral("back"),
                    .word = CheckViewText::tr("back"),
                    .role = Role::Quiet,
                    .mark = Mark::Back});
    m_context.bench.asker.choose(
        title, choices,
        [this, chosen = std::move(chosen)](const QString& id, const AnswerTap& tap) {
            if (id == QLatin1String("back"))
                return done();
            chosen(id, tap);
        });
}

void CheckView::done() const
{
    m_context.bench.asker.close();
    m_context.changed();
}

}  // namespace bathside::ui
