using Companion.Engine.Proofs;
using Companion.Session.State;

namespace Companion.Session.Commands;

/// <summary>Put a deduction at the end of the cue list; the same one at the same grade is not listed twice.</summary>
/// <param name="Deduction">The deduction, found open by the newest scan.</param>
/// <param name="Grade">How much of it is to be said.</param>
public sealed record CueDeduction(Deduction Deduction, Grade Grade) : Command;

/// <summary>Put a talking point at the end of the cue list.</summary>
/// <param name="Text">One line of at most <see cref="TextCallOut.LongestText"/> characters.</param>
public sealed record CueText(string Text) : Command;

/// <summary>Change the words of a talking point; refused where it was changed since it was seen.</summary>
/// <param name="Id">Which call-out.</param>
/// <param name="Version">The version that was seen.</param>
/// <param name="Text">The new words.</param>
public sealed record RewordCue(int Id, int Version, string Text) : Command;

/// <summary>Change how much of a deduction is to be said; refused where it was changed since it was seen.</summary>
/// <param name="Id">Which call-out.</param>
/// <param name="Version">The version that was seen.</param>
/// <param name="Grade">The new grade.</param>
public sealed record RegradeCue(int Id, int Version, Grade Grade) : Command;

/// <summary>
/// Move a call-out behind another one. It names neighbours and no places, so that two who order the list at once both have done
/// what they meant.
/// </summary>
/// <param name="Id">The one that moves.</param>
/// <param name="After">The one that it comes behind, or null for the head of the list.</param>
public sealed record MoveCue(int Id, int? After) : Command;

/// <summary>Have a call-out stand by, go, be done, or wait on the list again; refused where it was changed since it was seen.</summary>
/// <param name="Id">Which call-out.</param>
/// <param name="Version">The version that was seen.</param>
/// <param name="Stage">The new stage.</param>
public sealed record TurnCue(int Id, int Version, CueStage Stage) : Command;

/// <summary>
/// Put the deduction of a call-out on air at its grade, which is done with that; refused where it was changed since it was seen.
/// </summary>
/// <param name="Id">Which call-out.</param>
/// <param name="Version">The version that was seen.</param>
public sealed record TakeCue(int Id, int Version) : Command;

/// <summary>Take a call-out off the list; refused where it was changed since it was seen.</summary>
/// <param name="Id">Which call-out.</param>
/// <param name="Version">The version that was seen.</param>
public sealed record RemoveCue(int Id, int Version) : Command;

/// <summary>Take off the list what is done, and deductions that are not open any more.</summary>
public sealed record SweepCues : Command;
