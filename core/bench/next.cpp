#include "core/bench/next.h"

#include <algorithm>
#include <set>
#include <tuple>

#include "core/bath/thaw_fit.h"

namespace bathside {
namespace {

const Card::Content* rules(const Bench& bench)
{
    return bench.card ? &bench.card->content() : nullptr;
}

/// Where an ampoule stands in the queue of the hands: those under a limit first, the oldest of them
/// first.
auto urgency(const Ampoule& ampoule)
{
    const Step reached = ampoule.reached();
    const bool clocked = reached < Step::Diluent;
    const auto& since = ampoule.when(reached == Step::Out ? Step::Out : Step::Bath);
    const int group = reached == Step::Out ? 0 : clocked ? 1 : 2;
    const auto boot = since ? since->at.boot : BootTime{};
    return std::tuple(group, boot, -static_cast<int>(reached), ampoule.ref.no);
}

Next nextInPull(const Pull& pull)
{
    const Ampoule* first = nullptr;
    for (const Ampoule& ampoule : pull.ampoules) {
        if (ampoule.isOpen() && (!first || urgency(ampoule) < urgency(*first)))
            first = &ampoule;
    }
    const auto step = first ? nextStep(*first) : std::nullopt;
    if (!step)
        return {};
    Next next{.deed = NextDeed::MoveOn, .step = *step, .ampoules = {}, .bag = {}};
    for (const Ampoule& ampoule : pull.ampoules) {
        if (ampoule.isOpen() && nextStep(ampoule) == step)
            next.ampoules.push_back(ampoule.ref.no);
    }
    return next;
}

bool hasWholeRecipe(const Bench& bench, const Bag& bag)
{
    std::set<ComponentId> inside;
    for (const Pull& pull : bench.pulls) {
        for (const Ampoule& ampoule : pull.ampoules) {
            if (ampoule.bag == bag.id)
                inside.insert(ampoule.component);
        }
    }
    return std::ranges::all_of(bag.card->content().recipe,
                               [&](const Component& part) { return inside.contains(part.id); });
}

Next nextForBag(const Bench& bench, const Bag& bag)
{
    const auto deed = !bag.inspected ? NextDeed::Inspect
                      : !bag.drawn   ? NextDeed::DrawDiluent
                      : bag.card && bag.firstDiluent && hasWholeRecipe(bench, bag)
                          ? NextDeed::Mix
                          : NextDeed::TakeOut;
    return {.deed = deed, .step = {}, .ampoules = {}, .bag = bag.id};
}

bool checksOpen(const Bench& bench)
{
    return std::ranges::any_of(bench.card->content().checks, [&](const Check& check) {
        const auto found = bench.checks.find(check.id);
        const bool done =
            found != bench.checks.end() && (found->second.ok || !found->second.overridden.empty());
        return check.blocking && !done;
    });
}

const std::vector<std::string> kLateCauses{"interrupted", "too many at once", "hard to open",
                                           "tapped late", "other"};
const std::vector<std::string> kShortCauses{"small ampoule", "warm bath", "tapped late", "other"};
const std::vector<std::string> kYesNo{"yes", "no"};

std::string questionId(std::string_view kind, const Subject& subject)
{
    return std::string(kind) + " " + toText(subject);
}

class Asker {
public:
    explicit Asker(const Bench& bench) : m_bench(bench) {}

    std::vector<Question> questions() &&
    {
        for (const Pull& pull : m_bench.pulls) {
            if (pull.closed)
                about(pull);
        }
        return std::move(m_open);
    }

private:
    void ask(std::string id, QuestionKind kind, Subject subject, LimitName limit,
             std::vector<std::string> choices)
    {
        if (!m_bench.answers.contains(id))
            m_open.push_back({std::move(id), kind, std::move(subject), limit, std::move(choices)});
    }

    void about(const Pull& pull)
    {
        for (const Ampoule& ampoule : pull.ampoules) {
            late(LimitName::Exposure, ampoule);
            late(LimitName::Thaw, ampoule);
            thawedShort(ampoule);
        }
        broken(pull);
    }

    void late(LimitName limit, const Ampoule& ampoule)
    {
        const Subject subject = subjectOf(ampoule.ref);
        if (m_bench.judgements.contains({limit, subject}))
            ask(questionId("why late " + std::string(nameOf(limit)), subject),
                QuestionKind::WhyLate, subject, limit, kLateCauses);
    }

