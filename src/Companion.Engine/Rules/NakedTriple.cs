using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// Naked triple. Finds three cells of a house with three candidates between them; the three digits go from the other cells
/// that see all three.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: the three cells hold three different digits and only these three can go there, so each of the digits is in
/// one of the cells.
/// </para>
/// <code>
/// 12 23 13 | -  -  -      Three cells, three digits: 1, 2 and 3 go from
/// -  -  -  | .  .  .      the rest of row 1 and of block 1.
/// -  -  -  | .  .  .
/// </code>
/// <para>
/// All of them: one for each set of cells, by house (rows, columns, blocks), then by cells. Each cell has two or three
/// candidates, and no two of the cells are a naked pair. The digits go from every cell that sees all three cells, in a line,
/// a block or both. It rests on the other digits' absence from the three cells.
/// </para>
/// <para>Source: common practice; the occupancy theorem of J. F. Crook, Notices of the AMS 56(4), 2009, 460-468.</para>
/// </remarks>
public sealed class NakedTriple : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("naked-triple");

    /// <inheritdoc/>
    public void Find(Board board, Findings found) => NakedSubsets.Find(Id, size: 3, board, found);
}
