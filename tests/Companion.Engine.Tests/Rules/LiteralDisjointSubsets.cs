using System.Numerics;
using static Companion.Engine.Tests.Rules.Literal;

namespace Companion.Engine.Tests.Rules;

using Place = (int Row, int Column);

/// <summary>Two-sector disjoint subsets as their definition says.</summary>
internal static class LiteralDisjointSubsets
{
    private const int MostCells = 6;

    public static HashSet<string> Find(LiteralGrid grid)
    {
        var found = new HashSet<string>();
        foreach (var line in LiteralGrid.Lines)
        {
            foreach (var block in LiteralGrid.Blocks.Where(block => block.Cells.Exists(line.Has)))
            {
                var inLine = Parts(line.Cells.FindAll(cell => !block.Has(cell)), grid);
                var inBlock = Parts(block.Cells.FindAll(cell => !line.Has(cell)), grid);
                foreach (var shared in Parts(line.Cells.FindAll(block.Has), grid))
                {
                    foreach (var ofLine in inLine)
                    {
                        foreach (var ofBlock in inBlock)
                        {
                            // Each digit is kept to the line or to the block, and there are as many digits as cells.
                            if ((ofLine.Digits & ofBlock.Digits) == 0
                                && BitOperations.PopCount(shared.Digits | ofLine.Digits | ofBlock.Digits)
                                    == shared.Cells.Count + ofLine.Cells.Count + ofBlock.Cells.Count)
                                Judge(shared.Cells, [.. ofLine.Cells, .. ofBlock.Cells], [line, block]);
                        }
                    }
                }
            }
        }

        return found;

        void Judge(List<Place> shared, List<Place> rests, List<LiteralHouse> houses)
        {
            List<Place> cells = [.. shared, .. rests];
            var digits = DigitsOf(cells);
            if (cells.Count > MostCells
                || Enumerable.Range(1, cells.Count - 1).Any(fewer => Combinations(cells, fewer).Any(some => DigitsOf(some).Count <= fewer)))
                return;
            var gone = from cell in LiteralGrid.AllCells
                       from digit in digits
                       where grid.Stands(cell, digit)
                           && cells.TrueForAll(other => !grid.Stands(other, digit) || LiteralGrid.See(cell, other))
                       select (cell, digit);
            Add(found, shared, rests, digits, houses, [.. gone]);
        }

        List<int> DigitsOf(List<Place> cells) => Union(cells, grid.Candidates);
    }

    // Every choice of some of the open cells, with a bit for each digit of theirs.
    private static List<(List<Place> Cells, uint Digits)> Parts(List<Place> cells, LiteralGrid grid)
    {
        var open = cells.FindAll(grid.IsOpen);
        return
        [
            .. from size in Enumerable.Range(1, open.Count)
               from some in Combinations(open, size)
               select (some, Union(some, grid.Candidates).Aggregate(0u, (bits, digit) => bits | 1u << digit)),
        ];
    }
}
