using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Boards;
using Companion.Session.Planning;
using Companion.Session.Scanning;
using Companion.Session.State;
using Companion.Session.Watch;

namespace Companion.Session.Views;

/// <summary>Makes the views of those who may see everything: the presenter and the co-hosts.</summary>
public static class PanelViews
{
    /// <summary>The view at once after an event.</summary>
    /// <param name="state">The state.</param>
    /// <param name="scan">The last finished scan, or null. It may be of an older state.</param>
    /// <param name="outlook">The last outlook on the featured rules, or null. It may be of an older state.</param>
    /// <param name="voice">The words.</param>
    public static DeskView Desk(SessionState state, ScanResult? scan, Outlook? outlook, Voice voice)
    {
        ArgumentNullException.ThrowIfNull(state);
        ArgumentNullException.ThrowIfNull(voice);
        var current = scan?.Loading == state.Grid.Loading ? scan : null;
        return new(
            state.Sequence,
            state.Grid.Credit,
            Cells(state),
            [.. state.Writing],
            state.History.Last?.Label,
            state.History.Next?.Label,
            Warnings.Of(state, current, outlook, voice),
            EntryProof.Of(state, voice),
            state.Standby is { } chosen ? Cue(state, current, chosen, Upcoming(state, chosen), voice) : null,
            state.OnAir is { } cue ? Cue(state, current, cue.Chosen, cue.Grade, voice) : null,
            state.CoHostMayAir,
            [.. state.Scenes.Select(scene => new SceneView(scene.Key, scene.Value))],
            state.ShownFrame,
            [.. state.Plan.Featured.Select(FeaturedRule.Of)])
        {
            CalledStandby = state.CalledStandby,
            CalledOnAir = state.CalledOnAir,
        };
    }

    /// <summary>Every open deduction that a scan has found so far.</summary>
    /// <param name="scan">The scan.</param>
    /// <param name="voice">The words.</param>
    public static NextView Next(ScanResult scan, Voice voice)
    {
        ArgumentNullException.ThrowIfNull(scan);
        ArgumentNullException.ThrowIfNull(voice);
        return new(scan.Sequence, scan.Blocked, scan.GoesOn, [.. scan.Open.Select(found => Listed(found, scan, voice))]);
    }

    private static ImmutableArray<DeskCell> Cells(SessionState state)
    {
        var known = KnownBoard.Of(state).Value;
        return [.. StageCells.Of(state.Grid).Select((cell, index) => new DeskCell(
            cell.Digit, cell.IsGiven, cell.CellMark, cell.BlockMarks, cell.Struck, known?[Cell.At(index)] ?? DigitSet.Empty))];
    }

    private static OpenDeduction Listed(Found found, ScanResult scan, Voice voice) => OpenDeduction.Of(
        found.Deduction,
        voice.Wording.HintsFor(scan.Known!, found.Deduction),
        found.Support,
        scan.Entries - found.OpenSince,
        voice);

    private static CueView Cue(SessionState state, ScanResult? scan, Chosen chosen, Grade grade, Voice voice)
    {
        var hints = voice.Wording.HintsFor(chosen.Board, chosen.Deduction);
        var seen = SeenBoard.Of(state.Grid, state.Writing).Value;
        var support = seen is null ? default : Support.On(state, seen)(chosen.Deduction);
        var found = scan?.Open.FirstOrDefault(found => found.Deduction.Equals(chosen.Deduction));
        var since = found is null ? 0 : state.Entries - found.OpenSince;
        return new(OpenDeduction.Of(chosen.Deduction, hints, support, since, voice), grade, HintTexts.Of(hints));
    }

    // The same rule as in AirRequests.Next: what stands by comes first, unless it is what is on air already.
    private static Grade Upcoming(SessionState state, Chosen chosen) =>
        state.OnAir is { } cue && cue.Deduction.Equals(chosen.Deduction) && cue.Grade < Grade.Why ? cue.Grade + 1 : Grade.Where;
}
