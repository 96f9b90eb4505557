using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// Hidden triple. Finds three digits with three places between them in a house; every other candidate goes from these three
/// cells.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: the house holds each of the three digits, in three cells, one in each. So nothing else goes there.
/// </para>
/// <code>
/// 12+ .  .  |      In block 1 the digits 1, 2 and 3 have only three
/// .   .  23+|      places between them: the candidates + go.
/// 13+ .  .  |
/// </code>
/// <para>
/// All of them: one for each house and set of digits, by house (rows, columns, blocks), then by digits. Each digit has two or
/// three places, and no two of the digits are a hidden pair. It rests on the digits' absence from the other open cells of the
/// house.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class HiddenTriple : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("hidden-triple");

    /// <inheritdoc/>
    public void Find(Board board, Findings found) => HiddenSubsets.Find(Id, size: 3, board, found);
}
