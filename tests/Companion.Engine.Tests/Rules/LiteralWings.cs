using static Companion.Engine.Tests.Rules.Literal;

namespace Companion.Engine.Tests.Rules;

using Place = (int Row, int Column);

/// <summary>XY-wing and XYZ-wing as their definitions say.</summary>
internal static class LiteralWings
{
    public static HashSet<string> XYWing(LiteralGrid grid)
    {
        var found = new HashSet<string>();
        foreach (var (pivot, pincers) in PivotsAndPincers(grid, 2))
        {
            var shared = grid.Candidates(pincers[0]).Intersect(grid.Candidates(pincers[1])).ToList();
            if (shared.Count != 1 || grid.Stands(pivot, shared[0]))
                continue;
            var z = shared[0];
            if (!Union(pincers, grid.Candidates).Where(digit => digit != z).Order().SequenceEqual(grid.Candidates(pivot)))
                continue;
            var gone = LiteralGrid.AllCells.FindAll(cell => grid.Stands(cell, z)
                && pincers.TrueForAll(pincer => LiteralGrid.See(cell, pincer)));
            Add(found, [pivot], pincers, [.. grid.Candidates(pivot), z], [], gone.ConvertAll(cell => (cell, z)));
        }

        return found;
    }

    public static HashSet<string> XYZWing(LiteralGrid grid)
    {
        var found = new HashSet<string>();
        foreach (var (pivot, pincers) in PivotsAndPincers(grid, 3))
        {
            var shared = grid.Candidates(pincers[0]).Intersect(grid.Candidates(pincers[1])).ToList();
            if (shared.Count != 1 || !Union(pincers, grid.Candidates).Order().SequenceEqual(grid.Candidates(pivot)))
                continue;
            var z = shared[0];
            var gone = LiteralGrid.AllCells.FindAll(cell => grid.Stands(cell, z)
                && LiteralGrid.See(cell, pivot) && pincers.TrueForAll(pincer => LiteralGrid.See(cell, pincer)));
            Add(found, [pivot], pincers, grid.Candidates(pivot), [], gone.ConvertAll(cell => (cell, z)));
        }

        return found;
    }

    private static IEnumerable<(Place Pivot, List<Place> Pincers)> PivotsAndPincers(LiteralGrid grid, int candidatesOfPivot)
    {
        var bivalue = LiteralGrid.AllCells.FindAll(cell => grid.Candidates(cell).Count == 2);
        foreach (var pivot in LiteralGrid.AllCells.FindAll(cell => grid.Candidates(cell).Count == candidatesOfPivot))
        {
            foreach (var pincers in Combinations(bivalue.FindAll(cell => LiteralGrid.See(cell, pivot)), 2))
            {
                if (!LiteralGrid.Houses.Exists(house => house.Has(pivot) && pincers.TrueForAll(house.Has)))
                    yield return (pivot, pincers);
            }
        }
    }
}
