using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Companion.Server.AfterShow;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.AfterShow;

/// <summary>Chapters in each form, read by programs that are not ours where there are some.</summary>
public sealed partial class FormatTests
{
    private static readonly ShowChapters Hostile = new(
        "Evening; at = the #1 \\ station",
        [
            new(TimeSpan.Zero, "Introduction"),
            new(TimeSpan.FromSeconds(75.25), "A --> B & <c>; = # \\ end"),
            new(TimeSpan.FromSeconds(3725.5), "Grüße, 1s in block 8"),
        ],
        TimeSpan.FromSeconds(4000),
        IsEdited: true);

    /// <summary>The chapters of some shows of chance, and hostile ones.</summary>
    internal static IEnumerable<ShowChapters> Some => Enumerable.Range(1, 12).Select(MadeShow.Chapters).Append(Hostile);

    [Fact]
    public void The_list_is_what_video_sites_read()
    {
        Assert.Equal("0:00:00 Introduction\n0:01:15 A --> B & <c>; = # \\ end\n1:02:05 Grüße, 1s in block 8\n", ChapterList.Write(Hostile));
        foreach (var chapters in Some)
        {
            var lines = ChapterList.Write(chapters).TrimEnd('\n').Split('\n').Select(line => ListLine().Match(line)).ToList();
            Assert.All(lines, line => Assert.True(line.Success));
            var seconds = lines.Select(line => line.Groups[1].Value.Split(':').Aggregate(0, (sum, part) => sum * 60 + int.Parse(part, CultureInfo.InvariantCulture))).ToList();
            Assert.Equal(0, seconds[0]);
            Assert.All(seconds.Zip(seconds.Skip(1)), pair => Assert.True(pair.Second - pair.First >= 10));
        }
    }

    [Fact]
    public void Ffmpeg_reads_every_chapter_with_its_title_and_times()
    {
        using var folder = new TemporaryFolder();
        foreach (var chapters in Some)
        {
            var file = folder.In("chapters.ffmetadata");
            File.WriteAllText(file, FfMetadata.Write(chapters));

            using var read = JsonDocument.Parse(Probe(file));
            var found = read.RootElement.GetProperty("chapters").EnumerateArray().ToList();

            Assert.Equal(chapters.Chapters.Select(chapter => chapter.Title), found.Select(chapter => chapter.GetProperty("tags").GetProperty("title").GetString()));
            Assert.Equal(
                chapters.Chapters.Select(chapter => Math.Floor(chapter.At.TotalMilliseconds) / 1000),
                found.Select(chapter => double.Parse(chapter.GetProperty("start_time").GetString()!, CultureInfo.InvariantCulture)));
            Assert.All(found.Zip(found.Skip(1)), pair => Assert.Equal(pair.First.GetProperty("end_time").GetString(), pair.Second.GetProperty("start_time").GetString()));
            if (chapters.Title.Length > 0)
                Assert.Equal(chapters.Title, read.RootElement.GetProperty("format").GetProperty("tags").GetProperty("title").GetString());
        }
    }

    [Fact]
    public void Ffmpeg_reads_webvtt_as_so_many_cues_with_their_times()
    {
        using var folder = new TemporaryFolder();
        foreach (var chapters in Some)
        {
            var file = folder.In("chapters.vtt");
            File.WriteAllText(file, WebVtt.Write(chapters));

            using var read = JsonDocument.Parse(Probe(file, "-show_packets"));
            var cues = read.RootElement.GetProperty("packets").EnumerateArray().ToList();

            Assert.Equal(
                chapters.Chapters.Select(chapter => Math.Floor(chapter.At.TotalMilliseconds) / 1000),
                cues.Select(cue => double.Parse(cue.GetProperty("pts_time").GetString()!, CultureInfo.InvariantCulture)));
            Assert.All(cues, cue => Assert.True(double.Parse(cue.GetProperty("duration_time").GetString()!, CultureInfo.InvariantCulture) > 0));
        }
    }

