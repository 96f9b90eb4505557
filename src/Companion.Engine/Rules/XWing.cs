using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// X-wing. Finds two parallel base lines in which a digit has its places in the same two cover lines; the digit goes from the
/// rest of the cover lines.
/// </summary>
/// <remarks>
/// <para>
/// Why it holds: each base line holds the digit, in one of the two cover lines, and no two in the same. So the two base lines
/// use up the two cover lines.
/// </para>
/// <code>
/// . . o | . . . | o . .      Base rows 1 and 4, the digit's places o
/// . . - | . . . | - . .      all in columns 3 and 7:
/// . . - | . . . | - . .      it goes from the rest of these columns.
/// ------+-------+------
/// . . o | . . . | o . .
/// . . - | . . . | - . .
/// </code>
/// <para>
/// All of them: one for each digit and set of base lines, by digit, then rows before columns, then by lines. Every base line has
/// two or more places, so here exactly two. It rests on the digit's absence from the open cells of the base lines off the cover
/// lines.
/// </para>
/// <para>Source: common practice.</para>
/// </remarks>
public sealed class XWing : IRule
{
    /// <inheritdoc/>
    public RuleId Id { get; } = new("x-wing");

    /// <inheritdoc/>
    public void Find(Board board, Findings found) => Fish.Find(Id, size: 2, board, found);
}
