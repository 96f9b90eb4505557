using System.Collections.Immutable;
using System.Text.Json;
using Companion.Session.Chapters;
using Companion.Session.Events.Storage;
using Companion.Session.Shows.Files;

namespace Companion.Server.Log;

/// <summary>A line of the table <c>show</c>, and the events that it names.</summary>
/// <param name="Id">The number of the show.</param>
/// <param name="First">The number of its first event.</param>
/// <param name="Last">The number of its last event, or of one before the next show's first.</param>
/// <param name="Title">What it was called afterwards, or null.</param>
/// <param name="Offset">The recording's offset in seconds.</param>
/// <param name="Chapters">Its edited chapters as JSON, or null.</param>
/// <param name="Digest">Its digest, or null where none is kept.</param>
/// <param name="IsLive">Whether it goes on now.</param>
internal sealed record ShowRow(
    int Id, long First, long Last, string? Title, double Offset, string? Chapters, string? Digest, bool IsLive)
{
    /// <summary>Whether it came from a file.</summary>
    public bool IsImported => First <= 0;

    /// <summary>The show as a file holds it.</summary>
    /// <param name="events">Its events.</param>
    public ShowFile File(IEnumerable<StoredEvent> events) =>
        new(Title, TimeSpan.FromSeconds(Offset), Chapters is null ? null : ReadChapters(Chapters), [.. events]);

    /// <summary>Edited chapters as they are kept.</summary>
    /// <param name="chapters">The chapters; null for none.</param>
    public static string? WriteChapters(ImmutableArray<ChapterMark>? chapters) => chapters is { } marks ? JsonSerializer.Serialize(marks) : null;

    private static ImmutableArray<ChapterMark> ReadChapters(string kept) => JsonSerializer.Deserialize<ImmutableArray<ChapterMark>>(kept);
}
