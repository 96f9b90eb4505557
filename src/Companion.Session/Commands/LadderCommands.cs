using Companion.Engine.Proofs;

namespace Companion.Session.Commands;

/// <summary>Look for nothing past a rule of the ladder.</summary>
/// <param name="Last">The last rule to look for, one of the ladder; null for all.</param>
public sealed record StopLadder(RuleId? Last) : Command;

/// <summary>Look for the rules of a family, or leave them out.</summary>
/// <param name="Family">The family's name, one of the ladder's.</param>
/// <param name="IsOn">Whether to look for them.</param>
public sealed record SwitchFamily(string Family, bool IsOn) : Command;
