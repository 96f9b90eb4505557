using System.Collections.Immutable;
using Companion.Engine;
using Companion.Session.Shows;
using Companion.Session.State;

namespace Companion.Session.AfterShow.Recaps;

/// <summary>Finds the wrong entries of a puzzle and when they were mended.</summary>
internal static class Slips
{
    internal static ImmutableArray<Slip> Of(StoredShow show, IEnumerable<Moment> moments)
    {
        var (slips, standing) = (new List<Slip>(), new Dictionary<(Candidate, bool), int>());
        foreach (var moment in moments)
        {
            var (wrong, at) = (WrongOn(moment.State.Grid).ToHashSet(), VideoTime.Near(show, moment));
            foreach (var mended in standing.Keys.Where(slip => !wrong.Contains(slip)).ToList())
            {
                slips[standing[mended]] = slips[standing[mended]] with { MendedAt = at };
                standing.Remove(mended);
            }

            foreach (var (candidate, isStrike) in wrong.Where(slip => !standing.ContainsKey(slip)))
            {
                standing[(candidate, isStrike)] = slips.Count;
                slips.Add(new(at, candidate, isStrike, null));
            }
        }

        return [.. slips];
    }

    private static IEnumerable<(Candidate, bool)> WrongOn(Grid grid) => grid.Puzzle is { } puzzle
        ? grid.Placed.Where(placed => !puzzle.Solution.Holds(placed)).Select(placed => (placed, false))
            .Concat(grid.Struck.Where(puzzle.Solution.Holds).Select(struck => (struck, true)))
        : [];
}
