using Companion.Engine.Proofs;

namespace Companion.Engine.Planning;

/// <summary>A rule that a route is to show, and when.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Timing">When.</param>
public sealed record Feature(RuleId Rule, Timing Timing = default);
