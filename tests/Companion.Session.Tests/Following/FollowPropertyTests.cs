using Companion.Engine;
using Companion.Session.Commands;
using Companion.Session.Events;
using Companion.Session.State;

namespace Companion.Session.Tests.Following;

/// <summary>Whatever is played in a program, the session that follows its screen has the same grid.</summary>
public sealed class FollowPropertyTests
{
    private const int Commands = 80;

    public static TheoryData<int> Seeds => [.. Enumerable.Range(0, 10)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void After_each_entry_the_grids_are_equal(int seed)
    {
        var show = new FollowedShow();
        show.LookTwice();
        var player = new RandomSession(seed, show.Program);
        for (var count = 0; count < Commands; count++)
        {
            Play(show, player.Any());
            show.LookTwice();
            Confirm(show);
            Assert.Equal(Seen(show.Program.State.Grid), Seen(show.Session.State.Grid));
        }
    }

    // Seen less often than entries come, as by a slow machine.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void After_several_entries_between_two_looks_they_are_equal_too(int seed)
    {
        var show = new FollowedShow();
        show.LookTwice();
        var player = new RandomSession(seed + 100, show.Program);
        for (var count = 0; count < Commands; count++)
        {
            Play(show, player.Any());
            if (count % (2 + seed % 4) != 0)
                continue;
            show.LookTwice();
            Confirm(show);
            Assert.Equal(Seen(show.Program.State.Grid), Seen(show.Session.State.Grid));
        }
    }

    // What an entry of one cell or one mark is in the program it is in the log: an undo as an undo, a redo as a redo.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void Entry_by_entry_the_log_tells_the_same(int seed)
    {
        var show = new FollowedShow();
        show.LookTwice();
        var player = new RandomSession(seed + 200, show.Program);
        for (var count = 0; count < Commands; count++)
        {
            var (before, followed) = (show.Program.State, show.Session.State);
            var logged = show.Program.Log.Count;
            Play(show, player.Any());
            var happened = show.Program.Log.Skip(logged).Where(IsEntry).ToList();
            show.Entered();
            show.LookTwice();
            Confirm(show);
            var entered = show.Session.Log.Skip(show.Session.Log.Count - show.Entered().Count).Where(IsEntry).ToList();
            if (happened is not [var entry] || Seen(before.Grid) == Seen(show.Program.State.Grid) || GoesBack(followed, show.Program.State.Grid, entry))
                continue;
            Assert.Equal(Kind(entry, show.Program.State.Grid), Kind(Assert.Single(entered), show.Program.State.Grid));
        }
    }

    // An entry that leads where an undo or a redo of the session would is taken for one; and where those of the program lead
    // elsewhere, because it took other entries to come here, there is none.
    private static bool GoesBack(SessionState followed, Grid after, Event entry)
    {
        var here = Seen(after);
        return entry switch
        {
            EntryUndone => followed.History.Last is not { } last || Seen(last.Grid) != here,
            EntryRedone => followed.History.Next is not { } next || Seen(next.Grid) != here || followed.History.Made.Any(step => Seen(step.Grid) == here),
            _ => followed.History.Made.Concat(followed.History.Undone).Any(step => Seen(step.Grid) == here),
        };
    }

    // On a screen the last mark of a cell that is taken out is a cell erased, and all cells erased are a grid cleared.
    private static Event Kind(Event entry, Grid after) => entry switch
    {
        _ when after.Written.IsEmpty && entry is not (EntryUndone or EntryRedone) => new GridCleared(default),
        CellMarkChanged { IsSet: false } change when !after.Written.Overlaps(change.Cells) => new CellsErased(default, change.Cells),
        BlockMarkChanged { IsSet: false } change when !after.Written.Overlaps(change.Cells) => new CellsErased(default, change.Cells),
        StrikeChanged { IsStruck: false } change when !after.Written.Overlaps(change.Cells) => new CellsErased(default, change.Cells),
        _ => entry with { At = default },
    };

    private static bool IsEntry(Event happened) => happened is DigitPlaced or CellsErased or BlockMarkChanged or CellMarkChanged or StrikeChanged
        or GridCleared or EntryUndone or EntryRedone;

    // Other puzzles are for other tests.
    private static void Play(FollowedShow show, Command command)
    {
        if (command is LoadPuzzle or ShowFrame or PlaceFrame)
            return;
        var loading = show.Program.State.Grid.Loading;
        show.Program.Try(command);
        if (show.Program.State.Grid.Loading != loading)
            show.Program.Redo();
    }

    // The hasty presenter writes equal digits into houses, and accepts them.
    private static void Confirm(FollowedShow show)
    {
        while (show.Last.Held is [var held, ..])
        {
            show.Say(held.Cell.ToString(), null);
            show.Look();
        }
    }

    // Block marks that had two places once and have one now look like any others.
    private static string Seen(Grid grid) => string.Join(';', CellSet.All.Select(cell => Companion.Session.Following.CellContent.Of(grid, cell)));
}
