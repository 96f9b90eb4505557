using System.Collections.Immutable;
using Companion.Server.Log;
using Companion.Session;
using Companion.Session.Commands;
using Companion.Session.Events;
using Companion.Session.Planning;
using Companion.Session.State;

namespace Companion.Server.Live.Loop;

/// <summary>
/// What a decision comes to with the notes that are kept with puzzles: a puzzle that comes to the board brings its notes along, and
/// those that were written are to be kept.
/// </summary>
/// <param name="Events">The events, with the notes that came along.</param>
/// <param name="Next">The state after them.</param>
/// <param name="Keep">The notes to be kept with their puzzle, or null.</param>
internal sealed record KeptNotes(ImmutableArray<Event> Events, SessionState Next, PuzzleNotes? Keep)
{
    /// <summary>Looks up what is kept.</summary>
    /// <param name="before">The state before the decision.</param>
    /// <param name="decided">Its events.</param>
    /// <param name="log">Where notes are kept.</param>
    /// <param name="now">When.</param>
    /// <exception cref="IOException">What is kept could not be read.</exception>
    public static KeptNotes With(SessionState before, ImmutableArray<Event> decided, IEventLog log, DateTimeOffset now)
    {
        var next = decided.Aggregate(before, Evolver.Evolve);
        var had = before.Grid.Loading == next.Grid.Loading ? before.Notes.Notes : log.NotesOf(next.Notes.Givens);
        if (before.Grid.Loading == next.Grid.Loading || had is null)
            return new(decided, next, next.Notes.Notes == (had ?? default) ? null : next.Notes);

        // A show that was reopened has older notes than those that are kept.
        var recalled = Decider.Decide(next, new RecallNotes(had.Value), now).Events;
        return new([.. decided, .. recalled], recalled.Aggregate(next, Evolver.Evolve), null);
    }
}
