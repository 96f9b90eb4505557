using System.Collections.Immutable;
using Companion.Engine.Proofs;

namespace Companion.Engine.Planning;

/// <summary>Where a featured rule has its turn on a planned route.</summary>
/// <param name="Feature">The rule, and when it was wanted.</param>
/// <param name="Step">The place of the step that shows it, 0-based; null where it is open nowhere on the route.</param>
/// <param name="Deduction">What is shown there; null where it is open nowhere.</param>
/// <param name="Others">
/// Other deductions of the rule that are open on the way, each with the places of the first and the last step before which it is,
/// 0-based; those open longest first.
/// </param>
public sealed record FeaturedTurn(Feature Feature, int? Step, Deduction? Deduction, ImmutableArray<FeaturedTurn.Alternative> Others)
{
    /// <summary>A deduction that could be shown instead.</summary>
    /// <param name="First">The place of the first step before which it is open, 0-based.</param>
    /// <param name="Last">The place of the last such step.</param>
    /// <param name="Deduction">The deduction as it is open first.</param>
    public sealed record Alternative(int First, int Last, Deduction Deduction);
}
