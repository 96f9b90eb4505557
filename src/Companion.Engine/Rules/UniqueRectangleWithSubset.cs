using System.Numerics;
using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// Unique rectangle with a naked subset. Finds four cells in two rows, two columns and two blocks that share two candidates, two
/// of them, the roof, in one house and with others beside, and further cells of that house with which these others make a naked
/// subset: as many digits as there are cells, if the roof counts as one. The digits go from the other cells that see all of
/// these.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: if neither cell of the roof held one of its other digits, the four would hold the two digits crosswise, and the
/// digits could be exchanged. But the puzzle has one solution. So one cell of the roof and the further cells hold the digits.
/// </para>
/// <code>
/// 58  . . | 58  . . | .  . .      The roof, r2c1 and r2c4, has 1 and 3 beside 5
/// 581 - - | 583 - - | 13 - -      and 8; with r2c7 that makes a naked pair:
/// .   . . | .   . . | .  . .      1 and 3 go from -.
/// </code>
/// <para>
/// All of them: one for each rectangle, and set of further cells, by rows and columns of the rectangle, then by house (rows,
/// columns, blocks), then by cells. Both digits stand in all four cells, and in the two that are not the roof no other. The
/// further cells, one to three, have none of the two digits, and no part of them, with the roof or without, is a naked subset. It
/// rests on the other digits' absence from all these cells.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class UniqueRectangleWithSubset : IRule
{
    // The roof is the first of the sets.
    private const int RoofBit = 1;

    /// <inheritdoc/>
    public RuleId Id { get; } = new("unique-rectangle-with-subset");

    /// <inheritdoc/>
    public bool AssumesOneSolution => true;

    /// <inheritdoc/>
    public void Find(Board board, Findings found)
    {
        foreach (var rectangle in Rectangle.All)
        {
            if (!rectangle.HasPair(board, out var pair, out var floor) || floor.Count != 2)
                continue;
            var roof = rectangle.Cells - floor;
            foreach (var house in roof.CommonHouses)
            {
                if (!FindIn(house, pair, floor, roof, board, found))
                    return;
            }
        }
    }

    private bool FindIn(House house, DigitSet pair, CellSet floor, CellSet roof, Board board, Findings found)
    {
        Span<ushort> digitsAt = stackalloc ushort[8];
        Span<Cell> cellAt = stackalloc Cell[8];
        Span<TightChoices.Choice> room = stackalloc TightChoices.Choice[TightChoices.Most];
        var count = 1;
        foreach (var cell in roof)
            digitsAt[0] |= (ushort)(board[cell] - pair).Bits;
        foreach (var cell in (house.Cells & board.Open) - roof)
        {
            cellAt[count] = cell;
            digitsAt[count++] = (ushort)((board[cell] & pair).IsEmpty ? board[cell].Bits : 0);
        }

        for (var size = 2; size <= 4; size++)
        {
            foreach (var (chosen, union) in TightChoices.Find(digitsAt[..count], size, room))
            {
                if ((chosen & RoofBit) == 0)
                    continue;
                var cells = CellSet.Empty;
                for (var rest = chosen - RoofBit; rest != 0; rest &= rest - 1)
                    cells = cells.With(cellAt[BitOperations.TrailingZeroCount(rest)]);
                if (!Add(house, pair, floor, roof, cells, new(union), board, found))
                    return false;
            }
        }

        return true;
    }

    private bool Add(
        House house, DigitSet pair, CellSet floor, CellSet roof, CellSet cells, DigitSet digits, Board board, Findings found)
    {
        var houses = (roof | cells).CommonHouses;
        var gone = board.Standing((roof | cells).CommonPeers, digits);
        if (gone.IsEmpty || houses.First != house) // Or found in that one before.
            return true;
        return found.Add(new Deduction
        {
            Rule = Id,
            Cells = PatternCell.Each((Role.Floor, floor), (Role.Roof, roof), (Role.Subset, cells)),
            Houses = houses,
            Digits = pair | digits,
            RestsOn = CandidateSet.Of(floor, ~pair) | CandidateSet.Of(roof, ~(pair | digits)) | CandidateSet.Of(cells, ~digits),
            Removes = gone,
            AssumesOneSolution = true,
        });
    }
}
