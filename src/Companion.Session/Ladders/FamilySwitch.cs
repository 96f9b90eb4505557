namespace Companion.Session.Ladders;

/// <summary>A family of rules that the presenter switched, whatever the ladder's file says of it.</summary>
/// <param name="Family">The family's name.</param>
/// <param name="IsOn">Whether it is on.</param>
public sealed record FamilySwitch(string Family, bool IsOn);
