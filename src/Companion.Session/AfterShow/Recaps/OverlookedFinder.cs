using System.Collections.Immutable;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Session.Events;
using Companion.Session.Scanning;
using Companion.Session.Shows;
using Companion.Session.Watch;

namespace Companion.Session.AfterShow.Recaps;

/// <summary>
/// Finds what was overlooked by the measure of the live warning: a deduction that was open without a break for at least
/// <see cref="EasierOpen.Patience"/> entries, while a step of a harder rule was made.
/// </summary>
internal static class OverlookedFinder
{
    // More are no help to look back on.
    private const int Most = 5;

    internal static ImmutableArray<Overlooked> Of(
        StoredShow show, IReadOnlyList<Moment> moments, ImmutableArray<(Moment Moment, ScanResult Scan)> scans, Ladder ladder)
    {
        var worked = WorkedIn(moments);
        var (open, closed) = (new Dictionary<Deduction, int>(), new List<Overlooked>());
        for (var index = 0; index < scans.Length; index++)
        {
            // A broken grid is not scanned: what was open is taken to be open still.
            if (scans[index].Scan.Known is null)
                continue;
            var now = scans[index].Scan.Open.Select(found => found.Deduction).ToHashSet();
            foreach (var gone in open.Keys.Where(deduction => !now.Contains(deduction)).ToList())
            {
                Close(gone, scans[index].Moment);
                open.Remove(gone);
            }

            foreach (var deduction in now)
                open.TryAdd(deduction, index);
        }

        if (moments.Count > 0)
        {
            foreach (var left in open.Keys)
                Close(left, moments[^1]);
        }

        // Several readings of one and the same step count once, by the easiest, and of equal ones by that which was open first; so does a pattern of which less was left.
        return
        [
            .. closed.GroupBy(each => (each.Deduction.Places, each.Deduction.Removes))
                .Select(same => same.OrderBy(each => ladder.RungOf(each.Deduction.Rule)).ThenBy(each => each.From).First())
                .OrderByDescending(each => each.To - each.From).ThenBy(each => each.From)
                .DistinctBy(each => each.Deduction.PatternKey).Take(Most),
        ];

        void Close(Deduction deduction, Moment end)
        {
            var (first, scan) = scans[open[deduction]];
            var entries = end.State.Entries - first.State.Entries;
            var harder = worked.Where(step => step.Entry > first.State.Entries && step.Entry <= end.State.Entries && ladder.Has(step.Rule))
                .OrderByDescending(step => ladder.RungOf(step.Rule)).FirstOrDefault();
            if (entries >= EasierOpen.Patience && harder.Entry > 0 && ladder.RungOf(harder.Rule) > ladder.RungOf(deduction.Rule))
            {
                closed.Add(new(
                    deduction, scan.Known!, VideoTime.Near(show, first), VideoTime.Near(show, end), entries, harder.Rule, IsThere(deduction, end)));
            }
        }
    }

    private static bool IsThere(Deduction deduction, Moment end)
    {
        var grid = end.State.Grid;
        return deduction.Places.IsEmpty
            ? deduction.Removes.All(gone => grid.Struck.Contains(gone) || grid.Filled.Contains(gone.Cell))
                || end.State.Used.Any(used => used.Deduction.Equals(deduction))
            : deduction.Places.All(grid.Placed.Contains);
    }

    // What each entry was, by its proof, and what was shown or used between entries.
    private static List<(int Entry, RuleId Rule)> WorkedIn(IEnumerable<Moment> moments) =>
    [
        .. moments.SelectMany<Moment, (int, RuleId)>(moment => moment.Happened switch
        {
            EntryAttributed { Attribution: Attribution.Proved { Steps.IsEmpty: false } proved } found => [(found.Entry, proved.Hardest)],
            DeductionUsed used => [(moment.State.Entries, used.Deduction.Rule)],
            _ => [],
        }),
    ];
}
