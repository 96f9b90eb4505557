using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// Claiming. Finds a digit whose places in a line, two or three of them, share a block; the digit goes from the rest of that
/// block.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: the line holds the digit, so one of these places is true, and each of them sees the rest of the block.
/// </para>
/// <code>
/// - - - | . . . | . . .      In row 2 the digit has only the places o,
/// o o . | . . . | . . .      both in block 1:
/// - - - | . . . | . . .      it goes from - wherever it stands there.
/// </code>
/// <para>
/// All of them: one for each line and digit, by line (rows, then columns), then by digit. A digit with one place in the line is a
/// hidden single. It rests on the digit's absence from the open cells of the line off the block.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class Claiming : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("claiming");

    /// <inheritdoc/>
    public void Find(Board board, Findings found) => LockedDigits.Find(Id, HouseSet.Lines, board, found);
}
