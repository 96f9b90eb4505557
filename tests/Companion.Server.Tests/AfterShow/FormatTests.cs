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
    public void The_webvtt_parser_of_the_w3c_finds_every_chapter_with_its_times_and_title_and_nothing_wrong()
    {
        using var folder = new TemporaryFolder();
        foreach (var chapters in Some)
        {
            var file = folder.In("chapters.vtt");
            File.WriteAllText(file, WebVtt.Write(chapters));
            var (cues, errors) = WebVttReader.Read("chapters", file);

            Assert.Empty(errors);
            Assert.Equal(chapters.Chapters.Select(chapter => chapter.Title), cues.Select(cue => cue.Text));
            Assert.Equal(chapters.Chapters.Select(chapter => Math.Floor(chapter.At.TotalMilliseconds) / 1000), cues.Select(cue => cue.Start));
            Assert.Equal(cues.Skip(1).Select(cue => cue.Start), cues.SkipLast(1).Select(cue => cue.End));
        }
    }

    // Without this the test above could not fail: what is wrong is found.
    [Theory]
    [InlineData("WEBVTT\n\n00:01.000 --> 00:02.000\nA <b>title</b>\n", "tags not allowed")]
    [InlineData("WEBVTT\n\n00:02.000 --> 00:01.000\nA title\n", "not greater than start")]
    [InlineData("00:01.000 --> 00:02.000\nA title\n", "signature")]
    public void That_parser_finds_what_is_wrong(string text, string error)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder.In("wrong.vtt"), text);

        Assert.Contains(WebVttReader.Read("chapters", folder.In("wrong.vtt")).Errors, found => found.Contains(error, StringComparison.Ordinal));
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

    // The fields as the published specification has them (Podcastindex-org/podcast-namespace, docs/examples/chapters/jsonChapters.md,
    // "JSON Chapters Format", version 1.2 of 2021-04-15): version, a text, and chapters, an array, are required; title is one of the
    // optional texts; of a chapter startTime, a number of seconds, is required and title an optional text; chapters ascend by startTime.
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

    // From memory of how cutting programs write and read them: no package that the tests could bring was found to read such lists.
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
