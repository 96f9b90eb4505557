using static Companion.Engine.Tests.Rules.Literal;

namespace Companion.Engine.Tests.Rules;

using Place = (int Row, int Column);

/// <summary>Simple colouring and remote pairs as their definitions say.</summary>
internal static class LiteralColours
{
    public static HashSet<string> SimpleColouring(LiteralGrid grid)
    {
        var found = new HashSet<string>();
        for (var digit = 1; digit <= 9; digit++)
        {
            var links = LiteralStrongLinks.StrongLinks(grid, digit);
            foreach (var (one, other) in Colourings([.. links.SelectMany(link => link.Ends).Distinct()], IsLinked))
            {
                foreach (var colour in new[] { one, other })
                {
                    var clash = Combinations(colour, 2).Any(pair => LiteralGrid.See(pair[0], pair[1])
                        && !one.Concat(other).Any(third => IsLinked(third, pair[0]) && IsLinked(third, pair[1])));
                    if (clash)
                        Add(WithoutLooseEnds([.. one, .. other], colour, IsLinked), colour);
                }

                var outside = LiteralGrid.AllCells.FindAll(cell =>
                    grid.Stands(cell, digit) && SeesBoth(cell, one, other, IsLinked));
                Add(WithoutLooseEnds([.. one, .. other], SeenBy(outside, [.. one, .. other]), IsLinked), outside);
            }

            bool IsLinked(Place cell, Place other) =>
                cell != other && links.Exists(link => link.Ends.Contains(cell) && link.Ends.Contains(other));

            void Add(List<Place> cells, List<Place> gone)
            {
                var houses = links.FindAll(link => link.Ends.TrueForAll(cells.Contains)).ConvertAll(link => link.House);
                Literal.Add(found, [], cells, [digit], houses, gone.ConvertAll(cell => (cell, digit)));
            }
        }

        return found;
    }

    public static HashSet<string> RemotePairs(LiteralGrid grid)
    {
        var found = new HashSet<string>();
        var pairs = LiteralGrid.AllCells.FindAll(cell => grid.Candidates(cell).Count == 2);
        foreach (var alike in pairs.GroupBy(cell => (grid.Candidates(cell)[0], grid.Candidates(cell)[1])))
        {
            foreach (var (one, other) in Colourings([.. alike], LiteralGrid.See))
            {
                var digits = grid.Candidates(one[0]);
                var gone = from cell in LiteralGrid.AllCells
                           from digit in digits
                           where grid.Stands(cell, digit) && SeesBoth(cell, one, other, LiteralGrid.See)
                           select (Cell: cell, Digit: digit);
                var needed = SeenBy([.. gone.Select(candidate => candidate.Cell)], [.. one, .. other]);
                Add(found, [], WithoutLooseEnds([.. one, .. other], needed, LiteralGrid.See), digits, [], [.. gone]);
            }
        }

        return found;
    }

    // Each set of cells that are joined, in its two colours. Cells that cannot be coloured so are left out.
    private static IEnumerable<(List<Place> One, List<Place> Other)> Colourings(
        List<Place> cells, Func<Place, Place, bool> joined)
    {
        while (cells.Count > 0)
        {
            var colours = new Dictionary<Place, bool> { [cells[0]] = true };
            for (var waiting = new Queue<Place>([cells[0]]); waiting.TryDequeue(out var cell);)
            {
                foreach (var next in cells.Where(next => joined(cell, next) && colours.TryAdd(next, !colours[cell])))
                    waiting.Enqueue(next);
            }

            var (one, other) = (cells.FindAll(cell => Is(cell, true)), cells.FindAll(cell => Is(cell, false)));
            if (!HasJoined(one) && !HasJoined(other))
                yield return (one, other);
            cells = cells.FindAll(cell => !colours.ContainsKey(cell));

            bool Is(Place cell, bool colour) => colours.TryGetValue(cell, out var its) && its == colour;
        }

        bool HasJoined(List<Place> colour) => Combinations(colour, 2).Any(pair => joined(pair[0], pair[1]));
    }

    private static bool SeesBoth(Place cell, List<Place> one, List<Place> other, Func<Place, Place, bool> joined)
    {
        var (seenOfOne, seenOfOther) = (SeenBy([cell], one), SeenBy([cell], other));
        return !one.Contains(cell) && !other.Contains(cell) && seenOfOne.Count > 0 && seenOfOther.Count > 0
            && !seenOfOne.Exists(first => seenOfOther.Exists(second => joined(first, second)));
    }

    private static List<Place> SeenBy(List<Place> seers, List<Place> cells) =>
        cells.FindAll(cell => seers.Exists(seer => LiteralGrid.See(seer, cell)));

    private static List<Place> WithoutLooseEnds(List<Place> cells, List<Place> needed, Func<Place, Place, bool> joined)
    {
        while (cells.FindIndex(IsLoose) is var loose && loose >= 0)
            cells = [.. cells.Where((_, index) => index != loose)];
        return cells;

        bool IsLoose(Place cell) => !needed.Contains(cell) && cells.Count(other => joined(cell, other)) < 2;
    }
}
