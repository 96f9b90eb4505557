using System.Numerics;
using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// Two-block claiming. Finds two blocks of a chute in which a digit is kept to the same two lines, in each block in both of
/// them; the digit goes from these two lines in the third block.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: each of the two blocks holds the digit in one of the two lines, and not both in the same; so the two blocks use
/// up both lines, and the third block has the digit in the third line.
/// </para>
/// <code>
/// o . . | . o o | - - -      In blocks 1 and 2 the digit has only the places o,
/// . . o | . . o | - - -      all in rows 1 and 2:
/// . . . | . . . | . . .      it goes from - wherever it stands there.
/// </code>
/// <para>
/// All of them: one for each chute, digit and pair of blocks, by chute (bands, then stacks), digit and third block. Claiming in
/// the third line, or a single there, removes the same: this is the way to see it from marks in blocks. It rests on
/// the digit's absence from the open cells of the two blocks in the third line.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class TwoBlockClaiming : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("two-block-claiming");

    /// <inheritdoc/>
    public void Find(Board board, Findings found)
    {
        for (var chute = 0; chute < Chute.Count; chute++)
        {
            foreach (var digit in Digit.All)
            {
                if (!FindIn(Chute.At(chute), digit, board, found))
                    return;
            }
        }
    }

    private bool FindIn(Chute chute, Digit digit, Board board, Findings found)
    {
        for (var third = 0; third < 3; third++)
        {
            var (one, two) = (chute.Block(third == 0 ? 1 : 0), chute.Block(third == 2 ? 1 : 2));
            var (placesInOne, placesInTwo) = (board[digit] & one.Cells, board[digit] & two.Cells);
            var lines = LinesOf(placesInOne, chute);
            if (BitOperations.PopCount((uint)lines) != 2 || lines != LinesOf(placesInTwo, chute))
                continue;
            var rest = chute.Line(BitOperations.TrailingZeroCount(~lines));
            var gone = board[digit] & chute.Block(third).Cells - rest.Cells;
            if (gone.IsEmpty)
                continue;
            var more = found.Add(new Deduction
            {
                Rule = Id,
                Cells = PatternCell.Each(Role.Locked, placesInOne, placesInTwo),
                Houses = HouseSet.Of(one, two),
                Digits = DigitSet.Of(digit),
                RestsOn = CandidateSet.Of(board.Open & rest.Cells & (one.Cells | two.Cells), digit),
                Removes = CandidateSet.Of(gone, digit),
            });
            if (!more)
                return false;
        }

        return true;
    }

    // Bit i stands for line i of the chute.
    private static int LinesOf(CellSet places, Chute chute)
    {
        var lines = 0;
        for (var line = 0; line < 3; line++)
        {
            if (places.Overlaps(chute.Line(line).Cells))
                lines |= 1 << line;
        }

        return lines;
    }
}
