using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using Companion.Session.Events.Storage;
using Companion.Session.Shows.Files;

namespace Companion.Server.Shows;

/// <summary>What a list says of a show, made by reading its lines once; nothing is replayed.</summary>
/// <param name="Title">The title that its first event gives it, or null.</param>
/// <param name="Puzzles">See <see cref="ShowLine"/>, as for all of these.</param>
/// <param name="Began">When it began.</param>
/// <param name="Seconds">How long it took.</param>
/// <param name="Events">How many events.</param>
/// <param name="Entries">How many entries.</param>
/// <param name="Hash">The hash.</param>
internal sealed record ShowDigest(
    string? Title, ImmutableArray<string> Puzzles, DateTimeOffset Began, double Seconds, int Events, int Entries, string Hash)
{
    private static readonly HashSet<string> Entering =
    [
        "digit-placed", "cells-erased", "block-mark-changed", "cell-mark-changed", "strike-changed", "grid-cleared", "entry-undone", "entry-redone",
    ];

    /// <summary>Makes the digest of a show.</summary>
    /// <param name="events">Its events, as the log keeps them, with their times in ticks; at least one.</param>
    public static ShowDigest Of(IReadOnlyList<(long Ticks, StoredEvent Stored)> events) => new(
        events[0].Stored is { Kind: "show-begun" } begun ? TitleIn(begun) : null,
        [.. events.Where(each => each.Stored.Kind == "puzzle-loaded").Select(each => TitleIn(each.Stored)).Where(title => title.Length > 0).Distinct()],
        new(events[0].Ticks, TimeSpan.Zero),
        Math.Round(TimeSpan.FromTicks(Math.Max(0, events.Max(each => each.Ticks) - events[0].Ticks)).TotalSeconds, 1),
        events.Count,
        events.Count(each => Entering.Contains(each.Stored.Kind)),
        ShowHash.Of(events.Select(each => each.Stored)));

    /// <summary>The digest as it is kept, or null where none is.</summary>
    public static ShowDigest? Parse(string? kept) => kept is null ? null : JsonSerializer.Deserialize<ShowDigest>(kept);

    /// <summary>As it is kept.</summary>
    public string ToText() => JsonSerializer.Serialize(this);

    // A title that cannot be read is none: the show itself says what is wrong when it is opened.
    private static string TitleIn(StoredEvent stored)
    {
        try
        {
            return (string?)JsonNode.Parse(stored.Body)?["title"] ?? "";
        }
        catch (Exception damage) when (damage is JsonException or InvalidOperationException)
        {
            return "";
        }
    }
}
