using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Engine.Planning;

/// <summary>One step of a planned route.</summary>
/// <param name="Board">The board before it.</param>
/// <param name="Rung">The rung of its rule.</param>
/// <param name="Deduction">What is deduced.</param>
/// <param name="IsFeatured">Whether it is the turn of a featured rule.</param>
public sealed record PlannedStep(Board Board, Rung Rung, Deduction Deduction, bool IsFeatured)
{
    /// <summary>
    /// How many different things follow here from rules at or below its rung, and for a single from any single; what only differs in
    /// how it is seen counts once. Counted up to 2.
    /// </summary>
    public required int Ways { get; init; }

    /// <summary>
    /// Whether it is a gate: there is no other way on without a harder rule, and more than full houses is left to do.
    /// </summary>
    public bool IsGate => Gate.Is(Board, Ways);
}
