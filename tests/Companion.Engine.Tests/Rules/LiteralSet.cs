using static Companion.Engine.Tests.Rules.Literal;

namespace Companion.Engine.Tests.Rules;

using Place = (int Row, int Column);

/// <summary>An almost locked set as the literal finders read it.</summary>
/// <param name="Cells">Its cells, in order.</param>
/// <param name="Digits">Their candidates, one more than there are cells.</param>
internal sealed record LiteralSet(List<Place> Cells, List<int> Digits)
{
    private const int MostCells = 5;

    /// <summary>Every set there is, single cells with two candidates too, each once.</summary>
    public static List<LiteralSet> All(LiteralGrid grid)
    {
        var sets = new Dictionary<string, LiteralSet>();
        foreach (var house in LiteralGrid.Houses)
        {
            for (var size = 1; size <= MostCells; size++)
            {
                foreach (var cells in Combinations(house.Cells.FindAll(grid.IsOpen), size))
                {
                    var digits = Union(cells, grid.Candidates);
                    if (digits.Count == size + 1 && !HasNakedSubset(cells, grid))
                        sets.TryAdd(string.Join(' ', cells.Order()), new([.. cells.Order()], digits));
                }
            }
        }

        return [.. sets.Values];
    }

    /// <summary>A digit of the set with all its places in it.</summary>
    public LiteralNode Node(int digit, LiteralGrid grid) => new(digit, Cells.FindAll(cell => grid.Stands(cell, digit)));

    /// <summary>Whether some cells of one house would have fewer digits than they are if the candidate were true.</summary>
    public static bool OverfillsHouse(LiteralNode single, LiteralGrid grid)
    {
        return LiteralGrid.Houses.Exists(house =>
        {
            var open = house.Cells.FindAll(cell => grid.IsOpen(cell) && cell != single.Cells[0]);
            return Enumerable.Range(1, open.Count).Any(size => Combinations(open, size).Any(cells => Union(cells, Left).Count < size));
        });

        List<int> Left(Place cell) =>
            LiteralGrid.See(cell, single.Cells[0]) ? [.. grid.Candidates(cell).Except([single.Digit])] : grid.Candidates(cell);
    }

    private static bool HasNakedSubset(List<Place> cells, LiteralGrid grid) => Enumerable.Range(1, cells.Count - 1)
        .Any(size => Combinations(cells, size).Any(part => Union(part, grid.Candidates).Count <= size));
}
