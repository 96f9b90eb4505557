using System.Collections.Immutable;
using Companion.Engine.Proofs;
using Companion.Server.Live.Loop;
using Companion.Server.Planning;
using Companion.Session.Planning;

namespace Companion.Server.Wire;

/// <summary>The way on as it is planned, and what was done, for the presenter and the co-hosts.</summary>
/// <param name="Sequence">Number of the state it is shown in.</param>
/// <param name="PlannedOf">Number of the state whose board it goes on from; older while another plan is on its way.</param>
/// <param name="Blocked">Why nothing can be planned, in one plain sentence, or null.</param>
/// <param name="Sheet">The way; null where there is none, or none of this puzzle yet.</param>
/// <param name="Notes">What is to be said at each step, in the order of the sheet; empty where nothing is.</param>
/// <param name="Done">The steps done on this puzzle, the oldest first.</param>
/// <param name="Kept">Notes whose step is neither on the sheet nor done; none until the way of this puzzle was looked for.</param>
public sealed record RunSheetWire(
    long Sequence,
    long PlannedOf,
    string? Blocked,
    RunSheet? Sheet,
    ImmutableArray<string> Notes,
    ImmutableArray<DoneLine> Done,
    ImmutableArray<StepNote> Kept)
{
    internal static RunSheetWire Of(Snapshot snapshot, Wording wording)
    {
        var state = snapshot.State;
        var ahead = snapshot.Ahead?.Way.Loading == state.Grid.Loading ? snapshot.Ahead : null;
        var behind = WayBehind.Of(state, ahead?.Way.Plan?.Steps ?? []);
        return new(
            state.Sequence,
            ahead?.Way.Sequence ?? 0,
            ahead?.Way.Blocked,
            ahead?.Sheet,
            [.. ahead?.Sheet?.Steps.Select(step => state.Plan.NoteOf(step.Places, step.Removes)) ?? []],
            [.. behind.Done.Select(done => DoneLine.Of(done, wording))],
            ahead is null ? [] : behind.Kept);
    }
}
