using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Nodes;
using Companion.Session.Chapters;
using Companion.Session.Events.Storage;

namespace Companion.Session.Shows.Files;

/// <summary>The fields of a show file as far as they can be read: all of a whole file, and what stands before the cut of another.</summary>
internal sealed class ShowParts
{
    private const double MostOffset = 24 * 60 * 60;
    private const int MostChapters = 1000;
    private const int LongestTitle = 200;

    private readonly Dictionary<string, JsonNode?> _fields = [];

    private ShowParts()
    {
    }

    public List<StoredEvent> Events { get; } = [];

    /// <summary>Whether the file was read to its end.</summary>
    public bool IsWhole { get; private set; }

    public string? Title => (string?)_fields.GetValueOrDefault("title");

    public string? Hash => (string?)_fields.GetValueOrDefault("hash");

    public double Offset => (double?)_fields.GetValueOrDefault("offset") ?? 0;

    public ImmutableArray<ChapterMark>? Chapters => (_fields.GetValueOrDefault("chapters") as JsonArray) is { } chapters
        ? [.. chapters.Select(mark => Mark(mark as JsonObject ?? throw new FormatException("a chapter is no object")))]
        : null;

    private int? Count => (int?)_fields.GetValueOrDefault("count");

    /// <summary>Reads a file.</summary>
    /// <exception cref="JsonException">It is no JSON.</exception>
    /// <exception cref="FormatException">It is JSON of another kind.</exception>
    public static ShowParts Of(ReadOnlySpan<byte> bytes)
    {
        // A reader that takes this for a first part stops at a cut and does not fail at it.
        var parts = new ShowParts();
        var reader = new Utf8JsonReader(bytes, isFinalBlock: false, new(new() { MaxDepth = 256 }));
        if (reader.Read() && reader.TokenType != JsonTokenType.StartObject)
            throw new FormatException("it is no object");
        while (reader.Read() && reader.TokenType == JsonTokenType.PropertyName && parts.ReadField(ref reader))
        {
        }

        parts.IsWhole = reader is { TokenType: JsonTokenType.EndObject, CurrentDepth: 0 };
        if (parts.IsWhole && bytes[(int)reader.BytesConsumed..].ContainsAnyExcept(" \t\r\n"u8))
            throw new FormatException("something stands behind its end");
        return parts;
    }

    /// <summary>Why this is not the head of a file that can be read, or null.</summary>
    public string? Fault()
    {
        if ((string?)_fields.GetValueOrDefault("format") != ShowFile.Format)
            return "This is no show file: choose one that was exported.";
        if ((int?)_fields.GetValueOrDefault("version") is not (>= 1 and <= ShowFile.Version))
            return "This show file was written by a newer version: read it with that one.";
        if (Events.Count == 0)
            return "No event of this show file is left: export the show again.";
        if (!(Math.Abs(Offset) <= MostOffset))
            return "The recording's offset is no time within a day: export the show again.";
        return Title is { Length: > LongestTitle } || Chapters is { Length: > MostChapters }
            || Chapters?.Any(mark => mark.Title is not { Length: <= LongestTitle }) == true
            ? "The title or the chapters of this show file are longer than they can be: export the show again."
            : null;
    }

    /// <summary>What is missing of a file that was cut off.</summary>
    public string? Missing() => IsWhole
        ? null
        : $"The file was cut off after event {Events.Count}{(Count is { } count ? $" of {count}" : "")}: what stands before that was read.";

    private static ChapterMark Mark(JsonObject mark) => new(TimeSpan.FromSeconds(mark.Number("at")), mark.Text("title"));

    private bool ReadField(ref Utf8JsonReader reader)
    {
        var name = reader.GetString()!;
        if (name == "events")
            return ReadEvents(ref reader);
        if (!JsonDocument.TryParseValue(ref reader, out var value))
            return false;
        using (value)
            _fields[name] = JsonNode.Parse(value.RootElement.GetRawText());
        return true;
    }

    private bool ReadEvents(ref Utf8JsonReader reader)
    {
        if (!reader.Read())
            return false;
        if (reader.TokenType != JsonTokenType.StartArray || Events.Count > 0)
            throw new FormatException("its events are no list");
        while (reader.Read())
        {
            if (reader.TokenType == JsonTokenType.EndArray)
                return true;
            if (!JsonDocument.TryParseValue(ref reader, out var value))
                return false;
            using (value)
                Events.Add(Read(value.RootElement));
        }

        return false;
    }

    private StoredEvent Read(JsonElement stored) =>
        stored.ValueKind == JsonValueKind.Object && stored.TryGetProperty("kind", out var kind) && kind.ValueKind == JsonValueKind.String
        && stored.TryGetProperty("body", out var body) && body.ValueKind == JsonValueKind.Object
            ? new(kind.GetString()!, ShowHash.Plain(JsonNode.Parse(body.GetRawText(), documentOptions: new() { MaxDepth = 256 })!))
            : throw new FormatException($"event {Events.Count + 1} has no kind and body");
}
