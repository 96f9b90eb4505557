using System.Globalization;
using Companion.Engine.Proofs;
using Companion.Server.Tests.Running;
using Companion.Session.AfterShow;
using Companion.Session.Events;
using Companion.Session.Shows;
using Companion.Session.State;
using Companion.Session.Views;

namespace Companion.Server.Tests.AfterShow;

public sealed class CaptionTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public static TheoryData<int> Seeds => [.. Enumerable.Range(2, 5)];

    [Fact]
    public void A_call_out_of_twelve_words_stands_four_and_a_half_seconds() =>
        Assert.Equal(TimeSpan.FromSeconds(4.5), Caption.ReadingTime("one two three four five six seven eight nine ten eleven twelve"));

    // Each deduction is put on air twice, the second time in full, and cleared a second later, when words are called out.
    [Theory]
    [MemberData(nameof(Seeds))]
    public void None_begins_before_the_last_is_over_or_was_said_and_each_but_a_lower_grade_stands_for_a_time(int seed)
    {
        var show = AiredShow.Of(seed);
        var captions = Captions.Of(show, new Voice(MadeShow.Wording));

        Assert.All(captions.Zip(captions.Skip(1)), pair => Assert.True(pair.Second.From >= pair.First.To));
        var (full, called) = (
            show.Events.Count(happened => happened is PutOnAir { Grade: Grade.Why }), show.Events.Count(happened => happened is CueTurned));
        Assert.InRange(captions.Length, full + called, full + full + called);
        Assert.Equal(called, captions.Count(caption => caption.Text.StartsWith("</p>", StringComparison.Ordinal)
            && caption.To - caption.From >= Caption.ReadingTime(caption.Text)));
        Assert.InRange(captions.Count(caption => caption.To - caption.From >= Caption.Least), full + called, captions.Length);
    }

    [Fact]
    public void A_further_grade_takes_the_place_of_the_one_before_at_once_and_what_is_off_air_makes_place()
    {
        var (at, step) = (MadeShow.Whole().Began, MadeShow.Steps[0]);
        var captions = Captions.Of(
            StoredShow.Replay(
            [
                new PuzzleLoaded(at, MadeShow.Lanterns, "Lanterns", "", ""),
                new PutOnAir(at.AddSeconds(10), step, Grade.Where),
                new PutOnAir(at.AddSeconds(11), step, Grade.Why),
                new AirCleared(at.AddSeconds(12)),
                new TextCued(at.AddSeconds(12), 1, "Now the wing"),
                new CueTurned(at.AddSeconds(13), 1, CueStage.Done),
                new TextCued(at.AddSeconds(13), 2, "And on"),
                new CueTurned(at.AddSeconds(13.5), 2, CueStage.Done),
            ]),
            new Voice(MadeShow.Wording));

        Assert.Equal(
            [(10, 11), (11, 13), (13, 14.5), (14.5, 16)],
            captions.Select(caption => (caption.From.TotalSeconds, caption.To.TotalSeconds)));
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
