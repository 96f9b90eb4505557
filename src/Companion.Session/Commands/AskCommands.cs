using Companion.Session.Asks;
using Companion.Session.Asks.Delays;
using Companion.Session.Audience;

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

/// <summary>Set who may open the audience's page.</summary>
/// <param name="Door">Who.</param>
public sealed record SetAudienceDoor(AudienceDoor Door) : Command;
