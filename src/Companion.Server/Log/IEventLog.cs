using Companion.Session.Events;

namespace Companion.Server.Log;

/// <summary>Where events are kept before anybody is told of them.</summary>
internal interface IEventLog
{
    /// <summary>Every event so far, in order.</summary>
    /// <exception cref="PlainException">An event is damaged or of a kind that only a newer version knows.</exception>
    IEnumerable<Event> Replay();

    /// <summary>Keeps the events of one decision, all or none. Returns when they are safe on the disk.</summary>
    /// <param name="after">The number of the state before them, so that the first has the next number.</param>
    /// <param name="events">The events, in order.</param>
    /// <exception cref="IOException">They could not be kept; nothing of them was.</exception>
    void Append(long after, IReadOnlyList<Event> events);
}
