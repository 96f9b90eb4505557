using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// Naked quad. Finds four cells of a house with four candidates between them; the four digits go from the other cells of the
/// house.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: the four cells hold four different digits and only these four can go there, so each of the digits is in one
/// of the cells.
/// </para>
/// <code>
/// 12 -  23 | -  34 -  | 14 -  -      Four cells, four digits: 1, 2, 3 and 4
///                                    go from the rest of row 1.
/// </code>
/// <para>
/// All of them: one for each set of cells, by house (rows, columns, blocks), then by cells. Each cell has two to four
/// candidates, and no two or three of the cells are a naked pair or triple. The digits go from every cell that sees all four
/// cells. It rests on the other digits' absence from the four cells.
/// </para>
/// <para>Source: common practice; the occupancy theorem of J. F. Crook, Notices of the AMS 56(4), 2009, 460-468.</para>
/// </remarks>
public sealed class NakedQuad : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("naked-quad");

    /// <inheritdoc/>
    public void Find(Board board, Findings found) => NakedSubsets.Find(Id, size: 4, board, found);
}