    void thawedShort(const Ampoule& ampoule)
    {
        const auto& bath = ampoule.when(Step::Bath);
        const auto& diluent = ampoule.when(Step::Diluent);
        const Card* card = cardOf(m_bench, ampoule);
        if (!bath || !diluent || !bath->timed || !diluent->timed || !card)
            return;
        if (elapsed(bath->at, diluent->at).time < card->content().shortestThaw)
            ask(questionId("thawed short", subjectOf(ampoule.ref)), QuestionKind::ThawedShort,
                subjectOf(ampoule.ref), LimitName::Thaw, kShortCauses);
    }

    void broken(const Pull& pull)
    {
        const Ampoule* broken = nullptr;
        bool burst = false;
        std::vector<std::string> numbers;
        for (const Ampoule& ampoule : pull.ampoules) {
            numbers.push_back(std::to_string(ampoule.ref.no));
            if (!ampoule.lost || ampoule.lost->why != LossReason::Broken)
                continue;
            broken = &ampoule;
            burst = burst || ampoule.lost->inBath;
        }
        if (!broken)
            return;
        if (numbers.size() > 1)
            ask(questionId("which broke", subjectOf(broken->ref)), QuestionKind::WhichBroke,
                subjectOf(broken->ref), {}, numbers);
        ask(questionId("anyone hurt", subjectOfPull(pull.no)), QuestionKind::AnyoneHurt,
            subjectOfPull(pull.no), {}, kYesNo);
        if (burst)
            ask(questionId("water changed", subjectOfPull(pull.no)), QuestionKind::WaterChanged,
                subjectOfPull(pull.no), {}, kYesNo);
    }

