using Companion.Engine.Proofs;

namespace Companion.Session.Views;

/// <summary>One rung of the ladder.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Name">The rule's spoken name.</param>
/// <param name="Family">The family it belongs to.</param>
/// <param name="IsOn">Whether it is looked for.</param>
public sealed record RungView(RuleId Rule, string Name, string Family, bool IsOn);
