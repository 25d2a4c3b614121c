#pragma once

// Facts of every kind with random content, always the same for one seed: for properties that must
// hold whatever is recorded.

#include <array>
#include <cstdint>
#include <optional>
#include <random>
#include <string>
#include <type_traits>
#include <utility>
#include <vector>

#include "core/facts/facts.h"
#include "core/trail/whole_json.h"

namespace bathside::test {

/// Fills a fact's members; also a source of the small random choices that logs are made of.
class RandomFacts {
public:
    explicit RandomFacts(std::uint64_t seed) : m_random(seed) {}

    static constexpr std::size_t kKinds = std::variant_size_v<AnyFact>;

    Fact fact() { return fact(below(kKinds)); }
    Fact fact(std::size_t kind) { return byKind(kind, std::make_index_sequence<kKinds>()); }

    // Not a std distribution: their sequences differ between libraries.
    std::size_t below(std::size_t bound) { return m_random() % bound; }
    std::int64_t whole(std::int64_t low, std::int64_t high)
    {
        return low +
               static_cast<std::int64_t>(m_random() % static_cast<std::uint64_t>(high - low + 1));
    }

    /// Words with what needs care in JSON and CSV: quotes, controls, other planes, formulas.
    std::string text()
    {
        static const std::array<std::string, 14> pieces{"bag",        " ",    "\"", "\\",    "\n",
                                                        "\t",         "\x01", "µ",  "ñandú", "€",
                                                        "\U0001F423", "=1+1", ",",  ";"};
        std::string text;
        for (std::size_t left = below(6); left > 0; --left)
            text += pieces[below(pieces.size())];
        return text;
    }

    template <typename T>
    void operator()(std::string_view /*name*/, T& member)
    {
        fill(member);
    }

private:
    template <std::size_t... I>
    Fact byKind(std::size_t kind, std::index_sequence<I...> /*all*/)
    {
        Fact fact;
        ((I == kind ? void(fact = filled<std::variant_alternative_t<I, AnyFact>>()) : void()), ...);
        return fact;
    }

    template <typename T>
    T filled()
    {
        T fact{};
        T::members(fact, *this);
        return fact;
    }

    void fill(bool& member) { member = below(2) == 1; }
    void fill(int& member) { member = static_cast<int>(whole(1, 99)); }
    void fill(std::int64_t& member)
    {
        static constexpr std::array<std::int64_t, 4> kEnds{0, -1, kLargestWhole, -kLargestWhole};
        const bool atEnd = below(8) == 0;
        member = atEnd ? kEnds[below(kEnds.size())] : whole(-100000, 1000000000000);
    }
    void fill(std::string& member) { member = text(); }
    void fill(Millis& member)
    {
        fill(member, [](std::int64_t count) { return Millis(count); });
    }
    void fill(WallTime& member) { member = WallTime(Millis(whole(0, 4102444800000))); }
    void fill(std::chrono::sys_days& member)
    {
        member = std::chrono::sys_days(std::chrono::days(whole(-25567, 40000)));  // 1900 to 2079
    }
    void fill(std::vector<DaySpan>& member)
    {
        member.resize(below(3));
        for (DaySpan& span : member) {
            fill(span.from);
            fill(span.to);
        }
    }
    void fill(std::vector<UnprovenBirds>& member)
    {
        member.resize(below(3));
        for (UnprovenBirds& line : member) {
            fill(line.line);
            fill(line.birds);
        }
    }
    void fill(Document& member)
    {
        member.text = below(2) == 0 ? R"({"a":[1,"x"],"b":{}})" : R"({"u_c":0.06})";
    }
    void fill(Subject& member)
    {
        member = {static_cast<SubjectKind>(below(Names<SubjectKind>::all.size())), text()};
    }

    template <typename T, typename Make>
    void fill(T& member, Make make)
    {
        std::int64_t count = 0;
        fill(count);
        member = make(count);
    }

    template <typename Tag>
    void fill(Id<Tag>& member)
    {
        fill(member.text);
    }
    template <typename Tag>
    void fill(Quantity<Tag>& member)
    {
        fill(member.count);
    }
    template <typename E>
    requires std::is_enum_v<E>
    void fill(E& member) { member = static_cast<E>(below(Names<E>::all.size())); }
    template <typename T>
    void fill(std::optional<T>& member)
    {
        if (below(2) == 1)
            fill(member.emplace());
    }
    void fill(std::vector<Seq>& member)
    {
        member.resize(below(4));
        for (Seq& seq : member)
            fill(seq);
    }

    std::mt19937_64 m_random;
};

}  // namespace bathside::test
