using static Companion.Engine.Tests.Rules.Literal;

namespace Companion.Engine.Tests.Rules;

/// <summary>Pointing, claiming and two-block claiming as their definitions say.</summary>
internal static class LiteralLocked
{
    // Every two blocks of a chute, the third block, and the lines that go through them.
    private static readonly List<(List<LiteralHouse> Pair, LiteralHouse Third, List<LiteralHouse> Through)> _pairs =
        [.. FindPairs()];

    public static HashSet<string> Locked(LiteralGrid grid, List<LiteralHouse> homes, List<LiteralHouse> others)
    {
        var found = new HashSet<string>();
        foreach (var home in homes)
        {
            for (var digit = 1; digit <= 9; digit++)
            {
                var places = grid.Places(home, digit);
                if (places.Count is not (2 or 3))
                    continue;
                foreach (var other in others.Where(other => places.TrueForAll(other.Has)))
                {
                    var gone = grid.Places(other, digit).Except(places);
                    Add(found, [], places, [digit], [home], [.. gone.Select(cell => (cell, digit))]);
                }
            }
        }

        return found;
    }

    public static HashSet<string> TwoBlockClaiming(LiteralGrid grid)
    {
        var found = new HashSet<string>();
        foreach (var (pair, third, through) in _pairs)
        {
            for (var digit = 1; digit <= 9; digit++)
            {
                var kept = pair.ConvertAll(block => grid.Places(block, digit));
                var used = kept.ConvertAll(places => through.FindAll(line => places.Exists(line.Has)));
                if (used[0].Count != 2 || !used[0].SequenceEqual(used[1]))
                    continue;
                var gone = grid.Places(third, digit).FindAll(cell => used[0].Exists(line => line.Has(cell)));
                Add(found, [], [.. kept[0], .. kept[1]], [digit], pair, gone.ConvertAll(cell => (cell, digit)));
            }
        }

        return found;
    }

    // Two blocks lie in a chute of rows if rows go through both, and likewise for columns.
    private static IEnumerable<(List<LiteralHouse> Pair, LiteralHouse Third, List<LiteralHouse> Through)> FindPairs()
    {
        foreach (var lines in new[] { LiteralGrid.Rows, LiteralGrid.Columns })
        {
            foreach (var pair in Combinations(LiteralGrid.Blocks, 2))
            {
                var through = lines.FindAll(line => pair.TrueForAll(block => block.Cells.Exists(line.Has)));
                if (through.Count == 0)
                    continue;
                var third = LiteralGrid.Blocks.Find(block => !pair.Contains(block) && block.Cells.Exists(through[0].Has))!;
                yield return (pair, third, through);
            }
        }
    }
}
