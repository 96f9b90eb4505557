using System.Numerics;
using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>Hidden single. Finds a digit with one place left in a house, and places it there.</summary>
/// <remarks>
/// <para>Why it holds: the house holds the digit, and every other cell of it is filled or has lost the digit.</para>
/// <code>
/// . . . | 5 . . | . . .      In block 1 the rows and columns of the three 5s
/// . . . | . . . | . 5 .      leave one cell for 5: #.
/// 2 # . | . . . | . . .
/// ------+-------+------
/// . . 5 | . . . | . . .
/// </code>
/// <para>
/// All of them: one for each house and digit, blocks first, then rows, then columns, in each house by digit; a digit alone in a
/// row and in a block counts twice. The last open cell of a house is left to <see cref="FullHouse"/>. It rests on the digit's
/// absence from the other open cells of the house.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class HiddenSingle : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("hidden-single");

    /// <inheritdoc/>
    public void Find(Board board, Findings found)
    {
        foreach (var house in Geometry.BlocksFirst)
        {
            var open = house.Cells & board.Open;
            if (open.Count < 2)
                continue;
            foreach (var digit in Digit.All)
            {
                var places = board[digit].PlacesIn(house);
                if (!BitOperations.IsPow2(places))
                    continue;
                var cell = house.CellAt(BitOperations.TrailingZeroCount(places));
                var more = found.Add(new Deduction
                {
                    Rule = Id,
                    Cells = [new(cell, Role.Single)],
                    Houses = HouseSet.Of(house),
                    Digits = DigitSet.Of(digit),
                    RestsOn = CandidateSet.Of(open.Without(cell), digit),
                    Places = CandidateSet.Of(new Candidate(cell, digit)),
                });
                if (!more)
                    return;
            }
        }
    }
}
