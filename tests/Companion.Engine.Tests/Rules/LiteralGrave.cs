using static Companion.Engine.Tests.Rules.Literal;

namespace Companion.Engine.Tests.Rules;

/// <summary>The bivalue universal grave plus one as its definition says.</summary>
internal static class LiteralGrave
{
    public static HashSet<string> Find(LiteralGrid grid)
    {
        var found = new HashSet<string>();
        var open = LiteralGrid.AllCells.FindAll(grid.IsOpen);
        var three = open.FindAll(cell => grid.Candidates(cell).Count == 3);
        if (three.Count != 1 || open.Exists(cell => grid.Candidates(cell).Count is not (2 or 3)))
            return found;
        foreach (var extra in grid.Candidates(three[0]))
        {
            var isGrave = LiteralGrid.Houses.TrueForAll(house => Enumerable.Range(1, 9).All(digit =>
                grid.Places(house, digit).Count(cell => digit != extra || cell != three[0]) is 0 or 2));
            if (isGrave)
                Add(found, three, [.. open.Except(three)], Union(open, grid.Candidates), [], [(three[0], extra)]);
        }

        return found;
    }
}
