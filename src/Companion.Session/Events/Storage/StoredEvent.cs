namespace Companion.Session.Events.Storage;

/// <summary>An event as a log keeps it.</summary>
/// <param name="Kind">The stable name of its kind, such as <c>digit-placed</c>.</param>
/// <param name="Body">All of it as one line of JSON.</param>
public sealed record StoredEvent(string Kind, string Body);
