using Companion.Engine.Proofs;
using Companion.Session.Asks.Calls;
using Companion.Session.State;

namespace Companion.Session.Commands;

/// <summary>Have a deduction stand by: previewed in the panel, nothing visible outside.</summary>
/// <param name="Deduction">The deduction, found open by the newest scan.</param>
public sealed record StandBy(Deduction Deduction) : Command;

/// <summary>Have the open cells that viewers call stand by, without what they call there.</summary>
/// <param name="Calls">What is called now.</param>
public sealed record StandByCalls(ValueArray<CellCalls> Calls) : Command;

/// <summary>Nothing stands by any more; what is on air stays.</summary>
public sealed record StandDown : Command;

/// <summary>Put what stands by on air, a deduction at grade 1, or what is on air one grade further.</summary>
public sealed record NextGrade : Command;

/// <summary>What is on air one grade back; from grade 1 off air.</summary>
public sealed record PreviousGrade : Command;

/// <summary>Off air at once.</summary>
public sealed record ClearAir : Command;

/// <summary>The presenter has said or used a deduction: what it removes counts as known from now on.</summary>
/// <param name="Deduction">The deduction.</param>
public sealed record MarkUsed(Deduction Deduction) : Command;

/// <summary>Whether co-hosts may put things on air.</summary>
/// <param name="Allowed">Yes or no.</param>
public sealed record AllowCoHostOnAir(bool Allowed) : Command;

/// <summary>Say where the board lies in a scene's picture; a new name makes a scene.</summary>
/// <param name="Scene">The scene's name: 1 to 40 letters, digits, blanks, hyphens.</param>
/// <param name="Frame">Where; at least 5 % wide and high and inside the picture.</param>
public sealed record PlaceFrame(string Scene, Frame Frame) : Command;

/// <summary>Forget a scene; the scene <c>main</c> cannot be forgotten.</summary>
/// <param name="Scene">Its name.</param>
public sealed record ForgetScene(string Scene) : Command;

/// <summary>Draw the frame's outline on the overlay of a scene while it is being placed.</summary>
/// <param name="Scene">The scene, or null to stop.</param>
public sealed record ShowFrame(string? Scene) : Command;
