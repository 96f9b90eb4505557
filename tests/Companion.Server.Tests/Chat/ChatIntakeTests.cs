using System.Collections.Immutable;
using Companion.Server.Chat;
using Microsoft.Extensions.Logging.Abstractions;

namespace Companion.Server.Tests.Chat;

public sealed class ChatIntakeTests
{
    private static readonly ChatLine Line = new("irc", "nick alice", "alice", "hint", DateTimeOffset.UnixEpoch);

    [Fact]
    public async Task A_line_is_heard_by_all_and_their_answers_are_sayable()
    {
        var intake = Intake(new Echo(), new Says("/quit", "  ", "row\r\nfive"));

        Assert.Equal(["alice: hint", "quit", "row five"], await Hear(intake, Line));
    }

    [Fact]
    public async Task Programs_empty_lines_and_repeated_ones_are_not_heard()
    {
        var intake = Intake(new Echo());

        Assert.Empty(await Hear(intake, Line with { IsFromBot = true }));
        Assert.Empty(await Hear(intake, Line with { Text = "" }));
        Assert.Single(await Hear(intake, Line with { MessageId = "1" }));
        Assert.Empty(await Hear(intake, Line with { MessageId = "1" }));
        Assert.Single(await Hear(intake, Line with { MessageId = "1", Source = "webhook" }));
        Assert.Single(await Hear(intake, Line));
        Assert.Single(await Hear(intake, Line));
    }

    [Fact]
    public async Task A_listener_that_fails_costs_its_own_answers_alone() =>
        Assert.Equal(["alice: hint"], await Hear(Intake(new Failing(), new Echo()), Line));

    [Fact]
    public void Of_the_names_seen_the_newest_are_remembered()
    {
        var seen = new SeenIds(2);

        Assert.True(seen.Add("a"));
        Assert.True(seen.Add("b"));
        Assert.False(seen.Add("a"));
        Assert.True(seen.Add("c"));
        Assert.False(seen.Add("b"));
        Assert.True(seen.Add("a"));
    }

    private static ChatIntake Intake(params IChatListener[] listeners) => new(listeners, NullLogger<ChatIntake>.Instance);

    private static async Task<ImmutableArray<string>> Hear(ChatIntake intake, ChatLine line) =>
        await intake.Hear(line, TestContext.Current.CancellationToken);

    private sealed class Says(params string[] answers) : IChatListener
    {
        public ValueTask<ImmutableArray<string>> Hear(ChatLine line, CancellationToken stop) => new([.. answers]);
    }

    private sealed class Failing : IChatListener
    {
        public ValueTask<ImmutableArray<string>> Hear(ChatLine line, CancellationToken stop) => throw new InvalidOperationException("broken");
    }
}
