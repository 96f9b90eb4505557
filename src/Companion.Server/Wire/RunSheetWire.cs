using System.Collections.Immutable;
using Companion.Server.Live.Loop;
using Companion.Server.Planning;

namespace Companion.Server.Wire;

/// <summary>The way on as it is planned, for the presenter and the co-hosts.</summary>
/// <param name="Sequence">Number of the state it is shown in.</param>
/// <param name="PlannedOf">Number of the state whose board it goes on from; older while another plan is on its way.</param>
/// <param name="Blocked">Why nothing can be planned, in one plain sentence, or null.</param>
/// <param name="Sheet">The way; null where there is none, or none of this puzzle yet.</param>
/// <param name="Notes">What is to be said at each step, in the order of the sheet; empty where nothing is.</param>
public sealed record RunSheetWire(long Sequence, long PlannedOf, string? Blocked, RunSheet? Sheet, ImmutableArray<string> Notes)
{
    internal static RunSheetWire Of(Snapshot snapshot)
    {
        var state = snapshot.State;
        if (snapshot.Ahead is not { Way: var way, Sheet: var sheet } || way.Loading != state.Grid.Loading)
            return new(state.Sequence, 0, null, null, []);
        return new(
            state.Sequence,
            way.Sequence,
            way.Blocked,
            sheet,
            [.. sheet?.Steps.Select(step => state.Plan.NoteOf(step.Places, step.Removes)) ?? []]);
    }
}
