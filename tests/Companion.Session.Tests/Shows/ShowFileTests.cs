using System.Security.Cryptography;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Companion.Session.Events;
using Companion.Session.Events.Storage;
using Companion.Session.Shows;
using Companion.Session.Shows.Files;

namespace Companion.Session.Tests.Shows;

public sealed class ShowFileTests
{
    /// <summary>A file of version 1, with every kind of event there was then. It is never edited.</summary>
    private static readonly byte[] Golden = File.ReadAllBytes(InTests("Shows", "golden-show-1.json"));

    [Fact]
    public void A_file_of_version_1_is_read_and_its_hash_is_the_one_that_another_program_gives()
    {
        var reading = ShowFileReader.Read(Golden);

        Assert.Empty(reading.Faults);
        Assert.Null(reading.Missing);
        Assert.Equal(("Signal station", -1.5), (reading.Show!.Title, reading.Show.Offset.TotalSeconds));
        Assert.Equal([new(TimeSpan.Zero, "Givens"), new(TimeSpan.FromSeconds(20.25), "Claiming")], reading.File!.Chapters!.Value);

        // The log of the same events is a text of the lines that are hashed: as sha256sum (GNU coreutils) has it. Kinds of later versions
        // stand behind those that the file has.
        var log = File.ReadLines(InTests("Events", "golden-log.txt")).Take(reading.File.Events.Length);
        var bytes = Encoding.UTF8.GetBytes(string.Concat(log.Select(line => line + "\n")));
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(bytes)), ShowHash.Of(reading.File.Events));
        Assert.Equal("7e1fe44654bc23655595038a2b48d6c079b1ae51e9ff88fbe777770776c0f8aa", ShowHash.Of(reading.File.Events));
    }

    [Fact]
    public void It_is_written_again_as_it_was() => Assert.Equal(Encoding.UTF8.GetString(Golden), Encoding.UTF8.GetString(Written(ShowFileReader.Read(Golden).File!)));

    [Theory]
    [MemberData(nameof(ReplayTests.Seeds), MemberType = typeof(ReplayTests))]
    public void Every_show_comes_back_from_its_file_with_the_same_states_and_hash(int seed)
    {
        foreach (var (_, events) in StoredShowTests.ShowsOf(RandomSession.Of(seed, commands: 120).Log))
        {
            var file = FileOf(events);
            var reading = ShowFileReader.Read(Written(file));

            Assert.Empty(reading.Faults);
            Assert.Equal(StoredShow.Replay(events).Last, reading.Show!.Last);
            Assert.Equal(ShowHash.Of(file.Events), ShowHash.Of(reading.File!.Events));
        }
    }

    [Fact]
    public void A_file_that_some_program_has_laid_out_anew_is_the_same_show()
    {
        var laidOut = JsonNode.Parse(Golden)!.ToJsonString(new JsonSerializerOptions { WriteIndented = true });

        Assert.Empty(ShowFileReader.Read(Encoding.UTF8.GetBytes(laidOut)).Faults);
    }

    [Fact]
    public void A_file_that_is_cut_anywhere_is_read_up_to_its_last_whole_event()
    {
        var ends = EndsOf(Golden);
        var whole = ShowFileReader.Read(Golden).File!.Events;
        for (var length = 0; length < Golden.Length - 1; length++)
            Cut(Golden, length, ends, whole);
    }

    [Theory]
    [MemberData(nameof(ReplayTests.Seeds), MemberType = typeof(ReplayTests))]
    public void A_long_file_that_is_cut_anywhere_is_read_up_to_its_last_whole_event(int seed)
    {
        var file = FileOf(StoredShowTests.ShowsOf(RandomSession.Of(seed, commands: 400).Log)[0].Events);
        var bytes = Written(file);
        var (ends, random) = (EndsOf(bytes), new Random(seed));
        for (var cut = 0; cut < 20; cut++)
            Cut(bytes, random.Next(bytes.Length - 1), ends, file.Events);
    }

    [Theory]
    [InlineData("\"version\":1", "\"version\":2", "newer version")]
    [InlineData("\"format\":\"companion-show\"", "\"format\":\"cookbook\"", "no show file")]
    [InlineData("digit-placed", "digit-sung", "'digit-sung'")]
    [InlineData("\"cell\":\"r3c2\"", "\"cell\":\"r4c2\"", "hash")]
    [InlineData("\"at\":20.25", "\"at\":\"later\"", "no show file")]
    [InlineData("\"at\":20.25", "\"at\":1e300", "no show file")]
    [InlineData("\"offset\":-1.5", "\"offset\":1e9", "offset")]
    [InlineData("\"kind\":\"grid-cleared\"", "\"kind\":7", "no kind and body")]
    [InlineData("{\"at\":0,\"title\":\"Givens\"}", "null", "no show file")]
    [InlineData("\"title\":\"Signal station\"", "\"title\":7", "no show file")]
    public void What_is_no_show_file_is_refused_with_the_reason(string old, string changed, string reason)
    {
        var text = Encoding.UTF8.GetString(Golden);
        Assert.Contains(old, text, StringComparison.Ordinal);

        var reading = ShowFileReader.Read(Encoding.UTF8.GetBytes(text.Replace(old, changed, StringComparison.Ordinal)));

        Assert.Null(reading.Show);
        Assert.Contains(reason, string.Join(' ', reading.Faults), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("A shopping list.")]
    [InlineData("[]")]
    [InlineData("7")]
    [InlineData("{}")]
    [InlineData("{\"format\":\"companion-show\",\"version\":1,\"events\":{}}")]
    [InlineData("{\"format\":\"companion-show\",\"version\":1,\"events\":[]}")]
    [InlineData("\uFEFF{\"format\"")]
    public void Other_bytes_are_refused_plainly(string text) => Assert.NotEmpty(ShowFileReader.Read(Encoding.UTF8.GetBytes(text)).Faults);

    [Fact]
    public void A_file_of_two_shows_and_one_that_is_too_large_are_refused()
    {
        Event[] two = [new MarksSettled(PlayedSession.Start), new ShowBegun(PlayedSession.Start, "", 0, 0)];

        Assert.Contains("another show", Assert.Single(ShowFileReader.Read(Written(FileOf(two))).Faults), StringComparison.Ordinal);
        Assert.Contains("64 MB", Assert.Single(ShowFileReader.Read(new byte[ShowFile.LargestBytes + 1]).Faults), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(ReplayTests.Seeds), MemberType = typeof(ReplayTests))]
    public void Changed_bytes_are_refused_or_read_and_never_fail(int seed)
    {
        var random = new Random(seed);
        for (var round = 0; round < 60; round++)
        {
            var bytes = Golden.ToArray();
            for (var changes = random.Next(1, 4); changes > 0; changes--)
                bytes[random.Next(bytes.Length)] = (byte)random.Next(256);

            var reading = ShowFileReader.Read(bytes);

            Assert.Equal(reading.Faults.IsEmpty, reading.Show is not null);
        }
    }

    private static void Cut(byte[] bytes, int length, List<int> ends, IReadOnlyList<StoredEvent> whole)
    {
        // An event is whole with its closing brace, before the comma or the line's end behind it.
        var expected = ends.Count(end => end <= length);
        var reading = ShowFileReader.Read(bytes.AsSpan(0, length));
        if (expected == 0)
        {
            Assert.NotEmpty(reading.Faults);
            return;
        }

        Assert.Equal(whole.Take(expected), reading.File!.Events);
        Assert.Contains($"after event {expected} of {whole.Count}", reading.Missing, StringComparison.Ordinal);
    }

    // Where each event ends: a line holds one, but for the first line and the last.
    private static List<int> EndsOf(byte[] bytes)
    {
        var ends = new List<int>();
        for (var index = Array.IndexOf(bytes, (byte)'\n') + 1; index < bytes.Length; index++)
        {
            if (bytes[index] == '\n' && bytes[index - 1] is (byte)',' or (byte)'}')
                ends.Add(bytes[index - 1] == ',' ? index - 1 : index);
        }

        ends.RemoveAt(ends.Count - 1);
        return ends;
    }

    private static ShowFile FileOf(IEnumerable<Event> events) => new(null, TimeSpan.Zero, null, [.. events.Select(EventText.Write)]);

    private static byte[] Written(ShowFile file)
    {
        using var output = new MemoryStream();
        ShowFileWriter.Write(file, output);
        return output.ToArray();
    }

    private static string InTests(params ReadOnlySpan<string> names) =>
        Path.Combine([Repository.Root, "tests", "Companion.Session.Tests", .. names]);
}
