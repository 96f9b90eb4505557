using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Session.Commands;
using Companion.Session.Planning;

namespace Companion.Session.Tests.Planning;

public sealed class WayBehindTests
{
    private const string Pointing8 = "pointing 8 locked r7c8 r9c8 in b9 removes r1c8=8 r2c8=8";

    private readonly PlayedSession _session = PlayedSession.Of(Puzzles.Easy);

    [Fact]
    public void Entries_that_stand_are_done_the_oldest_first_with_their_times_and_proofs()
    {
        _session.Place("r2c2", 6).Strike("r1c8", 8).Block("r1c1 r1c2", 4).Place("r1c6", 1).Erase("r1c6").Attribute();

        var done = Behind().Done;

        Assert.Equal(["6 in r2c2", "strike 8 in r1c8", "block mark 4 in block 1"], done.Select(each => each.Entry!.Label));
        Assert.Equal(PlayedSession.Start.AddSeconds(1), done[0].Entry!.Entry.At);
        Assert.All(done, each => Assert.NotNull(each.Proof));
    }

    [Fact]
    public void A_digit_placed_twice_is_done_by_the_last_entry_and_a_wrong_one_or_one_taken_back_is_not()
    {
        _session.Place("r2c2", 6).Erase("r2c2").Place("r2c2", 6).Place("r5c5", 3).Place("r1c6", 1).Undo();

        Assert.Equal([3], Behind().Done.Select(each => each.Entry!.Number));
    }

    [Fact]
    public void What_was_said_and_no_entry_carries_out_is_done_too()
    {
        _session.Do(new MarkUsed(_session.Scan().Named(_session.State, Pointing8)!));
        Assert.Equal(Pointing8, Assert.Single(Behind().Done).Deduction!.ToString());

        _session.Strike("r1c8", 8).Attribute();
        Assert.Equal(["strike 8 in r1c8"], Behind().Done.Select(each => each.Entry?.Label));
    }

    // As the run sheet has it, so that its numbers and its clock go on where they were.
    [Fact]
    public void A_naked_single_is_one_step_though_easier_ones_prove_it()
    {
        _session.Place("r5c6", 4).Attribute();

        var done = Assert.Single(Behind().Done);
        Assert.Equal(3, Assert.IsType<Attribution.Proved>(done.Proof).Steps.Length);
        Assert.Equal("naked-single", Assert.Single(done.Deductions).Rule.Value);
    }

    [Fact]
    public void Another_puzzle_begins_with_nothing_done_and_an_undo_brings_all_of_it_back()
    {
        _session.Place("r2c2", 6).Do(new LoadPuzzle(Puzzles.Demo, "", "", ""));
        Assert.Empty(Behind().Done);

        Assert.Single(Behind(_session.Undo()).Done);
    }

    [Fact]
    public void A_note_goes_from_its_step_ahead_to_the_entry_that_does_it_or_that_it_led_to()
    {
        _session.Do(Note("r2c2=6", "", "First"), Note("", "r1c8=8 r2c8=8", "Slowly"));
        _session.Place("r2c2", 6).Strike("r1c8", 8).Attribute();

        var behind = Behind();
        Assert.Equal(["First", "Slowly"], behind.Done.Select(each => Assert.Single(each.Notes).Text));
        Assert.Empty(behind.Kept);
    }

    [Fact]
    public void A_note_whose_step_is_neither_ahead_nor_done_is_kept()
    {
        _session.Do(Note("r2c2=6", "", "First"), Note("", "r1c8=8 r2c8=8", "Slowly"));
        var ahead = RunPlan.From(
            _session.State.Grid.Puzzle!.Board, Engine.Rules.Ladder.Standard, [], cancel: TestContext.Current.CancellationToken).Steps;

        // The easy puzzle goes by singles, so that the pointing pair is not on its way.
        Assert.Equal(["Slowly"], WayBehind.Of(_session.State, ahead).Kept.Select(note => note.Text));
        Assert.Equal(["First", "Slowly"], Behind().Kept.Select(note => note.Text));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(4)]
    public void In_any_session_each_note_is_in_sight_just_once(int seed) => RandomSession.Of(seed, commands: 25, session =>
    {
        session.Try(Note("r1c1=4", "", "A"));
        session.Try(Note("", "r2c8=8 r1c8=8", "B"));
        var way = WayAhead.Of(session.State, Engine.Rules.Ladder.Standard, TestContext.Current.CancellationToken);
        var steps = way.Plan?.Steps ?? [];
        var behind = WayBehind.Of(session.State, steps);
        var ahead = session.State.Notes.Notes.Where(note => steps.Any(step => note.IsOf(step.Deduction.Places, step.Deduction.Removes))).ToList();
        var below = behind.Done.SelectMany(each => each.Notes).Concat(behind.Kept).ToList();

        Assert.Equal(session.State.Notes.Notes.ToHashSet(), ahead.Concat(below).ToHashSet());
        Assert.Equal(below.Count, below.Distinct().Count());
        Assert.Empty(below.Intersect(ahead));
    });

    private WayBehind Behind(PlayedSession? session = null) => WayBehind.Of((session ?? _session).State, []);

    private static NoteStep Note(string places, string removes, string text) =>
        new(CandidateSet.Parse(places), CandidateSet.Parse(removes), text);
}
