#include "ui/checks/check_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>
#include <cmath>

#include "core/bench/dose.h"
#include "ui/text/numbers.h"
#include "ui/text/subjects.h"
#include "ui/text/time.h"

namespace bathside::ui {
namespace {

struct CheckText {
    Q_DECLARE_TR_FUNCTIONS(CheckText)
};

const QString kMillilitres = QStringLiteral("mL");

QString percentText(double share) { return figure(100 * share, 1, kPercent); }

QString verdictText(const JudgedDose& judged)
{
    if (judged.verdict == DoseVerdict::Failed)
        return judged.isCertain ? CheckText::tr("The dose is wrong.")
                                : CheckText::tr(
                                      "The dose is wrong, but not by much: measure more "
                                      "shots to be sure.");
    return judged.isCertain
               ? CheckText::tr("The dose is right.")
               : CheckText::tr("The dose is right, but only just: measure more shots to be sure.");
}

QString touchedText(std::int64_t birds)
{
    return CheckText::tr("%Ln bird(s) were done since a good check.", nullptr,
                         static_cast<int>(birds));
}

void addToDo(CheckSheet& sheet, const LimitsSaid& limits)
{
    if (!limits.toDo.isEmpty())
        sheet.fields.append({CheckText::tr("to do"), limits.toDo});
}

}  // namespace

QString figure(double value, int decimals, const QString& unit)
{
    const double scale = std::pow(10, decimals);
    return scaledText(std::llround(value * scale), decimals, decimals, QLocale()) +
           QStringLiteral(" ") + unit;
}

QString signedFigure(double value, int decimals, const QString& unit)
{
    return (value > 0 ? QStringLiteral("+") : QString()) + figure(value, decimals, unit);
}

QString rangeText(const Interval& interval, int decimals, const QString& unit)
{
    return CheckText::tr("%1 to %2", "from one figure to another")
        .arg(figure(interval.low, decimals, {}).trimmed(), figure(interval.high, decimals, unit));
}

template <typename Rules>
LimitsSaid limitsSaid(const Rules* rules, const std::string& language)
{
    if (!rules)
        return {.from = CheckText::tr("Common practice. The label and the site go first.")};
    return {
        .from = CheckText::tr("Limit of the card: %1", "its source").arg(fromCore(rules->source)),
        .toDo = fromCore(rules->words.in(language))};
}
template LimitsSaid limitsSaid(const DoseCheckRules*, const std::string&);
template LimitsSaid limitsSaid(const BirdCheckRules*, const std::string&);

QString liquidText(const ShotLiquid& liquid)
{
    if (const auto* water = std::get_if<Water>(&liquid))
        return CheckText::tr("water at %1").arg(temperatureText(water->temperature));
    const auto density = std::get<OtherLiquid>(liquid).density;
    return CheckText::tr("%1 g/mL").arg(scaledText(density, 3, 3, QLocale()));
}

QString weightsText(std::span<const std::int64_t> tenthsOfMilligram)
{
    QStringList all;
    for (const std::int64_t tenths : tenthsOfMilligram)
        all.append(scaledText(tenths, 1, 1, QLocale()));
    return all.isEmpty() ? CheckText::tr("none yet", "weights")
                         : all.join(QStringLiteral(" · ")) + QStringLiteral(" mg");
}

CheckSheet sheetOf(const InjectorCase& check, std::int64_t touched, const LimitsSaid& limits)
{
    const DoseErrors& errors = check.errors;
    const JudgedDose verdict = judged(check);
    const bool failed = verdict.verdict == DoseVerdict::Failed;
    CheckSheet sheet{.role = failed              ? Role::Limit
                             : verdict.isCertain ? Role::Good
                                                 : Role::HeadsUp,
                     .title = verdictText(verdict)};
    sheet.fields = {
        {CheckText::tr("mean of %n shot(s)", nullptr, static_cast<int>(errors.shots)),
         CheckText::tr("%1; set: %2", "the mean dose, and what is set")
             .arg(figure(errors.mean, 4, kMillilitres), figure(check.dose, 3, kMillilitres))},
        {CheckText::tr("systematic error"),
         CheckText::tr("%1; limit: ± %2")
             .arg(signedFigure(errors.systematicPercent, 1, kPercent),
                  figure(check.limits.systematicPercent, 1, kPercent))},
        {CheckText::tr("random error"),
         errors.randomPercent
             ? CheckText::tr("%1; limit: %2")
                   .arg(figure(*errors.randomPercent, 1, kPercent),
                        figure(check.limits.randomPercent, 1, kPercent))
             : CheckText::tr("not known: the shots were not measured one by one")}};
    if (errors.interval)
        sheet.fields.append(
            {CheckText::tr("the mean lies in"), rangeText(*errors.interval, 4, kMillilitres)});
    if (failed)
        sheet.fields.append({CheckText::tr("when recorded"),
                             CheckText::tr("A deviation: %Ln bird(s) were done since a good check.",
                                           nullptr, static_cast<int>(touched))});
    if (failed)
        addToDo(sheet, limits);
    sheet.fields.append({CheckText::tr("limits from"), limits.from});
    return sheet;
}

CheckSheet doseOnRecord(const Bench& bench, const Line* line, const std::string& zone)
{
    const QString how = CheckText::tr("Weigh ten shots, or collect some in a cylinder.");
    if (!line)
        return {.title = how};
    const QString name = subjectText(subjectOf(line->id));
    CheckSheet sheet{.title = how};
    if (doseIsInDoubt(*line)) {
        sheet.role = Role::Limit;
        sheet.title = CheckText::tr(
                          "%1: the dose check at %2 failed. Set the injector right and "
                          "check again before the line goes on.",
                          "a line, a time")
                          .arg(name, localMinuteText(line->since.at.wall, zone));
    }
    if (!line->failedDose)
        return sheet;
    const auto onRecord = bench.judgements.find({LimitName::DoseCheck, subjectOf(line->id)});
    sheet.fields.append({CheckText::tr("birds touched"), touchedText(line->failedDose->amount)});
    if (onRecord != bench.judgements.end())
        sheet.fields.append({CheckText::tr("on record"),
                             CheckText::tr("A deviation names them; it waits for its review.")});
    if (!doseIsInDoubt(*line))
        sheet.fields.append(
            {CheckText::tr("since then"), CheckText::tr("A check at %1 was good.")
                                              .arg(localMinuteText(line->since.at.wall, zone))});
    return sheet;
}

namespace {

QString verdictText(CoverageVerdict verdict, const QString& target)
{
    switch (verdict) {
        case CoverageVerdict::Shown:
            return CheckText::tr("Shown: at least %1 of the birds have it well.").arg(target);
        case CoverageVerdict::Undecided:
            return CheckText::tr("Not decided: look at more birds to show %1.").arg(target);
        case CoverageVerdict::Missed:
            return CheckText::tr("Missed: fewer than %1 of the birds have it well.").arg(target);
    }
    Q_UNREACHABLE();
}

Role roleOf(CoverageVerdict verdict)
{
    switch (verdict) {
        case CoverageVerdict::Shown:
            return Role::Good;
        case CoverageVerdict::Undecided:
            return Role::HeadsUp;
        case CoverageVerdict::Missed:
            return Role::Limit;
    }
    Q_UNREACHABLE();
}

QString neededText(const std::optional<int>& birds)
{
    return birds ? CheckText::tr("%Ln bird(s)", "to look at", *birds)
                 : CheckText::tr("more than a million birds");
}

}  // namespace

CheckSheet sheetOf(const CoverageCase& check, const LimitsSaid& limits)
{
    const CoverageAnswer answer = answered(check);
    const int misses = check.looked.birds - check.looked.good;
    const Interval percent{100 * answer.interval.low, 100 * answer.interval.high};
    CheckSheet sheet{.role = roleOf(answer.verdict),
                     .title = verdictText(answer.verdict, percentText(check.target))};
    sheet.fields = {{CheckText::tr("good"),
                     CheckText::tr("%1 of %2: %3", "birds, of how many, share")
                         .arg(countText(check.looked.good, QLocale()),
                              countText(check.looked.birds, QLocale()), percentText(answer.share))},
                    {CheckText::tr("the share lies in"),
                     CheckText::tr("%1, with %2 confidence")
                         .arg(rangeText(percent, 1, kPercent), percentText(check.confidence))}};
    if (answer.verdict != CoverageVerdict::Missed)
        sheet.fields.append({CheckText::tr("needed to show it"),
                             CheckText::tr("%1 with %n missed", "so many birds", misses)
                                 .arg(neededText(answer.needed))});
    else
        addToDo(sheet, limits);
    sheet.fields.append({CheckText::tr("with none missed"), neededText(answer.neededAtBest)});
    sheet.fields.append({CheckText::tr("target from"), limits.from});
    sheet.fields.append(
        {CheckText::tr("supposes"), CheckText::tr("that the birds were picked at random")});
    return sheet;
}

CheckSheet birdsToLookAt(const CoverageLimits& held, const LimitsSaid& limits)
{
    CheckSheet sheet{.title = CheckText::tr("Look at birds after their injection, and count those "
                                            "that have it well.")};
    sheet.fields.append({CheckText::tr("needed to show %1").arg(percentText(held.target())),
                         CheckText::tr("%1 with none missed, with %2 confidence")
                             .arg(neededText(birdsNeeded(held.target(), held.confidence(), 0)),
                                  percentText(held.confidence()))});
    sheet.fields.append({CheckText::tr("target from"), limits.from});
    return sheet;
}

}  // namespace bathside::ui
