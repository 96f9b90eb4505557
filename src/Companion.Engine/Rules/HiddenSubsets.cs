using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>The search that hidden pairs, triples and quads share.</summary>
internal static class HiddenSubsets
{
    /// <summary>Adds every hidden subset of this size, by house (rows, columns, blocks), then by digits.</summary>
    internal static void Find(RuleId rule, int size, Board board, Findings found)
    {
        Span<ushort> placesOf = stackalloc ushort[Digit.Count];
        Span<TightChoices.Choice> room = stackalloc TightChoices.Choice[TightChoices.Most];
        foreach (var house in HouseSet.All)
        {
            foreach (var digit in Digit.All)
                placesOf[digit.Index] = (ushort)board[digit].PlacesIn(house);
            foreach (var (chosen, places) in TightChoices.Find(placesOf, size, room))
            {
                var digits = new DigitSet(chosen);
                var cells = house.CellsAt(places);
                var gone = board.Standing(cells, ~digits);
                if (gone.IsEmpty)
                    continue;
                var more = found.Add(new Deduction
                {
                    Rule = rule,
                    Cells = PatternCell.Each(Role.Subset, cells),
                    Houses = HouseSet.Of(house),
                    Digits = digits,
                    RestsOn = CandidateSet.Of((house.Cells & board.Open) - cells, digits),
                    Removes = gone,
                });
                if (!more)
                    return;
            }
        }
    }
}
