using Companion.Engine.Proofs;
using Companion.Engine.Rules.Chains;

namespace Companion.Engine.Rules;

/// <summary>
/// Single-digit chain. Finds three or more strong links of one digit in a row, each beginning at a place that sees the end of the
/// one before; the digit goes from the cells that see both ends of the whole, or is placed where both ends are the same cell.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: if the first end is not true, the other place of its house is; then the next place is not, so the other place of
/// its house is, and so on to the last end. So one of the two ends is true.
/// </para>
/// <code>
/// a . . | . b . | . . .      a and b, c and d, e and f are the only places of the
/// . . - | . . . | . . .      digit in row 1, row 4 and row 9; b sees c, d sees e.
/// . . - | . . . | . . .      If a is not true, b is, so that c is not, d is, e is not
/// ------+-------+------      and f is: the digit goes from -, which see a and f.
/// . . . | . c . | . d .
/// . . . | . . . | . . .
/// . . . | . . . | . . .
/// ------+-------+------
/// - . . | . . . | . . .
/// - . . | . . . | . . .
/// . . f | . . . | . e .
/// </code>
/// <para>
/// All of them: every candidate that goes by chains of one digit, however long, but not by one of fewer than three strong links,
/// which are left to easier rules, nor by a continuous loop that is as short. Each goes by one of its shortest chains, the
/// shortest first, then by the first candidate that goes; a chain counts only if something goes by it that does not by those
/// before. A candidate whose shortest chains all come to some place twice is left out: that place is true by a shorter chain. It
/// rests on the digit's absence from the other open cells of the houses.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class SingleDigitChain : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("single-digit-chain");

    /// <inheritdoc/>
    public Effort Effort => Effort.Search;

    /// <inheritdoc/>
    public void Find(Board board, Findings found) =>
        ChainFinder.For(board, ChainKind.OneDigit).Find(Id, board, fewest: 3, limits: LoopFinder.For(board).Depths, found);
}
