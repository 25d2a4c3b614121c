#include "ui/sound/sink_choice.h"

#include <gtest/gtest.h>

namespace bathside::ui {

namespace {

SinkFacts sink(const std::string& name)
{
    return {.name = name, .description = "The " + name, .level = 0.8};
}

SinkFacts muted(const std::string& name)
{
    SinkFacts facts = sink(name);
    facts.isMuted = true;
    return facts;
}

SinkFacts unplugged(const std::string& name)
{
    SinkFacts facts = sink(name);
    facts.isUnplugged = true;
    return facts;
}

SinkFacts atZero(const std::string& name)
{
    SinkFacts facts = sink(name);
    facts.level = 0.0;
    return facts;
}

struct Case {
    std::string name;
    SinkSurvey survey;
    SinkWish wish;
    Result<std::string, OutFault> expected;
};

class ChooseSink : public testing::TestWithParam<Case> {};

TEST_P(ChooseSink, takesTheRightDevice)
{
    EXPECT_EQ(chooseSink(GetParam().survey, GetParam().wish), GetParam().expected);
}

const Result<std::string, OutFault> kNoDevice = failure(OutFault::NoDevice);
const Result<std::string, OutFault> kMuted = failure(OutFault::Muted);
const Result<std::string, OutFault> kRefused = failure(OutFault::Refused);

INSTANTIATE_TEST_SUITE_P(
    Sound, ChooseSink,
    testing::Values(
        Case{"NothingThere", {}, {}, kNoDevice},
        // The name that PulseAudio's module-always-sink and PipeWire give to the device they make
        // up.
        Case{"TheDummyIsNone", {{sink("auto_null")}, "auto_null"}, {}, kNoDevice},
        Case{"TheDefault", {{sink("a"), sink("b")}, "b"}, {}, "b"},
        Case{"TheProvenBeforeTheDefault", {{sink("a"), sink("b")}, "b"}, {.preferred = "a"}, "a"},
        Case{"TheOneInUseBeforeTheDefault", {{sink("a"), sink("b")}, "b"}, {.current = "a"}, "a"},
        Case{"BackToTheProvenOne",
             {{sink("a"), sink("b")}, "b"},
             {.preferred = "a", .current = "b"},
             "a"},
        Case{"AnyWhenTheDefaultIsGone", {{sink("a")}, "gone"}, {.preferred = "gone"}, "a"},
        Case{"NotOneThatJustFailed", {{sink("a"), sink("b")}, "a"}, {.refused = {"a"}}, "b"},
        Case{"AllFailed", {{sink("a")}, "a"}, {.refused = {"a"}}, kRefused},
        Case{"NotAMutedOne", {{muted("a"), sink("b")}, "a"}, {}, "b"},
        Case{"AllMuted", {{muted("a"), muted("b")}, "a"}, {}, kMuted},
        Case{"AtZeroIsMuted", {{atZero("a")}, "a"}, {}, kMuted},
        Case{"AMutedOneThatWeMayRaise", {{muted("a"), sink("b")}, "a"}, {.mayUnmute = true}, "a"},
        Case{"PluggedInFirst", {{unplugged("a"), sink("b")}, "a"}, {.preferred = "a"}, "b"},
        Case{"UnpluggedBetterThanNone", {{unplugged("a")}, "a"}, {}, "a"}),
    [](const auto& row) { return row.param.name; });

TEST(SinkChoiceTest, namesAllButTheDummy)
{
    const SinkSurvey survey{{sink("a"), sink("auto_null"), muted("b")}, "a"};
    const std::vector<DeviceName> expected{{"a", "The a"}, {"b", "The b"}};
    EXPECT_EQ(deviceNames(survey), expected);
}

}  // namespace

}  // namespace bathside::ui
