using Companion.Session.Asks;

namespace Companion.Session.Tests.Asks;

public sealed class AskSettingsTests
{
    [Fact]
    public void What_is_set_if_nothing_is_set_can_be_used() => Assert.Empty(new AskSettings().Faults());

    [Theory]
    [InlineData("")]
    [InlineData("....")]
    [InlineData("a")]
    [InlineData("!1")]
    [InlineData(" ")]
    [InlineData("/")]
    [InlineData(".")]
    [InlineData("\u0007")]
    [InlineData("¡")]
    public void A_prefix_that_a_chat_might_take_for_something_else_is_refused(string prefix) => Assert.Equal(
        "asks.prefix is one to three signs such as '!', without letters, digits, blanks, '/' and '.': change it.",
        Assert.Single(new AskSettings { Prefix = prefix }.Faults()));

    [Fact]
    public void Every_number_out_of_range_is_named() => Assert.Equal(
        [
            "asks.highestGrade is 1 to 4 and not 5: change it.",
            "asks.delaySeconds is 0 to 60 and not 61: change it.",
            "asks.viewerPauseSeconds is 0 to 600 and not -1: change it.",
            "asks.chatPauseSeconds is 0 to 60 and not 61: change it.",
            "asks.repeatPauseSeconds is 0 to 600 and not 601: change it.",
            "asks.gatherSeconds is 0 to 60 and not -2: change it.",
            "asks.gradePauseSeconds is 0 to 600 and not 700: change it.",
            "asks.mostViewers is 10 to 100000 and not 9: change it.",
        ],
        new AskSettings
        {
            HighestGrade = 5,
            DelaySeconds = 61,
            ViewerPauseSeconds = -1,
            ChatPauseSeconds = 61,
            RepeatPauseSeconds = 601,
            GatherSeconds = -2,
            GradePauseSeconds = 700,
            MostViewers = 9,
        }.Faults());
}
