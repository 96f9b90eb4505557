using static Companion.Engine.Tests.Rules.Literal;

namespace Companion.Engine.Tests.Rules;

using Place = (int Row, int Column);

/// <summary>Finned fish as their definition says: all choices of base lines with as many cover lines.</summary>
internal static class LiteralFinnedFish
{
    public static HashSet<string> Find(LiteralGrid grid, int size)
    {
        var found = new HashSet<string>();
        foreach (var bases in new[] { LiteralGrid.Rows, LiteralGrid.Columns })
        {
            var covers = bases == LiteralGrid.Rows ? LiteralGrid.Columns : LiteralGrid.Rows;
            for (var digit = 1; digit <= 9; digit++)
            {
                var placesIn = bases.ToDictionary(line => line, line => grid.Places(line, digit));
                var fit = bases.FindAll(line => placesIn[line].Count >= 2);
                var meets = fit.ConvertAll(line =>
                    covers.FindAll(cover => placesIn[line].Exists(cover.Has)).ConvertAll(covers.IndexOf));
                foreach (var lines in BaseLines([], 0, 0))
                    Add(found, grid, digit, lines.ConvertAll(line => fit[line]), covers, placesIn);

                // Where the places lie in more than three lines too many, the fins fill two blocks or all lines of one, and
                // nothing goes. The lines met are bits of a number, because most choices of base lines end here.
                IEnumerable<List<int>> BaseLines(List<int> chosen, int met, int from)
                {
                    if (chosen.Count == size)
                        yield return chosen;
                    for (var next = from; chosen.Count < size && next < fit.Count; next++)
                    {
                        var wider = meets[next].Aggregate(met, (all, cover) => all | 1 << cover);
                        if (int.PopCount(wider) > size + 3)
                            continue;
                        foreach (var all in BaseLines([.. chosen, next], wider, next + 1))
                            yield return all;
                    }
                }
            }
        }

        return found;
    }

    private static void Add(
        HashSet<string> found,
        LiteralGrid grid,
        int digit,
        List<LiteralHouse> lines,
        List<LiteralHouse> covers,
        Dictionary<LiteralHouse, List<Place>> placesIn)
    {
        var places = lines.SelectMany(line => placesIn[line]).ToList();
        foreach (var cover in Combinations(covers.FindAll(cover => places.Exists(cover.Has)), lines.Count))
        {
            var fins = FinsOf(places, cover);
            if (fins.Count == 0)
                continue;
            var gone = GoneBy(grid, digit, lines, cover, fins);
            if (gone.Count > 0 && !PartsOf(lines, cover).Any(part => gone.TrueForAll(Removed(part.Lines, part.Cover).Contains)))
                Literal.Add(found, fins, [.. places.Except(fins)], [digit], lines, gone.ConvertAll(cell => (cell, digit)));
        }

        List<Place> Removed(List<LiteralHouse> lines, List<LiteralHouse> cover) =>
            GoneBy(grid, digit, lines, cover, FinsOf([.. lines.SelectMany(line => placesIn[line])], cover));
    }

    private static List<Place> FinsOf(List<Place> places, List<LiteralHouse> cover) =>
        places.FindAll(place => !cover.Exists(line => line.Has(place)));

    private static List<Place> GoneBy(
        LiteralGrid grid, int digit, List<LiteralHouse> lines, List<LiteralHouse> cover, List<Place> fins) =>
        [.. cover.SelectMany(line => grid.Places(line, digit))
            .Where(cell => !lines.Exists(line => line.Has(cell)) && fins.TrueForAll(fin => LiteralGrid.See(fin, cell)))];

    private static IEnumerable<(List<LiteralHouse> Lines, List<LiteralHouse> Cover)> PartsOf(
        List<LiteralHouse> lines, List<LiteralHouse> cover) =>
        from fewer in Enumerable.Range(1, lines.Count - 1)
        from someLines in Combinations(lines, fewer)
        from someCover in Combinations(cover, fewer)
        select (someLines, someCover);
}
