using Companion.Engine.Proofs;

namespace Companion.Session.State;

/// <summary>A deduction to be called out, as far as a grade goes.</summary>
/// <param name="Id">See <see cref="CallOut"/>.</param>
/// <param name="Version">See <see cref="CallOut"/>.</param>
/// <param name="Stage">See <see cref="CallOut"/>.</param>
/// <param name="Chosen">The deduction, with the board on which it was put on the list.</param>
/// <param name="Grade">How much of it is said, and shown when it is taken on air.</param>
public sealed record DeductionCallOut(int Id, int Version, CueStage Stage, Chosen Chosen, Grade Grade) : CallOut(Id, Version, Stage)
{
    /// <summary>The deduction.</summary>
    public Deduction Deduction => Chosen.Deduction;
}
