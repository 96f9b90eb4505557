using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Session.AfterShow.Recaps;
using Companion.Session.Events;
using Companion.Session.Shows;

namespace Companion.Session.Tests.AfterShow;

/// <summary>
/// Shows of which it can be told by hand what was overlooked: a full grid from which some cells are open, each the last open one of a row
/// and so a full house, but for corners, which share their row, column and block with other open cells and are hidden singles.
/// </summary>
public sealed class OverlookedTests
{
    private static readonly DateTimeOffset Noon = new(2026, 1, 2, 12, 0, 0, TimeSpan.Zero);

    private static readonly Solution Full = Puzzle.Parse(Puzzles.Easy).Solution;

    private static readonly Ladder Singles = Ladder.Whole.UpTo(new("naked-single"));

    // An entry every ten seconds: the corner r1c1 at 0:10, which is harder than any other, and at last its neighbours.
    [Fact]
    public void What_was_open_for_a_known_time_and_a_known_number_of_entries_is_told_so_and_nothing_else_is()
    {
        var show = Played("r1c1", "r4c4", "r5c7", "r7c5", "r8c8", "r1c2", "r2c1");

        // Five entries are the least: what was open for four, r7c5 at 0:40, is not told.
        Assert.Equal(
            [("r2c1", 0, 70, 7, true), ("r1c2", 0, 60, 6, true), ("r8c8", 0, 50, 5, true)],
            OverlookedIn(show).Select(Figures));
        Assert.All(OverlookedIn(show), each => Assert.Equal(
            (new RuleId("full-house"), new RuleId("hidden-single")), (each.Deduction.Rule, each.Harder)));
    }

    // r2c1 is the last open cell of its row from the beginning, and of its column too from 0:10 on.
    [Fact]
    public void A_step_that_can_be_read_in_two_ways_counts_from_the_first_of_them()
    {
        var show = Played("r1c1", "r9c9", "r4c4", "r5c7", "r6c5", "r1c2", "r2c1", "r9c8", "r8c9");

        Assert.Equal(
            [("r8c9", 0, 90, 9, true), ("r9c8", 0, 80, 8, true), ("r2c1", 0, 70, 7, true), ("r1c2", 0, 60, 6, true), ("r6c5", 0, 50, 5, true)],
            OverlookedIn(show).Select(Figures));
    }

    [Fact]
    public void What_is_never_entered_was_open_until_the_end()
    {
        var whole = Played("r1c1", "r4c4", "r5c7", "r7c5", "r8c8", "r1c2", "r2c1");
        var last = whole.Events.Last(happened => happened is DigitPlaced);
        var show = StoredShow.Replay([.. whole.Events.Where(happened => happened != last), new AirCleared(Noon.AddSeconds(95))]);

        Assert.Equal(("r2c1", 0, 95, 6, false), Figures(OverlookedIn(show)[0]));
    }

    [Fact]
    public void What_was_taken_back_was_overlooked_for_each_time_on_its_own()
    {
        var show = Played("r1c1", "r4c4", "r5c7", "r7c5", "r8c8", "r1c2", "r2c1");
        // The neighbour is entered at 0:31, and that entry is undone at 0:33: neither before nor after it is open for long enough.
        var entered = new DigitPlaced(Noon.AddSeconds(31), Cell.Parse("r2c1"), Full[Cell.Parse("r2c1")]);
        var events = show.Events.Insert(show.Events.IndexOf(show.Events.First(happened => happened.At > entered.At)), entered)
            .Insert(show.Events.IndexOf(show.Events.First(happened => happened.At > entered.At)) + 1, new EntryUndone(Noon.AddSeconds(33)));

        Assert.DoesNotContain("r2c1", OverlookedIn(StoredShow.Replay(events)).Select(each => Figures(each).Cell));
    }

    // 4 is struck in r9c4 at 0:31, where 7 could go too, and given back at 0:33: meanwhile 4 has no place in row 9.
    [Fact]
    public void A_slip_that_breaks_the_grid_neither_ends_what_was_open_nor_shows_in_the_curve()
    {
        var show = Played("r1c1", "r4c4", "r5c7", "r7c5", "r8c8", "r1c2", "r2c1", "r9c4", "r9c6", "r6c4");
        var (at, cell) = (Noon.AddSeconds(31), Cell.Parse("r9c4"));
        var slipped = StoredShow.Replay(show.Events
            .Append(new StrikeChanged(at, CellSet.Of(cell), Full[cell], IsStruck: true))
            .Append(new StrikeChanged(at.AddSeconds(2), CellSet.Of(cell), Full[cell], IsStruck: false))
            .OrderBy(happened => happened.At));

        Assert.Contains(("r2c1", 0, 70, true), OverlookedIn(slipped).Select(Known));
        Assert.Equal(OverlookedIn(show).Select(Known), OverlookedIn(slipped).Select(Known));
        var points = PuzzleOf(slipped).Curve.SkipWhile(point => point.At.TotalSeconds < 30).Take(3).ToList();
        Assert.Equal([30, 31, 33], points.Select(point => point.At.TotalSeconds));
        Assert.True(points[0].Deductions > 0);
        Assert.Single(points.Select(point => (point.Deductions, point.BivalueCells)).Distinct());

        static (string, double, double, bool) Known(Overlooked each) => (Figures(each).Cell, Figures(each).From, Figures(each).To, each.WasTaken);
    }

    [Fact]
    public void Nothing_is_overlooked_where_nothing_harder_was_worked()
    {
        // The same entries, and no proof says that the first was harder than the others.
        var show = StoredShow.Replay(Played("r1c1", "r4c4", "r5c7", "r7c5", "r8c8", "r1c2", "r2c1").Events.Where(happened => happened is not EntryAttributed));

        Assert.Empty(OverlookedIn(show));
    }

    private static ImmutableArray<Overlooked> OverlookedIn(StoredShow show) =>
        PuzzleOf(show).Overlooked;

    private static RecapPuzzle PuzzleOf(StoredShow show) =>
        Assert.Single(RecapMaker.Of(show, [], Singles, cancel: TestContext.Current.CancellationToken).Puzzles);

    private static (string Cell, double From, double To, int Entries, bool WasTaken) Figures(Overlooked each) =>
        (each.Deduction.Places.First().Cell.ToString(), each.From.TotalSeconds, each.To.TotalSeconds, each.Entries, each.WasTaken);

    // Each cell gets its digit, in this order; corners with their proof.
    private static StoredShow Played(params string[] names)
    {
        ImmutableArray<Cell> cells = [.. names.Select(Cell.Parse)];
        var board = Board.Parse(string.Concat(CellSet.All.Select(cell => cells.Contains(cell) ? "." : $"{Full[cell].Value}")));
        var events = new List<Event> { new PuzzleLoaded(Noon, BoardText.Write(board), "Lanterns", "", "") };
        foreach (var (cell, index) in cells.Select((cell, index) => (cell, index)))
        {
            var at = Noon.AddSeconds(10 * (index + 1));
            events.Add(new DigitPlaced(at, cell, Full[cell]));
            var easiest = Singles.Scan(board, TestContext.Current.CancellationToken).First(open => open.Places.First().Cell == cell);
            if (easiest.Rule == new RuleId("hidden-single"))
                events.Add(new EntryAttributed(at.AddSeconds(1), index + 1, new Attribution.Proved([easiest], easiest.Rule, 4, null)));
            board = board.Place(new(cell, Full[cell]));
        }

        return StoredShow.Replay(events);
    }
}
