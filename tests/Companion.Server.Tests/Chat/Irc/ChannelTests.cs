using System.Collections.Immutable;
using Companion.Server.Chat;
using Companion.Server.Chat.Irc;
using Companion.Server.Tests.Chat.Servers;

namespace Companion.Server.Tests.Chat.Irc;

/// <summary>Against a real server of the old protocol: ngIRCd.</summary>
public sealed class ChannelTests(NgircdFixture fixture) : IClassFixture<NgircdFixture>
{
    private readonly Ngircd _server = fixture.Server;

    [Fact]
    public async Task It_joins_hears_and_answers()
    {
        await using var alice = await Viewer.Join(_server, "#talk", "alice");
        await using var chat = await ChatHarness.Connect(_server.Settings("#talk"));
        await alice.Say("hint é中😀");

        Assert.Equal("alice: hint é中😀", await alice.Hears());
        chat.Out.Say("!row\r\nfive");
        Assert.Equal("row five", await alice.Hears());
        Assert.Equal([ChatPhase.Connecting, ChatPhase.Connected], chat.Told.Select(status => status.Phase));
    }

    [Fact]
    public async Task A_nick_that_is_taken_is_tried_with_a_digit()
    {
        await using var taker = await Viewer.Join(_server, "#nick", "companion");
        await using var chat = await ChatHarness.Connect(_server.Settings("#nick") with { Nick = "companion" });
        await taker.Say("hint");

        Assert.Equal("companion: hint", await taker.Hears("companio1"));
    }

    [Fact]
    public async Task Sent_out_it_comes_back_after_a_while_and_banned_it_stops_and_says_so()
    {
        await using var op = await Viewer.Join(_server, "#kick", "op");
        await using var chat = await ChatHarness.Connect(_server.Settings("#kick") with { Nick = "kicked" });
        await op.Send("KICK #kick kicked :out");

        await chat.Tells(ChatPhase.Connecting);
        await chat.Tells(ChatPhase.Connected, TimeSpan.FromSeconds(5));
        await op.Say("hint");
        Assert.Equal("op: hint", await op.Hears("kicked"));

        await op.Send("MODE #kick +b kicked!*@*", "KICK #kick kicked");
        await chat.Tells(ChatPhase.Connecting);
        var status = await chat.Tells(ChatPhase.Stopped, TimeSpan.FromSeconds(5));
        Assert.Equal($"The chat has stopped. {Reasons.NotAllowedIn}", status.Text);
        await op.Sees(message => message.Command is "KICK");
    }

    [Fact]
    public async Task Hostile_lines_are_survived_and_answered_by_nothing_worse_than_text()
    {
        await using var mallory = await Viewer.Join(_server, "#evil", "mallory");
        await using var chat = await ChatHarness.Connect(_server.Settings("#evil") with { Nick = "evilbot" });
        byte[][] lines =
        [
            [.. "PRIVMSG #evil :"u8, 0xFF, 0xFE, 0xC3, .. "\r\n"u8],
            [.. "PRIVMSG #evil :\x01VERSION\x01\r\n"u8],
            [.. "PRIVMSG #evil :"u8, 0x03, .. "04,12"u8, 0x02, 0x0F, .. "\r\n"u8],
            [.. "PRIVMSG #evil :"u8, .. Enumerable.Repeat((byte)'x', 480), .. "\n"u8],
            [.. "NOTICE #evil :hint\r\n"u8],
            [.. "PRIVMSG evilbot :hint\r\n"u8],
            [.. "PRIVMSG #evil :/quit\n"u8],
        ];
        foreach (var line in lines)
            await mallory.SendBytes(line);

        // The server cut the end off; the rest comes back in two lines, since the viewer's name is in front of it.
        Assert.Equal("mallory:", await mallory.Hears("evilbot"));
        var letters = await mallory.Hears("evilbot");
        Assert.StartsWith(new string('x', 400), letters, StringComparison.Ordinal);
        Assert.Equal("mallory: /quit", await mallory.Hears("evilbot"));
    }