    // The fields as the JSON chapters format 1.2.0 of the open podcast namespace lists them, from memory of its text: version and chapters
    // are required; of a chapter startTime is, a number of seconds; title is a text.
    [Fact]
    public void Json_chapters_have_the_fields_of_version_1_2_0()
    {
        foreach (var chapters in Some)
        {
            using var document = JsonDocument.Parse(JsonChapters.Write(chapters));
            var root = document.RootElement;

            Assert.Equal("1.2.0", root.GetProperty("version").GetString());
            Assert.All(root.EnumerateObject(), field => Assert.True(field.Name is "version" or "chapters" or "title"));
            var starts = root.GetProperty("chapters").EnumerateArray().Select(chapter =>
            {
                Assert.Equal(["startTime", "title"], chapter.EnumerateObject().Select(field => field.Name));
                Assert.Equal(JsonValueKind.String, chapter.GetProperty("title").ValueKind);
                return chapter.GetProperty("startTime").GetDouble();
            }).ToList();
            Assert.Equal(chapters.Chapters.Select(chapter => Math.Round(chapter.At.TotalSeconds, 3)), starts);
            Assert.Equal(starts.Order().Distinct(), starts);
        }
    }

    [Fact]
    public void An_edit_list_has_a_marker_at_the_frame_of_each_chapter()
    {
        foreach (var rate in FrameRate.All)
        {
            foreach (var chapters in Some)
            {
                var lines = EditList.Write(chapters, rate).Split('\n');
                Assert.StartsWith("TITLE: ", lines[0], StringComparison.Ordinal);
                Assert.Equal("FCM: NON-DROP FRAME", lines[1]);
                var markers = lines.Select(line => Marker().Match(line)).Where(marker => marker.Success).ToList();
                var events = lines.Where(line => Edit().IsMatch(line)).ToList();

                Assert.Equal((chapters.Chapters.Length, chapters.Chapters.Length), (markers.Count, events.Count));
                Assert.All(lines, line => Assert.All(line, letter => Assert.InRange(letter, ' ', '~')));
                Assert.All(markers.Zip(chapters.Chapters), pair =>
                {
                    var parts = pair.First.Groups.Values.Skip(1).Take(4).Select(part => int.Parse(part.Value, CultureInfo.InvariantCulture)).ToList();
                    var frames = ((parts[0] * 60L + parts[1]) * 60 + parts[2]) * rate.Nominal + parts[3];
                    Assert.True(parts[3] < rate.Nominal);
                    Assert.InRange(frames / rate.PerSecond - pair.Second.At.TotalSeconds, -0.5 / rate.PerSecond - 1e-6, 0.5 / rate.PerSecond + 1e-6);
                });
            }
        }
    }

    // 3600 s at 30000/1001 frames a second are 107,892.1 frames, which is 00:59:56:12 of timecode that drops no numbers (by arithmetic).
    [Theory]
    [InlineData("25", 3600, "01:00:00:00")]
    [InlineData("29.97", 3600, "00:59:56:12")]
    [InlineData("50", 0.5, "00:00:00:25")]
    public void Timecode_counts_frames(string rate, double seconds, string expected) =>
        Assert.Equal(expected, FrameRate.All.Single(each => each.Name == rate).Timecode(TimeSpan.FromSeconds(seconds)));

    [GeneratedRegex(@"^((?:\d+:)?\d{1,2}:\d\d) (\S.*)$")]
    private static partial Regex ListLine();

    [GeneratedRegex(@"^\* LOC: (\d\d):(\d\d):(\d\d):(\d\d) [A-Z]+ +\S")]
    private static partial Regex Marker();

    [GeneratedRegex(@"^\d{3}  \S{1,8} +V +C +(\d\d:){3}\d\d (\d\d:){3}\d\d (\d\d:){3}\d\d (\d\d:){3}\d\d$")]
    private static partial Regex Edit();

    private static string Probe(string file, params string[] more) =>
        DebianPackages.Ffmpeg.Run("ffprobe", ["-v", "error", "-of", "json", "-show_chapters", "-show_format", .. more, file]);
}
