using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>The search that naked pairs, triples and quads share.</summary>
internal static class NakedSubsets
{
    /// <summary>
    /// Adds every naked subset of this size, by house (rows, columns, blocks), then by cells; each set of cells once.
    /// </summary>
    internal static void Find(RuleId rule, int size, Board board, Findings found)
    {
        Span<ushort> digitsAt = stackalloc ushort[9];
        Span<TightChoices.Choice> room = stackalloc TightChoices.Choice[TightChoices.Most];
        foreach (var house in HouseSet.All)
        {
            for (var place = 0; place < 9; place++)
                digitsAt[place] = (ushort)board[house.CellAt(place)].Bits;
            foreach (var (places, union) in TightChoices.Find(digitsAt, size, room))
            {
                var cells = house.CellsAt(places);
                var houses = cells.CommonHouses;
                if (houses.First != house) // Found in that one before.
                    continue;
                var digits = new DigitSet(union);
                var gone = board.Standing(cells.CommonPeers, digits);
                if (gone.IsEmpty)
                    continue;
                var more = found.Add(new Deduction
                {
                    Rule = rule,
                    Cells = PatternCell.Each(Role.Subset, cells),
                    Houses = houses,
                    Digits = digits,
                    RestsOn = CandidateSet.Of(cells, ~digits),
                    Removes = gone,
                });
                if (!more)
                    return;
            }
        }
    }
}
