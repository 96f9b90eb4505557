using System.Text.Json;
using System.Text.Json.Nodes;
using Companion.Server.Wire;

namespace Companion.Server.AfterShow;

/// <summary>JSON chapters, version 1.2.0, of the open podcast namespace: <c>version</c>, <c>chapters</c> with <c>startTime</c> in seconds and <c>title</c>.</summary>
internal static class JsonChapters
{
    private static readonly JsonSerializerOptions Laid = new(WireJson.Options) { WriteIndented = true };

    /// <summary>Writes it.</summary>
    public static string Write(ShowChapters chapters)
    {
        var document = new JsonObject { ["version"] = "1.2.0" };
        if (chapters.Title.Length > 0)
            document["title"] = chapters.Title;
        document["chapters"] = new JsonArray([.. chapters.Chapters.Select(chapter => new JsonObject
        {
            ["startTime"] = Math.Round(chapter.At.TotalSeconds, 3),
            ["title"] = chapter.Title,
        })]);
        return document.ToJsonString(Laid) + "\n";
    }
}
