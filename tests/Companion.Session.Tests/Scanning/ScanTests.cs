using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Session.Commands;
using Companion.Session.Scanning;

namespace Companion.Session.Tests.Scanning;

public sealed class ScanTests
{
    private const string Pointing8 = "pointing 8 locked r7c8 r9c8 in b9 removes r1c8=8 r2c8=8";
    private const string HiddenSingle8 = "hidden-single 8 single r2c7 in r2 places r2c7=8";

    private const string HiddenSingle6 = "hidden-single 6 single r2c2 in b1 places r2c2=6";

    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Easy);

    [Fact]
    public void It_finds_what_is_open_on_the_known_board_easiest_first()
    {
        var scan = _session.Scan();

        Assert.Null(scan.Blocked);
        Assert.Equal(
            Ladder.Standard.Scan(Puzzle.Parse(Puzzles.Easy).Board, TestContext.Current.CancellationToken),
            scan.Open.Select(found => found.Deduction));
        Assert.Equal(scan.Open.OrderBy(found => found.Rung), scan.Open);
        Assert.All(scan.Open, found => Assert.Empty(found.Support.Unseen));
    }

    [Fact]
    public void What_rests_on_candidates_that_viewers_cannot_see_to_be_gone_names_the_missing_step()
    {
        var pointing = Find(Pointing8)!.Deduction;

        // On the seen board 8 can still go in r2c2 too; with a strike there the one thing unseen is r2c8.
        _session.Strike("r2c2", 8);
        Assert.Null(Find(HiddenSingle8));

        _session.Do(new MarkUsed(pointing));
        var support = Find(HiddenSingle8)!.Support;
        Assert.Equal(CandidateSet.Parse("r2c8=8"), support.Unseen);
        Assert.Equal(pointing, support.First);

        _session.Strike("r2c8", 8);
        Assert.Equal(default, Find(HiddenSingle8)!.Support);
    }

    [Fact]
    public void A_deduction_that_was_used_is_open_no_more_but_can_be_named_again()
    {
        _session.Do(new MarkUsed(Find(Pointing8)!.Deduction));

        Assert.Null(Find(Pointing8));
        Assert.Equal(Pointing8, _session.Scan().Named(_session.State, Pointing8)?.ToString());
        Assert.Equal(HiddenSingle6, _session.Scan().Named(_session.State, HiddenSingle6)?.ToString());
        Assert.Null(_session.Scan().Named(_session.State, "no such deduction"));
    }

    [Fact]
    public void What_goes_on_air_below_grade_4_needs_no_new_scan_and_what_changes_a_board_does()
    {
        var before = _session.State;
        _session.Do(new StandBy(Find(Pointing8)!.Deduction), new NextGrade(), new NextGrade(), new NextGrade());
        Assert.True(Scan.HoldsFor(before, _session.State));

        _session.Do(new NextGrade());
        Assert.False(Scan.HoldsFor(before, _session.State));

        before = _session.State;
        _session.Strike("r2c2", 8);
        Assert.False(Scan.HoldsFor(before, _session.State));

        before = _session.State;
        _session.Do(new Undo());
        Assert.False(Scan.HoldsFor(before, _session.State));
    }

    [Fact]
    public void Entries_made_since_a_deduction_came_open_are_counted_from_scan_to_scan()
    {
        Assert.Equal(0, Since(HiddenSingle6));
        _session.Place("r1c1", 4);
        Assert.Equal(1, Since(HiddenSingle6));
        _session.Strike("r1c2", 5).Undo();
        Assert.Equal(3, Since(HiddenSingle6));
    }

    [Fact]
    public void A_slip_that_breaks_the_grid_does_not_begin_the_counts_anew()
    {
        _session.Scan();
        _session.Place("r1c1", 4).Scan();
        _session.Place("r1c2", 3);
        Assert.NotNull(_session.Scan().Blocked);

        _session.Undo();
        Assert.Equal(3, Since(HiddenSingle6));
    }

    [Fact]
    public void A_new_puzzle_begins_the_counts_anew()
    {
        _session.Place("r1c1", 4).Scan();
        _session.Do(new LoadPuzzle(Puzzles.Easy, "", "", ""));

        Assert.Equal(0, Since(HiddenSingle6));
    }

    [Fact]
    public void A_name_from_before_a_new_puzzle_is_out_of_date()
    {
        var scan = _session.Scan();
        _session.Do(new LoadPuzzle(Puzzles.Easy, "", "", ""));

        Assert.Null(scan.Named(_session.State, HiddenSingle6));
    }

    [Fact]
    public void A_broken_grid_blocks_the_scan_with_the_reason()
    {
        _session.Place("r1c1", 3);

        var scan = _session.Scan();

        Assert.Equal("3 stands twice in row 1, in r1c1 and r1c3: change one of them.", scan.Blocked);
        Assert.Empty(scan.Open);
    }

    [Fact]
    public void A_board_on_which_a_digit_has_no_place_left_blocks_the_scan_too()
    {
        _session.Strike("r2c2", 6);

        Assert.Equal(
            "6 has no place left in row 2: a digit, a mark or a strike that rules it out there is wrong.",
            _session.Scan().Blocked);
        Assert.Null(_session.Scan().Known);
    }

    [Fact]
    public void A_cancelled_scan_stops() => Assert.Throws<OperationCanceledException>(
        () => Scan.Of(_session.State, Ladder.Standard, null, new CancellationToken(canceled: true)));

    [Fact]
    public void What_quick_rules_find_comes_first_and_the_rest_is_put_in_the_order_of_the_ladder()
    {
        var session = PlayedSession.Of(Puzzles.Demo);
        while (session.Scan().Open is var open && !open.Any(IsSearched))
            session.Do(CarryOut(open[0].Deduction));

        var parts = Scan.InParts(session.State, Ladder.Standard, null, TestContext.Current.CancellationToken).ToArray();

        Assert.Equal([(Effort.Pattern, true), (Effort.Search, false)], parts.Select(part => (part.Reached, part.GoesOn)));
        Assert.DoesNotContain(parts[0].Open, IsSearched);
        Assert.Equal(parts[0].Open, parts[1].Open.Where(found => !IsSearched(found)));
        Assert.Contains(parts[1].Open, IsSearched);
        Assert.Equal(parts[1].Open.OrderBy(found => found.Rung), parts[1].Open);

        static Command CarryOut(Deduction deduction) => deduction.Places.IsEmpty
            ? new MarkUsed(deduction)
            : new PlaceDigit(deduction.Places.First().Cell, deduction.Places.First().Digit);
        static bool IsSearched(Found found) => Ladder.Standard[found.Deduction.Rule].Rule.Effort == Effort.Search;
    }

    [Fact]
    public void A_scan_that_is_stopped_after_a_part_has_told_it()
    {
        using var cancel = new CancellationTokenSource();
        using var parts = Scan.InParts(_session.State, Ladder.Standard, null, cancel.Token).GetEnumerator();

        Assert.True(parts.MoveNext());
        Assert.NotEmpty(parts.Current.Open);
        cancel.Cancel();
        Assert.Throws<OperationCanceledException>(() => parts.MoveNext());
    }

    [Theory]
    [MemberData(nameof(ReplayTests.FewSeeds), MemberType = typeof(ReplayTests))]
    public void On_any_session_scans_are_right_about_what_is_unseen_and_can_always_be_made(int seed) =>
        RandomSession.Of(seed, commands: 60, afterEach: session =>
        {
            var scan = session.Scan();
            Assert.True(scan.Blocked is null || scan.Open.IsEmpty);
            foreach (var found in scan.Open)
            {
                Assert.Empty(found.Deduction.RestsOn & scan.Known!.Candidates);
                Assert.Equal(found.Support.Unseen.IsEmpty, found.Support.First is null);
                Assert.InRange(session.State.Entries - found.OpenSince, 0, session.State.Entries);
            }
        });

    private Found? Find(string id) => _session.Scan().Open.FirstOrDefault(found => found.Deduction.ToString() == id);

    private int Since(string id) => _session.State.Entries - Find(id)!.OpenSince;
}
