using static Companion.Engine.Tests.Rules.Literal;

namespace Companion.Engine.Tests.Rules;

using Place = (int Row, int Column);

/// <summary>Unique rectangles as their definitions say, but for the hidden one.</summary>
internal static class LiteralRectangles
{
    private static readonly List<List<Place>> _shapes = [.. Shapes()];

    /// <summary>
    /// The rectangles in two blocks of which all corners have the same two candidates, with these and with the corners that have
    /// no other.
    /// </summary>
    public static IEnumerable<(List<Place> Corners, List<int> Pair, List<Place> Floor)> WithPair(LiteralGrid grid)
    {
        foreach (var corners in _shapes)
        {
            var common = grid.Candidates(corners[0]).FindAll(digit => corners.TrueForAll(corner => grid.Stands(corner, digit)));
            foreach (var pair in Combinations(common, 2))
                yield return (corners, pair, corners.FindAll(corner => grid.Candidates(corner).Count == 2));
        }
    }

    public static HashSet<string> UniqueRectangle(LiteralGrid grid)
    {
        var found = new HashSet<string>();
        foreach (var (corners, pair, floor) in WithPair(grid).Where(rectangle => rectangle.Floor.Count == 3))
        {
            var roof = corners.Except(floor).Single();
            Add(found, [roof], floor, pair, [], pair.ConvertAll(digit => (roof, digit)));
        }

        return found;
    }

    public static HashSet<string> WithExtraDigit(LiteralGrid grid)
    {
        var found = new HashSet<string>();
        foreach (var (corners, pair, floor) in WithPair(grid).Where(rectangle => rectangle.Floor.Count is 1 or 2))
        {
            var roof = corners.Except(floor).ToList();
            var extras = Union(roof, grid.Candidates).Except(pair).ToList();
            if (extras.Count != 1)
                continue;
            var gone = LiteralGrid.AllCells.FindAll(cell => grid.Stands(cell, extras[0])
                && roof.TrueForAll(corner => LiteralGrid.See(cell, corner)));
            Add(found, roof, floor, [.. pair, .. extras], [], gone.ConvertAll(cell => (cell, extras[0])));
        }

        return found;
    }

    public static HashSet<string> WithSubset(LiteralGrid grid)
    {
        var found = new HashSet<string>();
        foreach (var (corners, pair, floor) in WithPair(grid).Where(rectangle => rectangle.Floor.Count == 2))
        {
            var roof = corners.Except(floor).ToList();
            var extras = Union(roof, grid.Candidates).Except(pair).ToList();
            foreach (var house in LiteralGrid.Houses.Where(house => roof.TrueForAll(house.Has)))
            {
                var others = house.Cells.FindAll(cell =>
                    grid.Candidates(cell).Count > 0 && !roof.Contains(cell) && !grid.Candidates(cell).Exists(pair.Contains));
                foreach (var cells in Enumerable.Range(1, 3).SelectMany(size => Combinations(others, size)))
                {
                    // The roof is one member beside the cells: it takes one of its extra digits.
                    List<List<int>> members = [extras, .. cells.Select(grid.Candidates)];
                    if (!IsTight(members) || HasTightPart(members))
                        continue;
                    List<Place> all = [.. roof, .. cells];
                    var common = LiteralGrid.Houses.FindAll(other => all.TrueForAll(other.Has));
                    var digits = Union(members, member => member);
                    var gone = from cell in LiteralGrid.AllCells
                               from digit in digits
                               where grid.Stands(cell, digit) && all.TrueForAll(other => LiteralGrid.See(cell, other))
                               select (cell, digit);
                    Add(found, roof, [.. floor, .. cells], [.. pair, .. digits], common, [.. gone]);
                }
            }
        }

        return found;
    }

    private static bool IsTight(List<List<int>> members) => Union(members, member => member).Count == members.Count;

    private static bool HasTightPart(List<List<int>> members) =>
        Enumerable.Range(1, members.Count - 1).Any(fewer => Combinations(members, fewer).Any(IsTight));

    private static IEnumerable<List<Place>> Shapes()
    {
        foreach (var rows in Combinations([.. Enumerable.Range(1, 9)], 2))
        {
            foreach (var columns in Combinations([.. Enumerable.Range(1, 9)], 2))
            {
                List<Place> corners = [.. from row in rows from column in columns select (row, column)];
                if (LiteralGrid.Blocks.Count(block => corners.Exists(block.Has)) == 2)
                    yield return corners;
            }
        }
    }
}
