using Companion.Session.Events;
using Companion.Session.Planning;
using Companion.Session.State;

namespace Companion.Server.Log;

/// <summary>Where events are kept before anybody is told of them.</summary>
internal interface IEventLog
{
    /// <summary>What was lost of the log and where its remains are, in plain sentences; null where nothing was.</summary>
    string? Warning { get; }

    /// <summary>The state that the events led to. Only those of the last show are looked at.</summary>
    /// <exception cref="PlainException">An event is damaged or of a kind that only a newer version knows.</exception>
    SessionState Restore();

    /// <summary>Keeps the events of one decision, all or none. Returns when they are safe on the disk.</summary>
    /// <param name="after">The number of the state before them, so that the first has the next number.</param>
    /// <param name="events">The events, in order.</param>
    /// <param name="notes">The notes of a puzzle as they are from now on, kept with it beyond the show; null where they are as before.</param>
    /// <exception cref="IOException">They could not be kept; nothing of them was.</exception>
    void Append(long after, IReadOnlyList<Event> events, PuzzleNotes? notes = null);

    /// <summary>The notes that are kept with a puzzle; null where none were ever written.</summary>
    /// <param name="givens">The puzzle, 81 characters.</param>
    /// <exception cref="IOException">They could not be read.</exception>
    ValueArray<StepNote>? NotesOf(string givens);
}
