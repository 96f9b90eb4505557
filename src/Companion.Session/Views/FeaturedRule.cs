using Companion.Engine.Planning;
using Companion.Engine.Proofs;

namespace Companion.Session.Views;

/// <summary>A rule that the puzzle is to show, as panels are told of it and name it.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="IsEarly">Whether it is wanted as soon as it is open, and not as late as it can be.</param>
public sealed record FeaturedRule(RuleId Rule, bool IsEarly)
{
    /// <summary>The rule as a plan takes it.</summary>
    public Feature ToFeature() => new(Rule, IsEarly ? Timing.Early : Timing.Late);

    /// <summary>The rule as a panel is told of it.</summary>
    internal static FeaturedRule Of(Feature feature) => new(feature.Rule, feature.Timing == Timing.Early);
}
