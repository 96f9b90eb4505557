using Companion.Session.Asks;
using Companion.Session.Asks.Delays;
using Companion.Session.Audience;

namespace Companion.Session.Events;

/// <summary>The presenter set how far viewers may go.</summary>
/// <param name="At">When.</param>
/// <param name="Limits">How far.</param>
public sealed record AsksLimited(DateTimeOffset At, AskLimits Limits) : Event(At);

/// <summary>The presenter set how far viewers are behind.</summary>
/// <param name="At">When.</param>
/// <param name="Delay">How far.</param>
public sealed record DelaySet(DateTimeOffset At, Delay Delay) : Event(At);

/// <summary>A code was shown on the overlay to measure the delay.</summary>
/// <param name="At">When.</param>
/// <param name="Code">The code.</param>
public sealed record DelayCodeShown(DateTimeOffset At, string Code) : Event(At);

/// <summary>The code was taken off the overlay.</summary>
/// <param name="At">When.</param>
public sealed record DelayCodeHidden(DateTimeOffset At) : Event(At);

/// <summary>The show was over: its recording stopped, if it ran, and the viewers were forgotten.</summary>
/// <param name="At">When.</param>
public sealed record ShowEnded(DateTimeOffset At) : Event(At);

/// <summary>The presenter set who may open the audience's page.</summary>
/// <param name="At">When.</param>
/// <param name="Door">Who.</param>
public sealed record AudienceDoorSet(DateTimeOffset At, AudienceDoor Door) : Event(At);
