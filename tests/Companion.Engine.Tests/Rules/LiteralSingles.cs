using static Companion.Engine.Tests.Rules.Literal;

namespace Companion.Engine.Tests.Rules;

/// <summary>Full house, hidden single and naked single as their definitions say.</summary>
internal static class LiteralSingles
{
    public static HashSet<string> FullHouse(LiteralGrid grid)
    {
        var found = new HashSet<string>();
        foreach (var house in LiteralGrid.Houses)
        {
            var open = house.Cells.FindAll(grid.IsOpen);
            if (open.Count == 1)
            {
                var digits = grid.Candidates(open[0]);
                Add(found, [], open, digits, [house], digits.ConvertAll(digit => (open[0], digit)));
            }
        }

        return found;
    }

    public static HashSet<string> HiddenSingle(LiteralGrid grid)
    {
        var found = new HashSet<string>();
        foreach (var house in LiteralGrid.Houses.Where(house => house.Cells.Count(grid.IsOpen) > 1))
        {
            for (var digit = 1; digit <= 9; digit++)
            {
                var places = grid.Places(house, digit);
                if (places.Count == 1)
                    Add(found, [], places, [digit], [house], [(places[0], digit)]);
            }
        }

        return found;
    }

    public static HashSet<string> NakedSingle(LiteralGrid grid)
    {
        var found = new HashSet<string>();
        foreach (var cell in LiteralGrid.AllCells.Where(cell => grid.Candidates(cell).Count == 1))
            Add(found, [], [cell], grid.Candidates(cell), [], [(cell, grid.Candidates(cell)[0])]);
        return found;
    }
}
