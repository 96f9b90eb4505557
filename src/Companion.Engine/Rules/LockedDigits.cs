using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// The search that pointing and claiming share: a digit whose two or three places in one house lie in a second house too goes
/// from the rest of the second.
/// </summary>
internal static class LockedDigits
{
    /// <summary>Adds every instance whose first house is one of <paramref name="homes"/>, by house, then by digit.</summary>
    internal static void Find(RuleId rule, HouseSet homes, Board board, Findings found)
    {
        foreach (var home in homes)
        {
            foreach (var digit in Digit.All)
            {
                var places = board[digit] & home.Cells;
                if (places.Count is not (2 or 3))
                    continue;
                var others = places.CommonHouses - HouseSet.Of(home);
                if (others.IsEmpty) // There is never more than one: a block and a line share three cells, two lines one.
                    continue;
                var other = others.First.Cells;
                var gone = board[digit] & other - home.Cells;
                if (gone.IsEmpty)
                    continue;
                var more = found.Add(new Deduction
                {
                    Rule = rule,
                    Cells = PatternCell.Each(Role.Locked, places),
                    Houses = HouseSet.Of(home),
                    Digits = DigitSet.Of(digit),
                    RestsOn = CandidateSet.Of(board.Open & home.Cells - other, digit),
                    Removes = CandidateSet.Of(gone, digit),
                });
                if (!more)
                    return;
            }
        }
    }
}