    const Bench& m_bench;
    std::vector<Question> m_open;
};

}  // namespace

Next next(const Bench& bench)
{
    if (!bench.shiftIsOpen() || !bench.card)
        return {.deed = NextDeed::OpenShift, .step = {}, .ampoules = {}, .bag = {}};
    if (const Pull* pull = bench.openPull())
        return nextInPull(*pull);
    if (const Bag* bag = bench.bagBeingMadeUp())
        return nextForBag(bench, *bag);
    for (const Bag& bag : bench.bags) {
        if (bag.isOpen() && bag.mixed && !bag.line && !bag.held())
            return {.deed = NextDeed::Hang, .step = {}, .ampoules = {}, .bag = bag.id};
    }
    const bool inUse = std::ranges::any_of(bench.bags, &Bag::isOpen);
    const auto deed = checksOpen(bench) ? NextDeed::SetUp
                      : inUse           ? NextDeed::Wait
                                        : NextDeed::StartBag;
    return {.deed = deed, .step = {}, .ampoules = {}, .bag = {}};
}

std::optional<Step> nextStep(const Ampoule& ampoule)
{
    if (!ampoule.isOpen())
        return std::nullopt;
    return static_cast<Step>(static_cast<int>(ampoule.reached()) + 1);
}

Millis handling(const Bench& bench)
{
    std::vector<Micros> seen;
    for (const Pull& pull : bench.pulls) {
        std::vector<Stamp> times;
        for (const Ampoule& ampoule : pull.ampoules) {
            if (const auto& diluent = ampoule.when(Step::Diluent); diluent && diluent->timed)
                times.push_back(diluent->at);
        }
        std::ranges::sort(times, {}, &Stamp::boot);
        for (std::size_t i = 1; i < times.size(); ++i) {
            if (const auto gap = elapsed(times[i - 1], times[i]);
                gap.certain && gap.time > Micros::zero())
                seen.push_back(gap.time);
        }
    }
    constexpr std::size_t kEnough = 3;
    if (seen.size() < kEnough)
        return bench.card ? bench.card->content().handling : Millis{};
    const auto middle = seen.begin() + static_cast<std::ptrdiff_t>(seen.size() / 2);
    std::nth_element(seen.begin(), middle, seen.end());
    return std::chrono::ceil<Millis>(*middle);
}

// n ampoules that go in s apart are slushy from the heads-up on and taken one by one, `hand` each:
// the k-th is done at max(done before it, cue + (k-1) s) + hand, and must be before limit + (k-1)
// s.
Pace pace(const Bench& bench, int n)
{
    if (!bench.card)
        return {};
    const auto& thaw = bench.card->limit(LimitName::Thaw).time;
    if (!thaw.at || !thaw.headsUp)
        return {.together = n, .stagger = {}};
    const Millis hand = handling(bench);
    const auto inTime = [&](int count, Millis stagger) {
        Millis done{};
        for (int k = 0; k < count; ++k) {
            done = std::max(done, *thaw.headsUp + k * stagger) + hand;
            if (done >= *thaw.at + k * stagger)
                return false;
        }
        return true;
    };
    Pace pace;
    while (pace.together < n && inTime(pace.together + 1, {}))
        ++pace.together;
    while (pace.together < n && pace.stagger <= *thaw.at && !inTime(n, pace.stagger))
        pace.stagger += std::chrono::seconds(1);
    return pace;
}

namespace {

/// In the order of the bath, by number among equals; across a start by wall time.
bool comesBefore(const Moment& one, int oneNo, const Moment& other, int otherNo)
{
    const bool sameBoot = one.at.bootId == other.at.bootId;
    if (sameBoot)
        return std::pair(one.at.boot, oneNo) < std::pair(other.at.boot, otherNo);
    return std::pair(one.at.wall, oneNo) < std::pair(other.at.wall, otherNo);
}

/// How many are in the bath and go before it.
std::int64_t waitingBefore(const Bench& bench, const Ampoule& ampoule)
{
    const Pull* pull = bench.openPull();
    if (!pull)
        return 0;
    return std::ranges::count_if(pull->ampoules, [&](const Ampoule& other) {
        const auto& since = other.when(Step::Bath);
        const bool waiting = other.isOpen() && since && !other.when(Step::Diluent);
        return waiting &&
               comesBefore(*since, other.ref.no, *ampoule.when(Step::Bath), ampoule.ref.no);
    });
}

Millis timesFactor(Millis usual, double factor)
{
    return std::chrono::floor<Millis>(std::chrono::duration<double>(usual * factor));
}

/// Earlier than the card's where ampoules were opened earlier. Later only by what is left after the
/// handling, as they are opened after slush is seen: else each shift's cue would be later than the
/// one before, up to the limit.
Millis cueAsLearned(const Bench& bench, const Ampoule& ampoule, const Card& card,
                    const Thresholds<Millis>& times, Millis byCard)
{
    const SlushScale* scale = learnedScale(bench, card);
    const auto factor = scale && ampoule.water ? scale->at(*ampoule.water) : std::nullopt;
    if (!factor || !times.at)
        return byCard;
    const Millis seen = timesFactor(times.headsUp.value_or(*times.at), *factor);
    const Millis hand = handling(bench);
    if (seen <= byCard)
        return std::max(seen, std::min(byCard, card.content().shortestThaw));
    return std::max(byCard, std::min(seen, *times.at) - hand);
}

/// The card's heads-up in the water the ampoule went into: earlier in warmer water; later in
/// cooler, as long as it leaves the handling before the limit.
Millis cueInItsWater(const Bench& bench, const Ampoule& ampoule, const Card& card,
                     const Thresholds<Millis>& times)
{
    const Millis usual = times.headsUp.value_or(times.at.value_or(Millis{}));
    const auto scale = bench.slush.find(card.hash());
    const auto factor = ampoule.water && scale != bench.slush.end()
                            ? scale->second->at(*ampoule.water)
                            : std::nullopt;
    if (!factor || !times.at)
        return usual;
    const std::chrono::duration<double> slush = usual * *factor;
    return *factor <= 1 ? timesFactor(usual, *factor)
                        : std::max(usual, slushCue(slush.count(), *times.at, handling(bench)));
}

}  // namespace

const SlushScale* learnedScale(const Bench& bench, const Card& card)
{
    if (!bench.learned || !bench.learned->cue)
        return nullptr;
    const auto of = bench.cards.find(bench.learned->card);
    const bool isAlike = of != bench.cards.end() &&
                         of->second->content().heat == card.content().heat &&
                         of->second->content().bath.target == card.content().bath.target;
    return isAlike ? bench.learned->cue.get() : nullptr;
}

Millis thawCue(const Bench& bench, const Ampoule& ampoule)
{
    const Card* card = cardOf(bench, ampoule);
    if (!card || !ampoule.when(Step::Bath))
        return {};
    const auto& times = card->timesFor(LimitName::Thaw, ampoule.component);
    const Millis cue =
        cueAsLearned(bench, ampoule, *card, times, cueInItsWater(bench, ampoule, *card, times));
    if (!bench.openPull() || !times.at)
        return cue;
    const Millis early = *times.at - waitingBefore(bench, ampoule) * handling(bench);
    return std::max(std::min(cue, early), std::min(cue, card->content().shortestThaw));
}

std::vector<Question> questions(const Bench& bench) { return Asker(bench).questions(); }

std::int64_t birdsServed(const Bench& bench, const Bag& bag)
{
    if (!bag.line)
        return 0;
    const auto line = bench.lines.find(*bag.line);
    return line == bench.lines.end()
               ? 0
               : std::max<std::int64_t>(0, line->second.birds - bag.hungAtBirds);
}

MicroLitres volumeLeft(const Bench& bench, const Bag& bag)
{
    const auto* card = rules(bench);
    const std::int64_t used = card ? birdsServed(bench, bag) * card->dose.count : 0;
    return {std::max<std::int64_t>(0, bag.volume.count - used)};
}

}  // namespace bathside
