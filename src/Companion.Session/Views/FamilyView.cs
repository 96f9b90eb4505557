namespace Companion.Session.Views;

/// <summary>One family of rules.</summary>
/// <param name="Name">The name.</param>
/// <param name="IsOn">Whether its rules are looked for.</param>
/// <param name="AssumesOneSolution">Whether any of its rules assumes that the puzzle has one solution.</param>
public sealed record FamilyView(string Name, bool IsOn, bool AssumesOneSolution);
