using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Session.Watch;

/// <summary>Warns that what is on air or stands by has been carried out, passed, or no longer holds.</summary>
internal static class AirOutdated
{
    public static IEnumerable<WatchNote> Notes(SessionState state)
    {
        if (state.OnAir is null && state.Standby is null)
            yield break;
        var why = Outdated.On(state);
        if (state.OnAir is { } cue && why(cue.Chosen) is { } reason)
            yield return Note($"What is on air {reason}: clear it.", cue.Chosen);
        if (state.Standby is { } standby && !standby.Deduction.Equals(state.OnAir?.Deduction) && why(standby) is { } other)
            yield return Note($"What stands by {other}: choose another.", standby);
    }

    private static WatchNote Note(string text, Chosen chosen) =>
        new(WatchKind.AirOutdated, text, [.. chosen.Deduction.PatternCells], null, 0);
}
