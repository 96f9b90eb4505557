using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// Pointing. Finds a digit whose places in a block, two or three of them, share a line; the digit goes from the rest of that
/// line.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: the block holds the digit, so one of these places is true, and each of them sees the rest of the line.
/// </para>
/// <code>
/// . . . | . . . | . . .      In block 1 the digit has only the places o,
/// o o . | - - - | - - -      both in row 2:
/// . . . | . . . | . . .      it goes from - wherever it stands there.
/// </code>
/// <para>
/// All of them: one for each block and digit, by block, then by digit. A digit with one place in the block is a hidden single.
/// It rests on the digit's absence from the open cells of the block off the line.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class Pointing : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("pointing");

    /// <inheritdoc/>
    public void Find(Board board, Findings found) => LockedDigits.Find(Id, HouseSet.Blocks, board, found);
}
