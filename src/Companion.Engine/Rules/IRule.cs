using Companion.Engine.Proofs;

namespace Companion.Engine.Rules;

/// <summary>
/// One rule of the ladder: a pure function from a board to all instances of the rule on it, in a fixed order. An instance
/// counts only if something follows from it that the board does not show yet.
/// </summary>
public interface IRule
{
    /// <summary>The rule's name, unique on the ladder.</summary>
    RuleId Id { get; }

    /// <summary>
    /// Whether what it finds holds only of a puzzle that has one solution. Such a rule is left off a ladder until that is known.
    /// </summary>
    bool AssumesOneSolution => false;

    /// <summary>How long it takes to look; <see cref="Effort.Pattern"/> by default.</summary>
    Effort Effort => Effort.Pattern;

    /// <summary>Adds every instance on the board, or as many as are wanted.</summary>
    /// <param name="board">The board. It may hold wrong digits and dead cells; a rule is then of no use but does no harm.</param>
    /// <param name="found">Where instances go; the rule returns as soon as this wants no more.</param>
    void Find(Board board, Findings found);
}
