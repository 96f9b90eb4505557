using System.Collections.Immutable;
using Companion.Engine.Proofs;
using Companion.Session.State;

namespace Companion.Session.Views;

/// <summary>What the stage may know: the board as the presenter writes it, and what is on air.</summary>
/// <param name="Sequence">Number of the state it shows.</param>
/// <param name="Credit">Title, setter and link of the puzzle.</param>
/// <param name="Cells">The 81 cells, row by row.</param>
/// <param name="OnAir">The hint on air, of the type of its grade, or null.</param>
/// <param name="Code">The code by which viewers let the delay be measured, or null.</param>
public sealed record StageView(
    long Sequence, Credit Credit, ImmutableArray<StageCell> Cells, Hint? OnAir, string? Code)
{
    /// <summary>The cells on air that viewers call; none where they are not.</summary>
    public ValueArray<CalledCell> Called { get; init; }
}
