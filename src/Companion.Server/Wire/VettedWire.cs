using Companion.Server.Planning;

namespace Companion.Server.Wire;

/// <summary>What vetting a grid found out. For the presenter's page that asked, and for no other.</summary>
/// <param name="Grid">The grid as it was typed.</param>
/// <param name="Result">What was found out.</param>
public sealed record VettedWire(string Grid, VetResult Result);
