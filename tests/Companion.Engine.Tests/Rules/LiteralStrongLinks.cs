using static Companion.Engine.Tests.Rules.Literal;

namespace Companion.Engine.Tests.Rules;

using Place = (int Row, int Column);

/// <summary>Two strong links, empty rectangle and W-wing as their definitions say.</summary>
internal static class LiteralStrongLinks
{
    /// <summary>The houses with two places for the digit; of two with the same places the first.</summary>
    public static List<(LiteralHouse House, List<Place> Ends)> StrongLinks(LiteralGrid grid, int digit)
    {
        var links = new List<(LiteralHouse House, List<Place> Ends)>();
        foreach (var house in LiteralGrid.Houses)
        {
            var places = grid.Places(house, digit);
            if (places.Count == 2 && !links.Exists(link => link.Ends.SequenceEqual(places)))
                links.Add((house, places));
        }

        return links;
    }

    public static HashSet<string> TwoStrongLinks(LiteralGrid grid)
    {
        var found = new HashSet<string>();
        for (var digit = 1; digit <= 9; digit++)
        {
            foreach (var pair in Combinations(StrongLinks(grid, digit), 2))
            {
                foreach (var near in pair[0].Ends)
                {
                    foreach (var nearOther in pair[1].Ends.Where(other => LiteralGrid.See(near, other)))
                    {
                        List<Place> ends = [pair[0].Ends.Find(end => end != near), pair[1].Ends.Find(end => end != nearOther)];
                        List<Place> all = [near, nearOther, .. ends];
                        if (all.Distinct().Count() < 4 || IsRectangle(all))
                            continue;
                        var gone = SeeingAll(grid, digit, ends).Except(all).Select(cell => (cell, digit));
                        Add(found, ends, [near, nearOther], [digit], [pair[0].House, pair[1].House], [.. gone]);
                    }
                }
            }
        }

        return found;
    }

    public static HashSet<string> EmptyRectangle(LiteralGrid grid)
    {
        var found = new HashSet<string>();
        for (var digit = 1; digit <= 9; digit++)
        {
            var links = LiteralGrid.Lines.FindAll(line => grid.Places(line, digit).Count == 2);
            foreach (var block in LiteralGrid.Blocks.Where(block => grid.Places(block, digit).Count > 2))
            {
                foreach (var (row, column) in Crosses(grid.Places(block, digit)))
                {
                    foreach (var link in links.Where(link => !grid.Places(link, digit).Exists(block.Has)))
                    {
                        Add(link, row, column);
                        Add(link, column, row);
                    }

                    void Add(LiteralHouse link, LiteralHouse nearLine, LiteralHouse farLine)
                    {
                        var places = grid.Places(link, digit);
                        foreach (var near in places.Where(nearLine.Has))
                        {
                            var far = places.Find(place => place != near);
                            var gone = grid.Places(farLine, digit)
                                .FindAll(cell => !block.Has(cell) && LiteralGrid.See(cell, far))
                                .ConvertAll(cell => (cell, digit));
                            Literal.Add(found, [far], [near, .. grid.Places(block, digit)], [digit], [block, link], gone);
                        }
                    }
                }
            }
        }

        return found;
    }

    public static HashSet<string> WWing(LiteralGrid grid)
    {
        var found = new HashSet<string>();
        var links = Enumerable.Range(0, 10).Select(digit => StrongLinks(grid, digit)).ToList();
        foreach (var pair in Combinations(LiteralGrid.AllCells.FindAll(cell => grid.Candidates(cell).Count == 2), 2))
        {
            if (LiteralGrid.See(pair[0], pair[1]) || !grid.Candidates(pair[0]).SequenceEqual(grid.Candidates(pair[1])))
                continue;
            foreach (var linked in grid.Candidates(pair[0]))
            {
                var other = grid.Candidates(pair[0]).Find(digit => digit != linked);
                foreach (var (house, ends) in links[linked])
                {
                    if (ends.Exists(pair.Contains) || !Joins(pair, ends))
                        continue;
                    var gone = SeeingAll(grid, other, pair).Except(ends).Select(cell => (cell, other));
                    Add(found, pair, ends, grid.Candidates(pair[0]), [house], [.. gone]);
                }
            }
        }

        return found;
    }

    private static bool Joins(List<Place> pair, List<Place> ends) =>
        (LiteralGrid.See(pair[0], ends[0]) && LiteralGrid.See(pair[1], ends[1]))
        || (LiteralGrid.See(pair[0], ends[1]) && LiteralGrid.See(pair[1], ends[0]));

    // The rows and columns that hold all places between them, where each is needed.
    private static IEnumerable<(LiteralHouse Row, LiteralHouse Column)> Crosses(List<Place> places) =>
        from row in LiteralGrid.Rows
        from column in LiteralGrid.Columns
        where places.TrueForAll(place => row.Has(place) || column.Has(place))
        where !places.TrueForAll(row.Has) && !places.TrueForAll(column.Has)
        select (row, column);

    private static List<Place> SeeingAll(LiteralGrid grid, int digit, List<Place> cells) => LiteralGrid.AllCells.FindAll(cell =>
        grid.Stands(cell, digit) && cells.TrueForAll(other => LiteralGrid.See(cell, other)));

    private static bool IsRectangle(List<Place> cells) =>
        cells.Select(cell => cell.Row).Distinct().Count() == 2 && cells.Select(cell => cell.Column).Distinct().Count() == 2;
}
