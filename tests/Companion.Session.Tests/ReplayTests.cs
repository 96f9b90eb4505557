using Companion.Session.Events;

namespace Companion.Session.Tests;

public sealed class ReplayTests
{
    public static TheoryData<int> Seeds { get; } = [.. Enumerable.Range(1, 30)];

    /// <summary>Fewer, for tests that scan after each command.</summary>
    public static TheoryData<int> FewSeeds { get; } = [.. Enumerable.Range(1, 8)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_replayed_log_gives_an_equal_state(int seed)
    {
        var session = RandomSession.Of(seed, commands: 150);

        Assert.Equal(session.State, PlayedSession.Replay(session.Log));
        Assert.Equal(session.Log.Count, session.State.Sequence);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Undoing_everything_leads_to_the_first_givens_and_redoing_everything_leads_back(int seed)
    {
        var session = RandomSession.Of(seed, commands: 150);
        var (grid, writing) = (session.State.Grid, session.State.Writing);
        var undone = 0;
        for (; session.State.History.Last is not null; undone++)
            session.Undo();

        // An undo does not reach over the beginning of a show.
        var began = session.Log.ToList().FindLastIndex(happened => happened is ShowBegun);
        var loaded = session.Log.Skip(began + 1).TakeWhile(happened => happened is not PuzzleLoaded).Count();
        Assert.Equal(PlayedSession.Replay(session.Log.Take(began + loaded + 2)).Grid, session.State.Grid);

        for (; undone > 0; undone--)
            session.Redo();

        // What was taken back before counts too, but comes after what stood.
        Assert.Equal(grid, session.State.Grid);
        Assert.Equal(writing, session.State.Writing);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_redo_after_an_undo_changes_nothing_but_the_counts(int seed)
    {
        RandomSession.Of(seed, commands: 100, afterEach: session =>
        {
            if (session.State.History.Last is null)
                return;
            var before = session.State;
            var undone = Evolver.Evolve(before, new EntryUndone(session.Now));
            var redone = Evolver.Evolve(undone, new EntryRedone(session.Now));

            Assert.Equal(
                before with { Sequence = before.Sequence + 2, Entries = before.Entries + 2 },
                redone with { Standby = before.Standby, OnAir = before.OnAir });
        });
    }

    [Fact]
    public void Two_states_of_different_logs_differ()
    {
        var session = PlayedSession.Of(Puzzles.Easy).Place("r1c1", 4);

        Assert.NotEqual(session.State, PlayedSession.Of(Puzzles.Easy).Place("r1c1", 5).State);
        Assert.NotEqual(session.State, PlayedSession.Of(Puzzles.Easy).Strike("r1c1", 5).State);
    }
}
