using System.Collections.Immutable;
using Companion.Session.Chapters;
using Companion.Session.Events.Storage;

namespace Companion.Session.Shows.Files;

/// <summary>
/// A show as one JSON document, written by <see cref="ShowFileWriter"/> and read by <see cref="ShowFileReader"/>:
/// <code>
/// {"format":"companion-show","version":1,"title":"...","offset":0,"chapters":null,"count":2,"hash":"...","events":[
/// {"kind":"puzzle-loaded","body":{"at":"2026-01-01T20:00:00.0000000+00:00","grid":"...","title":"...","setter":"...","link":"..."}},
/// {"kind":"digit-placed","body":{"at":"2026-01-01T20:00:01.0000000+00:00","cell":"r3c2","digit":6}}
/// ]}
/// </code>
/// An event stands on a line of its own as the log keeps it, so that a file that was cut off is read up to its last whole event.
/// </summary>
/// <param name="Title">What the presenter called it afterwards; null for what its events say.</param>
/// <param name="Offset">How much later in the recording everything is than it was keyed; in the file in seconds.</param>
/// <param name="Chapters">The chapters as the presenter edited them (<c>at</c> in seconds since the show began, <c>title</c>), or null.</param>
/// <param name="Events">The events in order.</param>
public sealed record ShowFile(string? Title, TimeSpan Offset, ImmutableArray<ChapterMark>? Chapters, ImmutableArray<StoredEvent> Events)
{
    /// <summary>What the field <c>format</c> says.</summary>
    public const string Format = "companion-show";

    /// <summary>The version that is written. All that came before are read.</summary>
    public const int Version = 1;

    /// <summary>So many bytes are read at most: a show of a whole evening takes about one million.</summary>
    public const int LargestBytes = 64 * 1024 * 1024;
}
