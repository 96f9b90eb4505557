using System.Collections.Immutable;

namespace Companion.Server.AfterShow;

/// <summary>A form in which chapters are written.</summary>
/// <param name="Name">How it is asked for.</param>
/// <param name="Extension">How the names of its files end.</param>
/// <param name="Write">Writes the chapters, given the frames a second of the video, which most forms do without.</param>
internal sealed record ChapterFormat(string Name, string Extension, Func<ShowChapters, FrameRate, string> Write)
{
    /// <summary>All of them; the first is the usual one.</summary>
    public static ImmutableArray<ChapterFormat> All { get; } =
    [
        new("list", "txt", (chapters, _) => ChapterList.Write(chapters)),
        new("webvtt", "vtt", (chapters, _) => WebVtt.Write(chapters)),
        new("ffmetadata", "ffmetadata", (chapters, _) => FfMetadata.Write(chapters)),
        new("json", "json", (chapters, _) => JsonChapters.Write(chapters)),
        new("edl", "edl", EditList.Write),
    ];

    /// <summary>The form of a name, or null.</summary>
    public static ChapterFormat? Named(string? name) => All.FirstOrDefault(format => format.Name == name);
}
