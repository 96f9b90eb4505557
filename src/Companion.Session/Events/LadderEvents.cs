using Companion.Engine.Proofs;

namespace Companion.Session.Events;

/// <summary>Nothing past a rule of the ladder is looked for any more.</summary>
/// <param name="At">When.</param>
/// <param name="Last">The last rule that is; null for all.</param>
public sealed record LadderStopped(DateTimeOffset At, RuleId? Last) : Event(At);

/// <summary>A family of rules was switched on or off.</summary>
/// <param name="At">When.</param>
/// <param name="Family">The family's name.</param>
/// <param name="IsOn">Whether its rules are looked for.</param>
public sealed record FamilySwitched(DateTimeOffset At, string Family, bool IsOn) : Event(At);
