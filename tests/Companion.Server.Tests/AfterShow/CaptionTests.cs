using System.Globalization;
using Companion.Server.Tests.Running;
using Companion.Session.AfterShow;
using Companion.Session.Views;

namespace Companion.Server.Tests.AfterShow;

public sealed class CaptionTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public static TheoryData<int> Seeds => [.. Enumerable.Range(2, 5)];

    [Fact]
    public void A_call_out_of_twelve_words_stands_four_and_a_half_seconds() =>
        Assert.Equal(TimeSpan.FromSeconds(4.5), Caption.ReadingTime("one two three four five six seven eight nine ten eleven twelve"));

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Each_stands_long_enough_and_none_begins_before_the_last_is_over_or_was_said(int seed)
    {
        var captions = Captions.Of(AiredShow.Of(seed), new Voice(MadeShow.Wording));

        Assert.All(captions, caption => Assert.True(caption.To - caption.From >= Caption.ReadingTime(caption.Text)));
        Assert.All(captions.Zip(captions.Skip(1)), pair => Assert.True(pair.Second.From >= pair.First.To));
        Assert.Equal(
            AiredShow.Of(seed).Events.Count(happened => happened is Session.Events.PutOnAir or Session.Events.CueTurned), captions.Length);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Ffprobe_reads_every_caption_at_its_time_in_both_formats(int seed)
    {
        var captions = Captions.Of(AiredShow.Of(seed), new Voice(MadeShow.Wording));
        Assert.SkipWhen(captions.IsEmpty, "Nothing was said in this show.");
        foreach (var (name, text) in new[] { ("captions.srt", CaptionFile.Srt(captions)), ("captions.vtt", CaptionFile.WebVtt(captions)) })
        {
            File.WriteAllText(_folder.In(name), text);
            var packets = DebianPackages.Ffmpeg.Run(
                "ffprobe", ["-v", "error", "-show_entries", "packet=pts_time,duration_time", "-of", "csv=p=0", _folder.In(name)]);
            var read = packets.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => line.Split(',')).ToList();

            Assert.Equal(captions.Length, read.Count);
            Assert.All(captions.Zip(read), pair =>
            {
                Assert.Equal(pair.First.From.TotalSeconds, double.Parse(pair.Second[0], CultureInfo.InvariantCulture), 3);
                Assert.Equal((pair.First.To - pair.First.From).TotalSeconds, double.Parse(pair.Second[1], CultureInfo.InvariantCulture), 3);
            });
        }
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void The_webvtt_parser_of_the_w3c_finds_every_caption_with_its_words_and_nothing_wrong(int seed)
    {
        var captions = Captions.Of(AiredShow.Of(seed), new Voice(MadeShow.Wording));
        Assert.SkipWhen(captions.IsEmpty, "Nothing was said in this show.");
        File.WriteAllText(_folder.In("captions.vtt"), CaptionFile.WebVtt(captions));
        var (cues, errors) = WebVttReader.Read("captions", _folder.In("captions.vtt"));

        Assert.Empty(errors);
        Assert.Equal(
            captions.Select(caption => (caption.From.TotalSeconds, caption.To.TotalSeconds, caption.Text)),
            cues.Select(cue => (cue.Start, cue.End, cue.Text.Replace('\n', ' '))));
    }

    public void Dispose() => _folder.Dispose();
}
