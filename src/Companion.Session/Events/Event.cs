namespace Companion.Session.Events;

/// <summary>Something that happened. Events are stored under stable names and never edited.</summary>
/// <param name="At">When, by the session's clock.</param>
public abstract record Event(DateTimeOffset At);
