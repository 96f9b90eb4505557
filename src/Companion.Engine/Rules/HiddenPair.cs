using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// Hidden pair. Finds two digits with the same two places in a house; every other candidate goes from these two cells.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: the house holds each of the two digits, in two cells, one in each. So nothing else goes there.
/// </para>
/// <code>
/// 58+ .  .  |      In block 1 the digits 5 and 8 have only the places
/// .   .  58+|      r1c1 and r2c3: the candidates + beside them go.
/// .   .  .  |
/// </code>
/// <para>
/// All of them: one for each house and set of digits, by house (rows, columns, blocks), then by digits. Each digit has two
/// places. It rests on the digits' absence from the other open cells of the house.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class HiddenPair : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("hidden-pair");

    /// <inheritdoc/>
    public void Find(Board board, Findings found) => HiddenSubsets.Find(Id, size: 2, board, found);
}
