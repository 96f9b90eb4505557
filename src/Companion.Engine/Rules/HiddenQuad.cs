using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// Hidden quad. Finds four digits with four places between them in a house; every other candidate goes from these four cells.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: the house holds each of the four digits, in four cells, one in each. So nothing else goes there.
/// </para>
/// <code>
/// 12+ .  23+| .  34+ .  | 14+ .  .      In row 1 the digits 1, 2, 3 and 4 have only
///                                       four places between them: the candidates + go.
/// </code>
/// <para>
/// All of them: one for each house and set of digits, by house (rows, columns, blocks), then by digits. Each digit has two to
/// four places, and no two or three of the digits are a hidden pair or triple. It rests on the digits' absence from the other
/// open cells of the house.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class HiddenQuad : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("hidden-quad");

    /// <inheritdoc/>
    public void Find(Board board, Findings found) => HiddenSubsets.Find(Id, size: 4, board, found);
}
