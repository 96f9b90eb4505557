using Companion.Session.Scanning;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Session.Watch;

/// <summary>Tells of an easier deduction that has been open for long while harder ones were worked.</summary>
internal static class EasierOpen
{
    /// <summary>How many entries a deduction must have been open for: less is a matter of taste in which order to go.</summary>
    public const int Patience = 5;

    /// <summary>How many of the last entries are looked at for a harder one.</summary>
    public const int Recent = 5;

    public static IEnumerable<WatchNote> Notes(SessionState state, ScanResult? scan, Voice voice)
    {
        var worked = scan?.Trail.Carried.Where(carried => carried.Entry > state.Entries - Recent).ToList() ?? [];

        // In ladder order, so that this is the easiest of them: one hint is enough.
        var passed = scan?.Open.FirstOrDefault(found => state.Entries - found.OpenSince >= Patience
            && worked.Exists(carried => carried.Rung > found.Rung && carried.Entry > found.OpenSince)
            && !Outdated.IsDone(state, found.Deduction));
        if (passed is null)
            yield break;
        var hints = voice.Wording.HintsFor(scan!.Known!, passed.Deduction);
        var entries = state.Entries - passed.OpenSince;
        yield return new(
            WatchKind.EasierOpen,
            $"An easier step has been open for {entries} entries while harder ones were made: {hints.What.Name}.",
            [.. hints.Where.Region.Cells],
            null,
            entries);
    }
}
