namespace Companion.Engine.Proofs;

/// <summary>Picks the region of a grade 1 hint: as small as it can be without giving the cells of the pattern away.</summary>
internal static class WhereToLook
{
    internal static Region Find(Board board, Deduction deduction)
    {
        var pattern = deduction.PatternCells;
        var around = pattern.CommonHouses;
        var named = deduction.Houses;

        // Where the argument is about a house that the whole pattern lies in, that house; else any house around the pattern,
        // the one with the fewest open cells. A house in which nothing but the pattern is open would point at its cells.
        var houses = (named & around).IsEmpty ? around : named & around;
        var hiding = houses.Where(house => Hides(house.Cells)).OrderBy(house => (house.Cells & board.Open).Count).ToList();
        if (hiding.Count > 0)
            return Region.Of(hiding[0]);

        // The band of a row and the stack of a column, before a chute that merely holds the cells.
        var wanted = (named & around).IsEmpty ? pattern : (named & around).First.Cells;
        for (var index = 0; index < Chute.Count; index++)
        {
            var chute = Chute.At(index);
            if (chute.Cells.ContainsAll(wanted))
                return Region.Of(chute);
        }

        // A pattern that spreads over the grid: a house of it that hides it, and else the band through its first cell.
        var first = deduction.Cells[0].Cell;
        foreach (var house in named.Append(House.Block(first.Block)).Concat(first.Houses))
        {
            if (Hides(house.Cells))
                return Region.Of(house);
        }

        return Region.Of(Chute.At((first.Row - 1) / 3));

        bool Hides(CellSet cells) => (cells & board.Open).Count > (cells & pattern).Count;
    }
}
