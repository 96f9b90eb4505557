using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Session.Events;
using Companion.Session.State;

namespace Companion.Session.Planning;

/// <summary>What was done on the puzzle, and the notes that would be out of sight otherwise.</summary>
/// <param name="Done">The steps done: entries that stand, the oldest first, then what was said or used and no entry carries out or rests on.</param>
/// <param name="Kept">The notes whose step is neither ahead nor done.</param>
public sealed record WayBehind(ImmutableArray<DoneStep> Done, ImmutableArray<StepNote> Kept)
{
    /// <summary>What was done, and which notes are left over.</summary>
    /// <param name="state">The state.</param>
    /// <param name="ahead">The steps ahead, which keep their notes.</param>
    public static WayBehind Of(SessionState state, IEnumerable<PlannedStep> ahead)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(ahead);
        var left = state.Notes.Notes.ToList();
        foreach (var step in ahead)
        {
            var (places, removes) = (step.Deduction.Places, step.Deduction.Removes);
            if (left.Find(note => note.IsOf(places, removes)) is { } shown)
                left.Remove(shown);
        }

        var entries = Entries(state).Select(done => With(left, done)).ToList();
        var proved = entries.SelectMany(done => done.Deductions).ToHashSet();
        var written = entries.Aggregate(CandidateSet.Empty, (all, done) => all | Written(done).Places | Written(done).Removes);
        var said = state.Used.Select(used => (used.Loading, used.Deduction))
            .Where(used => used.Loading == state.Grid.Loading && !proved.Contains(used.Deduction)
                && ((used.Deduction.Places | used.Deduction.Removes) & written).IsEmpty)
            .Select(used => With(left, new(null, null, used.Deduction, default)));
        return new([.. entries, .. said], [.. left]);
    }

    // Right digits that stand, and what else was proved to follow; the rest says nothing, or Watch speaks of it.
    private static Stack<DoneStep> Entries(SessionState state)
    {
        var proofs = state.Attributions.ToDictionary(attributed => attributed.Entry, attributed => attributed.Attribution);
        var placed = CandidateSet.Empty;
        var done = new Stack<DoneStep>();
        foreach (var step in state.History.Made.TakeWhile(step => step.Grid.Loading == state.Grid.Loading))
        {
            // A digit that was placed again was not done by the entry before.
            if (step.Entry is DigitPlaced entry)
            {
                var candidate = new Candidate(entry.Cell, entry.Digit);
                if (placed.Contains(candidate) || !state.Grid.Placed.Contains(candidate) || !state.Grid.Puzzle!.Solution.Holds(candidate))
                    continue;
                placed = placed.With(candidate);
            }
            else if (!proofs.ContainsKey(step.Number))
            {
                continue;
            }

            done.Push(new(step, proofs.GetValueOrDefault(step.Number), null, default));
        }

        return done;
    }

    private static DoneStep With(List<StepNote> left, DoneStep done)
    {
        var notes = left.FindAll(note => Concluded(done).Any(each => note.IsOf(each.Places, each.Removes)));
        left.RemoveAll(notes.Contains);
        return done with { Notes = new([.. notes]) };
    }

    private static IEnumerable<(CandidateSet Places, CandidateSet Removes)> Concluded(DoneStep done)
    {
        foreach (var deduction in done.Deductions)
            yield return (deduction.Places, deduction.Removes);
        yield return Written(done);
    }

    // What can be read off the entry itself.
    private static (CandidateSet Places, CandidateSet Removes) Written(DoneStep done) => done.Entry?.Entry switch
    {
        DigitPlaced placed => (CandidateSet.Of(new Candidate(placed.Cell, placed.Digit)), CandidateSet.Empty),
        StrikeChanged { IsStruck: true } struck => (CandidateSet.Empty, CandidateSet.Of(struck.Cells, struck.Digit)),
        _ => default,
    };
}
