namespace Companion.Engine.Tests.Rules;

using Place = (int Row, int Column);

/// <summary>The hidden unique rectangle as its definition says: a digit is put into a corner and the others are forced.</summary>
internal static class LiteralHiddenRectangle
{
    public static HashSet<string> Find(LiteralGrid grid)
    {
        var ways = new List<Way>();
        foreach (var (corners, pair, floor) in LiteralRectangles.WithPair(grid))
        {
            foreach (var start in floor.Count is 1 or 2 ? corners : [])
            {
                foreach (var digit in pair)
                {
                    if (Force(grid, corners, pair, floor, start, digit) is { } way)
                        Gather(ways, way);
                }
            }
        }

        var found = new HashSet<string>();
        foreach (var way in ways)
        {
            var roof = way.Corners.Except(way.Floor).ToList();
            Literal.Add(found, roof, way.Floor, way.Pair, [.. way.Links.Select(link => link.House).Distinct()], way.Gone);
        }

        return found;
    }

    private static Way? Force(
        LiteralGrid grid, List<Place> corners, List<int> pair, List<Place> floor, Place start, int digit)
    {
        var other = pair.Find(its => its != digit);
        var beside = corners.FindAll(corner => corner != start && (corner.Row == start.Row || corner.Column == start.Column));
        var opposite = corners.Find(corner => corner != start && !beside.Contains(corner));
        var way = new Way(corners, pair, [.. floor.Where(corner => corner != start)], [], [(start, digit)]);
        var isForced = beside.TrueForAll(corner => IsForced(corner, other, [start])) && IsForced(opposite, digit, beside);
        return isForced && way.Floor.Count > 0 && way.Links.Count > 0 ? way : null;

        // By its own two candidates, or by a house in which a corner settled before has the only other place.
        bool IsForced(Place corner, int takes, List<Place> settled)
        {
            if (floor.Contains(corner))
                return true;
            var house = LiteralGrid.Houses.Find(house =>
                house.Has(corner) && settled.Exists(house.Has) && grid.Places(house, takes).Count == 2);
            if (house is not null)
                way.Links.Add((house, takes));
            return house is not null;
        }
    }

    private static void Gather(List<Way> ways, Way way)
    {
        if (ways.Find(other => IsSame(way, other)) is { } same)
            same.Gone.AddRange(way.Gone);
        else
            ways.Add(way);
    }

    private static bool IsSame(Way one, Way other) =>
        one.Corners.SequenceEqual(other.Corners)
        && one.Pair.SequenceEqual(other.Pair)
        && one.Floor.SequenceEqual(other.Floor)
        && one.Links.ToHashSet().SetEquals(other.Links);

    private sealed record Way(
        List<Place> Corners,
        List<int> Pair,
        List<Place> Floor,
        List<(LiteralHouse House, int Digit)> Links,
        List<(Place Cell, int Digit)> Gone);
}
