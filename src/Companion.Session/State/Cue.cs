using Companion.Engine.Proofs;

namespace Companion.Session.State;

/// <summary>What is on air.</summary>
/// <param name="Chosen">The deduction, with the board that its hints are about.</param>
/// <param name="Grade">How much of it is shown.</param>
public sealed record Cue(Chosen Chosen, Grade Grade)
{
    /// <summary>The deduction.</summary>
    public Deduction Deduction => Chosen.Deduction;
}
