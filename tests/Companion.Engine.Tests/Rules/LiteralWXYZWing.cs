using static Companion.Engine.Tests.Rules.Literal;

namespace Companion.Engine.Tests.Rules;

using Place = (int Row, int Column);

/// <summary>WXYZ-wing as its definition says.</summary>
internal static class LiteralWXYZWing
{
    public static HashSet<string> Find(LiteralGrid grid)
    {
        var found = new HashSet<string>();
        var few = LiteralGrid.AllCells.FindAll(cell => grid.Candidates(cell).Count is >= 2 and <= 4);
        foreach (var pivot in few)
        {
            var seen = few.FindAll(cell => LiteralGrid.See(pivot, cell));
            foreach (var two in Combinations(seen, 2).Where(two => DigitsOf([pivot, .. two]).Count == 4))
            {
                foreach (var third in seen.Where(cell => cell.CompareTo(two[1]) > 0))
                {
                    if (DigitsOf([pivot, .. two, third]).Count == 4)
                        Judge([pivot, .. two, third]);
                }
            }
        }

        return found;

        void Judge(List<Place> cells)
        {
            if (Enumerable.Range(2, 2).Any(fewer => Combinations(cells, fewer).Any(some => DigitsOf(some).Count <= fewer)))
                return;
            var free = DigitsOf(cells).FindAll(digit =>
                Combinations(Holding(digit), 2).Any(pair => !LiteralGrid.See(pair[0], pair[1])));
            if (free.Count != 1)
                return;
            var pivots = cells.FindAll(cell => cells.TrueForAll(other => other == cell || LiteralGrid.See(cell, other)));
            var gone = LiteralGrid.AllCells.FindAll(cell => grid.Stands(cell, free[0])
                && Holding(free[0]).TrueForAll(holder => LiteralGrid.See(cell, holder)));
            Add(found, pivots, [.. cells.Except(pivots)], DigitsOf(cells), [], gone.ConvertAll(cell => (cell, free[0])));

            List<Place> Holding(int digit) => cells.FindAll(cell => grid.Stands(cell, digit));
        }

        List<int> DigitsOf(List<Place> cells) => Union(cells, grid.Candidates);
    }
}
