namespace Companion.Engine.Rules;

/// <summary>A named group of rules that are left off the ladder together, such as <c>wings</c>.</summary>
/// <param name="Name">The name, in plain words.</param>
/// <param name="IsOn">Whether its rules are on the ladder at first.</param>
public sealed record Family(string Name, bool IsOn);
