using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Companion.Session.Chapters;
using Companion.Session.Events.Storage;

namespace Companion.Session.Shows.Files;

/// <summary>Writes show files.</summary>
public static class ShowFileWriter
{
    /// <summary>Writes a show.</summary>
    /// <param name="show">The show.</param>
    /// <param name="output">Where to; left open.</param>
    public static void Write(ShowFile show, Stream output)
    {
        ArgumentNullException.ThrowIfNull(show);
        using var lines = new StreamWriter(output, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true) { NewLine = "\n" };
        lines.WriteLine($"{Head(show).ToJsonString(EventText.Plain)[..^1]},\"events\":[");
        for (var index = 0; index < show.Events.Length; index++)
        {
            var (kind, body) = show.Events[index];
            lines.WriteLine($"{{\"kind\":{JsonSerializer.Serialize(kind)},\"body\":{body}}}{(index < show.Events.Length - 1 ? "," : "")}");
        }

        lines.WriteLine("]}");
    }

    private static JsonObject Head(ShowFile show) => new()
    {
        ["format"] = ShowFile.Format,
        ["version"] = ShowFile.Version,
        ["title"] = show.Title,
        ["offset"] = show.Offset.TotalSeconds,
        ["chapters"] = show.Chapters is { } chapters ? new JsonArray([.. chapters.Select(Write)]) : null,
        ["count"] = show.Events.Length,
        ["hash"] = ShowHash.Of(show.Events),
    };

    private static JsonNode Write(ChapterMark mark) => new JsonObject { ["at"] = mark.At.TotalSeconds, ["title"] = mark.Title };
}
