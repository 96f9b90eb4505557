using Companion.Session.Events;
using Companion.Session.State;

namespace Companion.Session.Shows;

/// <summary>One thing that happened in a stored show, with all that the session knew after it.</summary>
/// <param name="Number">Its number in the show, 1-based.</param>
/// <param name="Happened">What happened; it carries the time of day.</param>
/// <param name="State">The state after it.</param>
/// <param name="Elapsed">The time since the show's first event; it never goes back, even where the machine's clock was set back.</param>
/// <param name="Recorded">The time in the show's recording, or null where this was not recorded.</param>
public sealed record Moment(int Number, Event Happened, SessionState State, TimeSpan Elapsed, TimeSpan? Recorded);