    [Fact]
    public async Task A_hundred_who_ask_at_once_are_all_heard_and_answered_at_a_pace_that_the_server_bears()
    {
        var listener = new Counting();
        await using var chat = await ChatHarness.Connect(_server.Settings("#many") with { Nick = "manybot" }, listener);
        var askers = await Task.WhenAll(Enumerable.Range(0, 100).Select(number => Viewer.Join(_server, "#many", $"v{number}")));
        await Task.WhenAll(askers.Select(asker => asker.Say("hint")));
        await chat.Until(() => listener.Heard == 100);

        // Five at once and then one every two seconds of a clock that stands; 32 wait, and the others are dropped.
        List<string> answers = [];
        while (answers.Count < 32)
        {
            var next = askers[0].Hears("manybot");
            await chat.Until(() => next.IsCompleted, TimeSpan.FromMilliseconds(500));
            answers.Add(await next);
        }

        Assert.Equal(32, answers.Distinct().Count());
        Assert.Equal(ChatPhase.Connected, chat.Newest.Phase);
        await Task.WhenAll(askers.Select(asker => asker.DisposeAsync().AsTask()));
    }

    [Fact]
    public async Task A_flood_is_dropped_beyond_what_can_wait_and_the_next_who_asks_is_heard()
    {
        var listener = new Held();
        await using var flooder = await Viewer.Join(_server, "#flood", "flooder");
        await using var chat = await ChatHarness.Connect(_server.Settings("#flood") with { Nick = "floodbot" }, listener);
        // First as many as are answered at once, and one more, so that it is in hand before the others come and none is dropped for it.
        await flooder.Send([.. Enumerable.Range(0, 257).Select(line => $"PRIVMSG #flood :first {line}")]);
        await chat.Until(() => listener.Heard == 256);
        for (var block = 0; block < 20; block++)
            await flooder.Send([.. Enumerable.Range(0, 100).Select(line => $"PRIVMSG #flood :{block} {line}")]);
        await flooder.Send("KICK #flood floodbot");

        // Its listener hangs, and still it has taken 2,000 lines and knows what came after them.
        await chat.Tells(ChatPhase.Connecting);
        await chat.Tells(ChatPhase.Connected, TimeSpan.FromSeconds(5));
        await chat.Until(() => listener.Heard == 256);

        listener.Release();
        await chat.Until(() => listener.Heard >= 513);
        await flooder.Say("hint");
        await chat.Until(() => listener.Last == "hint");
        Assert.Equal(514, listener.Heard); // 256 being answered, one in hand, 256 that waited, and the new one
    }

    [Fact]
    public async Task Who_asks_something_quick_does_not_wait_for_another_ones_answer()
    {
        var listener = new Held("slow");
        await using var alice = await Viewer.Join(_server, "#slow", "patient");
        await using var chat = await ChatHarness.Connect(_server.Settings("#slow") with { Nick = "slowbot" }, listener);
        await alice.Say("slow");
        await alice.Say("quick");

        Assert.Equal("to quick", await alice.Hears("slowbot"));
        listener.Release();
        Assert.Equal("to slow", await alice.Hears("slowbot"));
    }

    private sealed class Counting : IChatListener
    {
        private int _heard;

        public int Heard => _heard;

        public ValueTask<ImmutableArray<string>> Hear(ChatLine line, CancellationToken stop)
        {
            Interlocked.Increment(ref _heard);
            return new([$"@{line.DisplayName} look at row 4"]);
        }
    }

    /// <summary>Hangs at every line, or at those of a text, until it is released.</summary>
    private sealed class Held(string? at = null) : IChatListener
    {
        private readonly TaskCompletionSource _released = new(TaskCreationOptions.RunContinuationsAsynchronously);
        private int _heard;
        private volatile string _last = "";

        public int Heard => _heard;

        public string Last => _last;

        public void Release() => _released.SetResult();

        public async ValueTask<ImmutableArray<string>> Hear(ChatLine line, CancellationToken stop)
        {
            Interlocked.Increment(ref _heard);
            if (at is null || line.Text == at)
                await _released.Task.WaitAsync(stop);
            _last = line.Text;
            return at is null ? [] : [$"to {line.Text}"];
        }
    }
}
