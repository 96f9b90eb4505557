using Companion.Engine;
using Companion.Session.Asks.Delays;
using Companion.Session.Audience;
using Companion.Session.Commands;

namespace Companion.Session.Tests.Audience;

/// <summary>What holds of every view, whatever is played.</summary>
public sealed class FeedPropertyTests
{
    public static TheoryData<int> Seeds => [.. Enumerable.Range(1, 12)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Every_view_is_the_board_of_the_delay_ago_and_nothing_of_it_is_newer(int seed)
    {
        var random = new Random(seed);
        var show = new AudienceShow(seed % 2 == 0 ? Puzzles.Easy : Puzzles.Demo);
        var player = new RandomSession(seed, show.Session);
        var boards = 0;
        for (var step = 0; step < 250; step++)
        {
            show.Try(random.Next(12) == 0 ? AboutTheAudience(random) : player.Any());

            // A new show begins behind a closed door.
            if (show.Session.State.Asks.Door == AudienceDoor.Closed && random.Next(8) == 0)
                show.Try(new SetAudienceDoor(AudienceDoor.Open));
            show.Wait(random.NextDouble() * random.Next(4));
            var view = show.View;
            var delay = show.Session.State.Asks.Delay?.Seconds ?? 15;
            Assert.Equal(delay, view.DelaySeconds);
            var seen = show.Shown.FindLast(shown => shown.At <= show.Now.AddSeconds(-delay)).State;
            var isShown = seen?.Grid.Puzzle is not null && (show.Session.State.Asks.Door ?? AudienceDoor.Open) != AudienceDoor.Closed;
            Assert.Equal(isShown ? AudienceBoard.Of(seen!.Grid) : null, view.Board);
            Assert.Equal(isShown ? seen!.Grid.Credit : null, view.Credit);
            Assert.Equal(isShown ? seen!.Grid.Placed : CandidateSet.Empty, Placed(view.Board));
            boards += isShown ? 1 : 0;
        }

        Assert.InRange(boards, 50, 249);
    }

    // Two shows that are the same up to a moment, and from then on are not: nobody can tell from the views until the delay is over.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void No_view_depends_on_what_viewers_have_not_seen(int seed)
    {
        var (one, other) = (Played(seed), Played(seed));
        var differ = false;
        for (var second = 1; second < 15; second++)
        {
            Play(one, seed * 31 + second, commands: 2);
            Play(other, seed * 37 + second, commands: 3);
            differ |= !one.Session.State.Grid.Equals(other.Session.State.Grid);
            Assert.Equal(one.Wait(1).View, other.Wait(1).View);
        }

        Assert.True(differ, "These two shows show nothing.");
    }

    private static AudienceShow Played(int seed)
    {
        var show = new AudienceShow(seed % 2 == 0 ? Puzzles.Easy : Puzzles.Demo);
        for (var second = 0; second < 20; second++)
            Play(show.Wait(1), seed * 100 + second, commands: 1);
        return show;
    }

    // What the presenter sets about viewers holds at once, and is left alone here.
    private static void Play(AudienceShow show, int seed, int commands)
    {
        var player = new RandomSession(seed, show.Session);
        for (var count = 0; count < commands; count++)
        {
            if (player.Any() is var command and not (LimitAsks or SetDelay or SetAudienceDoor or EndShow or BeginShow or ReopenShow))
                show.Try(command);
        }
    }

    private static Command AboutTheAudience(Random random) => random.Next(3) switch
    {
        0 => new SetAudienceDoor((AudienceDoor)random.Next(4)),
        1 => new SetDelay(Delay.OfSeconds(random.Next(0, 61))),
        _ => new LoadPuzzle(random.Next(2) == 0 ? Puzzles.Hard : Puzzles.Easy, $"Title {random.Next(9)}", "", ""),
    };

    private static CandidateSet Placed(AudienceBoard? board)
    {
        var placed = CandidateSet.Empty;
        foreach (var cell in CellSet.All)
        {
            if (board?.Placed[cell.Index] is { } sign and not '.')
                placed = placed.With(new(cell, Digit.Of(sign - '0')));
        }

        return placed;
    }
}
