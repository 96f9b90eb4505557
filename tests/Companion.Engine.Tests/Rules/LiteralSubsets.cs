using static Companion.Engine.Tests.Rules.Literal;

namespace Companion.Engine.Tests.Rules;

/// <summary>Naked and hidden subsets and fish as their definitions say.</summary>
internal static class LiteralSubsets
{
    public static HashSet<string> Naked(LiteralGrid grid, int size)
    {
        var found = new HashSet<string>();
        foreach (var house in LiteralGrid.Houses)
        {
            // A cell with more candidates than that cannot be one of them.
            var cells = house.Cells.FindAll(cell => grid.Candidates(cell).Count >= 2 && grid.Candidates(cell).Count <= size);
            foreach (var subset in Combinations(cells, size))
            {
                if (!IsSubset(subset, grid.Candidates))
                    continue;
                var digits = Union(subset, grid.Candidates);
                var common = LiteralGrid.Houses.FindAll(other => subset.TrueForAll(other.Has));
                var seeing = common.SelectMany(other => other.Cells).Except(subset);
                var gone = from cell in seeing from digit in digits where grid.Stands(cell, digit) select (cell, digit);
                Add(found, [], subset, digits, common, [.. gone]);
            }
        }

        return found;
    }

    public static HashSet<string> Hidden(LiteralGrid grid, int size)
    {
        var found = new HashSet<string>();
        foreach (var house in LiteralGrid.Houses)
        {
            var placesOf = Enumerable.Range(0, 10).Select(digit => grid.Places(house, digit)).ToList();
            var digits = Enumerable.Range(1, 9).Where(digit => placesOf[digit].Count >= 2 && placesOf[digit].Count <= size);
            foreach (var subset in Combinations(digits.ToList(), size))
            {
                if (!IsSubset(subset, digit => placesOf[digit]))
                    continue;
                var cells = Union(subset, digit => placesOf[digit]);
                var gone = from cell in cells from digit in grid.Candidates(cell).Except(subset) select (cell, digit);
                Add(found, [], cells, subset, [house], [.. gone]);
            }
        }

        return found;
    }

    public static HashSet<string> Fish(LiteralGrid grid, int size)
    {
        var found = new HashSet<string>();
        foreach (var bases in new[] { LiteralGrid.Rows, LiteralGrid.Columns })
        {
            var covers = bases == LiteralGrid.Rows ? LiteralGrid.Columns : LiteralGrid.Rows;
            for (var digit = 1; digit <= 9; digit++)
            {
                var placesIn = bases.ToDictionary(line => line, line => grid.Places(line, digit));
                var lines = bases.FindAll(line => placesIn[line].Count >= 2 && placesIn[line].Count <= size);
                var coversOf = lines.ToDictionary(
                    line => line,
                    line => covers.FindAll(cover => placesIn[line].Exists(cover.Has)));
                foreach (var fish in Combinations(lines, size))
                {
                    if (!IsSubset(fish, line => coversOf[line]))
                        continue;
                    var places = fish.SelectMany(line => placesIn[line]).ToList();
                    var gone = Union(fish, line => coversOf[line]).SelectMany(cover => grid.Places(cover, digit)).Except(places);
                    Add(found, [], places, [digit], fish, [.. gone.Select(cell => (cell, digit))]);
                }
            }
        }

        return found;
    }

    // As many members between them as there are parts, and no fewer of the parts for which the same is true.
    private static bool IsSubset<TPart, TMember>(List<TPart> parts, Func<TPart, List<TMember>> members) =>
        Union(parts, members).Count == parts.Count
        && !Enumerable.Range(2, parts.Count - 2).Any(fewer =>
            Combinations(parts, fewer).Any(some => Union(some, members).Count == fewer));
}
