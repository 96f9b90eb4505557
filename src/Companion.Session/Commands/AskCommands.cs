using Companion.Session.Asks;
using Companion.Session.Asks.Delays;
using Companion.Session.Audience;
using Companion.Session.State;

namespace Companion.Session.Commands;

/// <summary>Set how far viewers may go.</summary>
/// <param name="Limits">How far.</param>
public sealed record LimitAsks(AskLimits Limits) : Command;

/// <summary>Set how far viewers are behind.</summary>
/// <param name="Delay">0 to 60 seconds, with the quickest and the slowest viewer's.</param>
public sealed record SetDelay(Delay Delay) : Command;

/// <summary>Set how far viewers are behind to what was measured.</summary>
/// <param name="Measured">What was measured, or null where nothing was.</param>
public sealed record UseMeasuredDelay(Delay? Measured) : Command;

/// <summary>Show a code on the overlay, by which viewers let the delay be measured.</summary>
/// <param name="Code">Three to eight lower case letters.</param>
public sealed record ShowDelayCode(string Code) : Command;

/// <summary>Take the code off the overlay.</summary>
public sealed record HideDelayCode : Command;

/// <summary>The show is over: the companion forgets who asked and who called what.</summary>
public sealed record EndShow : Command;

/// <summary>Keep in which cells viewers were first. Comes from the session itself, without anything of a viewer.</summary>
/// <param name="Loading">The loading of the puzzle that they are of; of another one nothing is kept.</param>
/// <param name="Cells">The cells, each with how many viewers at least were right.</param>
public sealed record NoteFoundFirst(int Loading, ValueArray<CalledCell> Cells) : Command;

/// <summary>Set who may open the audience's page.</summary>
/// <param name="Door">Who.</param>
public sealed record SetAudienceDoor(AudienceDoor Door) : Command;
