using System.Collections.Immutable;
using Companion.Engine.Rules;
using Companion.Session.Scanning;
using Companion.Session.Shows;

namespace Companion.Session.AfterShow.Recaps;

/// <summary>The scans of the moments of one puzzle; moments between which nothing changed that a scan looks at share one.</summary>
internal static class ScannedShow
{
    internal static ImmutableArray<(Moment Moment, ScanResult Scan)> Of(
        IReadOnlyList<Moment> moments, Ladder ladder, Action scanned, CancellationToken cancel)
    {
        var distinct = Distinct(moments);
        var scans = new (Moment, ScanResult)[distinct.Count];
        Parallel.For(0, distinct.Count, new ParallelOptions { CancellationToken = cancel }, index =>
        {
            scans[index] = (distinct[index], Scan.Of(distinct[index].State, ladder, null, cancel));
            scanned();
        });
        return [.. scans];
    }

    /// <summary>The moments that are scanned.</summary>
    internal static IReadOnlyList<Moment> Distinct(IReadOnlyList<Moment> moments)
    {
        var distinct = new List<Moment>();
        foreach (var moment in moments)
        {
            if (distinct.Count == 0 || !Scan.HoldsFor(distinct[^1].State, moment.State))
                distinct.Add(moment);
        }

        return distinct;
    }
}
