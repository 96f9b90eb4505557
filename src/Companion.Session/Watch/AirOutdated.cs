using Companion.Engine.Proofs;
using Companion.Session.Boards;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Session.Watch;

/// <summary>Warns that what is on air or stands by has been carried out, passed, or no longer holds.</summary>
internal static class AirOutdated
{
    public static IEnumerable<WatchNote> Notes(SessionState state)
    {
        if (state.OnAir is { } cue && WhyOutdated(state, cue.Chosen) is { } reason)
            yield return Note($"What is on air {reason}: clear it.", cue.Chosen);
        if (state.Standby is { } standby && !standby.Deduction.Equals(state.OnAir?.Deduction)
            && WhyOutdated(state, standby) is { } why)
            yield return Note($"What stands by {why}: choose another.", standby);
    }

    /// <summary>Whether viewers can see all that a deduction concludes.</summary>
    public static bool IsDone(SessionState state, Deduction deduction) =>
        SeenBoard.Of(state.Grid, state.Writing).Value is { } seen
        && state.Grid.Placed.ContainsAll(deduction.Places) && (seen.Candidates & deduction.Removes).IsEmpty;

    private static WatchNote Note(string text, Chosen chosen) =>
        new(WatchKind.AirOutdated, text, [.. chosen.Deduction.PatternCells], null, 0);

    private static string? WhyOutdated(SessionState state, Chosen chosen)
    {
        var deduction = chosen.Deduction;
        if (IsDone(state, deduction))
            return "has been carried out";
        if ((chosen.Board.Open & deduction.PatternCells & state.Grid.Filled) is { IsEmpty: false })
            return "has been passed";
        return Holds(state, chosen) ? null : "no longer holds on this board";
    }

    // On a broken board nothing can be said; other warnings are about that.
    private static bool Holds(SessionState state, Chosen chosen) =>
        KnownBoard.Of(state).Value is not { } known
        || chosen.Grounded.HoldsOn(state.Grid, known.Candidates);
}
