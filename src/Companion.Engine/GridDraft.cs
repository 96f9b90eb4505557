namespace Companion.Engine;

/// <summary>
/// A grid as it came in: typed, pasted or seen, and not validated. It may hold anything; <see cref="Board.Read"/> and
/// <see cref="Puzzle.Read"/> say what is wrong with it.
/// </summary>
/// <param name="Text">
/// One character a cell, row by row: <c>1</c> to <c>9</c>, or <c>.</c> for an empty cell. Well formed it has 81 characters.
/// <see cref="BoardText.Read"/> makes it from what people paste.
/// </param>
public sealed record GridDraft(string Text)
{
    /// <summary>Filled cells that the presenter placed; the other filled cells are givens. Empty by default.</summary>
    public CellSet Placed { get; init; }

    /// <summary>Candidates taken out beyond what the filled cells take out. Empty by default.</summary>
    public CandidateSet Removed { get; init; }
}
