using Companion.Session.Events;
using Companion.Session.State;

namespace Companion.Session.Commands;

/// <summary>Begin another show: nothing of this one stays on the board, on air or in the history; what is set for the broadcast does.</summary>
/// <param name="Title">What it is called: one line of at most 120 characters; may be empty.</param>
public sealed record BeginShow(string Title) : Command;

/// <summary>Go on with a show that was kept, as another show that begins with all that happened in it.</summary>
/// <param name="Title">What it is called.</param>
/// <param name="Events">Its events, which were checked to lead to states.</param>
public sealed record ReopenShow(string Title, ValueArray<Event> Events) : Command;

/// <summary>The recording starts now. Refused while one is running or paused.</summary>
public sealed record StartRecording : Command;

/// <summary>The recording pauses now.</summary>
public sealed record PauseRecording : Command;

/// <summary>The recording goes on now.</summary>
public sealed record ResumeRecording : Command;

/// <summary>The recording stops now.</summary>
public sealed record StopRecording : Command;
