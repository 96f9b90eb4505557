using System.Collections.Immutable;
using Companion.Server.Live.Loop;
using Companion.Server.Planning;
using Companion.Session.Planning;
using Companion.Session.Views;

namespace Companion.Server.Wire;

/// <summary>The way on as it is planned, and what was done, for the presenter and the co-hosts.</summary>
/// <param name="Sequence">Number of the state it is shown in.</param>
/// <param name="PlannedOf">Number of the state whose board it goes on from; older while another plan is on its way.</param>
/// <param name="Blocked">Why nothing can be planned, in one plain sentence, or null.</param>
/// <param name="Sheet">The way, whose numbers and clock go on from what was done before it; null where there is none, or none of this puzzle yet.</param>
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
    internal static RunSheetWire Of(Snapshot snapshot, Voice voice)
    {
        var state = snapshot.State;
        var ahead = snapshot.Ahead?.Way.Loading == state.Grid.Loading ? snapshot.Ahead : null;
        var behind = WayBehind.Of(state, ahead?.Way.Plan?.Steps ?? []);
        var done = DoneLine.Of(behind.Done, voice);
        // What was entered since the way was planned is on both: it is counted when the next plan comes.
        var before = done.Where((_, place) => !(behind.Done[place].Entry?.Number > ahead?.Entries)).ToList();
        return new(
            state.Sequence,
            ahead?.Way.Sequence ?? 0,
            ahead?.Way.Blocked,
            ahead?.Sheet?.After(before.Count > 0 ? before[^1].Last : 0, before.Sum(line => line.Seconds)),
            [.. ahead?.Sheet?.Steps.Select(step => state.Notes.At(step.Places, step.Removes)) ?? []],
            done,
            ahead is null ? [] : behind.Kept);
    }
}
