using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Proofs;

/// <summary>Costs of deductions by their rule.</summary>
internal static class Costs
{
    /// <summary>The higher on the ladder the dearer, from 1.</summary>
    public static double ByRung(RuleId rule) => Ladder.Whole.RungOf(rule) + 1;
}
