using System.Text.Json;
using Companion.Server.Data;
using Companion.Server.Log;
using Companion.Server.Shows;
using Companion.Server.Tests.AfterShow;
using Companion.Server.Tests.Running;
using Companion.Session.Events;

namespace Companion.Server.Tests.CommandLine;

public sealed class ShowsCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public ShowsCommandTests()
    {
        using var log = SqliteEventLog.Open(DataFolder.Open(_folder.Path));
        var show = MadeShow.Of(4, recorded: true);
        log.Append(0, show.Events);
        log.Append(show.Events.Length, [new ShowBegun(show.Began.AddDays(1), "Second evening", 99, 1)]);
    }

    [Fact]
    public async Task Shows_are_listed_for_people_and_for_programs()
    {
        var (code, output, _) = await Cli.Run("shows", "--data", _folder.Path);
        Assert.Equal(0, code);
        Assert.Equal(2, output.TrimEnd().Split('\n').Length);
        Assert.Contains("Second evening: 0 entries, goes on now", output, StringComparison.Ordinal);

        using var list = JsonDocument.Parse((await Cli.Run("shows", "--json", "--data", _folder.Path)).Output);
        Assert.Equal("Lanterns", list.RootElement[0].GetProperty("title").GetString());
    }

    [Fact]
    public async Task A_show_goes_out_into_a_file_of_its_owner_and_comes_back()
    {
        var file = _folder.In("evening.json");

        // Open to others before: the show is closed to them all the same.
        await File.WriteAllTextAsync(file, "", TestContext.Current.CancellationToken);
        Assert.Equal((0, $"Written to {file}.\n", ""), await Cli.Run("shows", "export", "1", "--out", file, "--data", _folder.Path));
        if (!OperatingSystem.IsWindows())
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(file));
        Assert.Equal((0, "Kept as show 3.\n", ""), await Cli.Run("shows", "import", file, "--data", _folder.Path));

        await File.WriteAllTextAsync(file, "A shopping list.", TestContext.Current.CancellationToken);
        var (code, _, error) = await Cli.Run("shows", "import", file, "--data", _folder.Path);
        Assert.Equal(2, code);
        Assert.Contains("no show file", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("list", "0:00 ")]
    [InlineData("webvtt", "WEBVTT\n")]
    [InlineData("ffmetadata", ";FFMETADATA1\n")]
    [InlineData("json", "{\n  \"version\": \"1.2.0\"")]
    [InlineData("edl", "TITLE: Lanterns\n")]
    public async Task Chapters_are_written_in_every_form(string format, string beginning)
    {
        var (code, output, _) = await Cli.Run("chapters", "1", "--format", format, "--data", _folder.Path);
        Assert.Equal(0, code);
        Assert.StartsWith(beginning, output.ReplaceLineEndings("\n"), StringComparison.Ordinal);

        var file = _folder.In("chapters");
        await Cli.Run("chapters", "1", "--format", format, "--out", file, "--data", _folder.Path);
        Assert.Equal(output, await File.ReadAllTextAsync(file, TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_corrected_offset_moves_the_chapters()
    {
        var before = (await Cli.Run("chapters", "1", "--format", "ffmetadata", "--data", _folder.Path)).Output;
        Assert.Equal(0, (await Cli.Run("shows", "offset", "1", "90", "--data", _folder.Path)).ExitCode);

        Assert.NotEqual(before, (await Cli.Run("chapters", "1", "--format", "ffmetadata", "--data", _folder.Path)).Output);
    }

    [Fact]
    public async Task An_offset_is_set_of_the_latest_show_too()
    {
        Assert.Equal((0, "", ""), await Cli.Run("shows", "offset", "latest", "-1.5", "--data", _folder.Path));

        var library = new ShowLibrary(DataFolder.Open(_folder.Path));
        Assert.Equal(TimeSpan.FromSeconds(-1.5), library.Open("2").Show.Offset);
    }

    [Fact]
    public async Task A_show_that_was_ended_does_not_go_on_now()
    {
        using (var log = SqliteEventLog.Open(DataFolder.Open(_folder.Path)))
            log.Append(log.Restore().Sequence, [new ShowEnded(MadeShow.Of(4).Began.AddDays(2))]);

        var (_, output, _) = await Cli.Run("shows", "--data", _folder.Path);

        Assert.Contains("Second evening: 0 entries, ended", output, StringComparison.Ordinal);
        Assert.DoesNotContain("goes on now", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_show_file_that_was_cut_off_still_has_chapters_and_what_is_missing_is_said()
    {
        var file = _folder.In("evening.json");
        await Cli.Run("shows", "export", "1", "--out", file, "--data", _folder.Path);
        var bytes = await File.ReadAllBytesAsync(file, TestContext.Current.CancellationToken);
        await File.WriteAllBytesAsync(file, bytes[..(bytes.Length * 3 / 4)], TestContext.Current.CancellationToken);

        var (code, output, error) = await Cli.Run("chapters", file, "--data", _folder.Path);

        Assert.Equal(0, code);
        Assert.StartsWith("0:00 ", output, StringComparison.Ordinal);
        Assert.Contains("cut off after event", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("2", "", "/stage?show=2#k=")]
    [InlineData("latest", "4", "/stage?show=latest&speed=4#k=")]
    public async Task A_replay_has_a_link_of_its_own(string show, string speed, string expected)
    {
        string[] words = ["replay", show, "--data", _folder.Path, .. speed.Length > 0 ? new[] { "--speed", speed } : []];
        var (code, output, _) = await Cli.Run(words);

        Assert.Equal(0, code);
        Assert.Contains(expected, output, StringComparison.Ordinal);
        Assert.Matches("#k=[A-Za-z0-9_-]{43}\n$", output);
    }

    [Theory]
    [InlineData("no show 9", "chapters", "9")]
    [InlineData("--format takes list, webvtt", "chapters", "1", "--format", "song")]
    [InlineData("--fps takes one of 25", "chapters", "1", "--fps", "26")]
    [InlineData("--speed takes a number from 0.1 to 1000", "replay", "1", "--speed", "fast")]
    [InlineData("no show 9", "shows", "offset", "9", "1")]
    [InlineData("no show first", "shows", "offset", "first", "1")]
    [InlineData("The offset is a number of seconds such as 3 or -1.5 and not 'abc'.", "shows", "offset", "1", "abc")]
    [InlineData("--format takes srt or vtt and not 'txt'.", "captions", "1", "--format", "txt")]
    [InlineData("There is no show file 'nowhere.json' that can be read: name one that 'companion shows export' has written.\n", "shows", "import", "nowhere.json")]
    public async Task What_cannot_be_done_is_said_plainly(string reason, params string[] words)
    {
        var (code, _, error) = await Cli.Run([.. words, "--data", _folder.Path]);

        Assert.Equal(2, code);
        Assert.Contains(reason, error, StringComparison.Ordinal);
    }

    public void Dispose() => _folder.Dispose();
}
