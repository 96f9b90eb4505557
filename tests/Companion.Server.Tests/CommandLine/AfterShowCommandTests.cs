using System.Text.RegularExpressions;
using System.Xml.Linq;
using Companion.Server.Data;
using Companion.Server.Log;
using Companion.Server.Tests.AfterShow;
using Companion.Server.Tests.Running;
using Companion.Session.Events;
using SkiaSharp;

namespace Companion.Server.Tests.CommandLine;

public sealed class AfterShowCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public AfterShowCommandTests()
    {
        using var log = SqliteEventLog.Open(DataFolder.Open(_folder.Path));
        log.Append(0, AiredShow.Of(3).Events);
    }

    [Fact]
    public async Task A_description_has_credit_link_and_chapters()
    {
        var (code, output, _) = await Cli.Run("description", "latest", "--data", _folder.Path);

        Assert.Equal(0, code);
        Assert.Contains("Puzzle: set by A. Setter, https://example.org/lanterns\n", output, StringComparison.Ordinal);
        var chapters = (await Cli.Run("chapters", "latest", "--data", _folder.Path)).Output;
        Assert.EndsWith("\nChapters\n" + chapters, output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("srt", "1\n00:")]
    [InlineData("vtt", "WEBVTT\n\n00:")]
    public async Task Captions_are_printed_or_written(string format, string beginning)
    {
        var (code, output, _) = await Cli.Run("captions", "1", "--format", format, "--data", _folder.Path);
        Assert.Equal(0, code);
        Assert.StartsWith(beginning, output, StringComparison.Ordinal);

        await Cli.Run("captions", "1", "--format", format, "--data", _folder.Path, "--out", _folder.In("captions"));
        Assert.Equal(output, await File.ReadAllTextAsync(_folder.In("captions"), TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_contact_sheet_has_as_many_sheets_as_it_needs()
    {
        Assert.Equal(0, (await Cli.Run("contact-sheet", "1", "--data", _folder.Path, "--out", _folder.In("all.png"))).ExitCode);
        var (code, output, _) = await Cli.Run("contact-sheet", "1", "--per-sheet", "2", "--data", _folder.Path, "--out", _folder.In("two.svg"));
        Assert.Equal(0, code);
        Assert.Contains("two-2.svg", output, StringComparison.Ordinal);
        using var sheet = SKBitmap.Decode(_folder.In("all.png"));
        Assert.Equal((1920, 1080), (sheet.Width, sheet.Height));
    }

    // A show of so many hard puzzles that looking at it takes many seconds. Ctrl+C does what TERM does.
    [Fact]
    public async Task A_recap_that_is_stopped_leaves_every_file_as_it_was()
    {
        using var folder = new TemporaryFolder();
        var at = new DateTimeOffset(2026, 1, 1, 20, 0, 0, TimeSpan.Zero);
        using (var log = SqliteEventLog.Open(DataFolder.Open(folder.Path)))
            log.Append(0, [.. Enumerable.Range(0, 600).Select(index => new PuzzleLoaded(at.AddMinutes(index), Grids.EssayTwo, "", "", ""))]);
        await File.WriteAllTextAsync(_folder.In("recap.pdf"), "of last week", TestContext.Current.CancellationToken);
        var before = Directory.GetFileSystemEntries(_folder.Path);

        var (code, said) = await CompanionProcess.Interrupt(
            "-TERM", "recap", "latest", "--data", folder.Path, "--pdf", _folder.In("recap.pdf"), "--html", _folder.In("recap.html"), "--md", _folder.In("recap.md"));

        Assert.Equal(2, code);
        Assert.StartsWith("Looking at every moment again: ", said, StringComparison.Ordinal);
        Assert.EndsWith("Stopped; no file was written.\n", said, StringComparison.Ordinal);
        Assert.Equal(before, Directory.GetFileSystemEntries(_folder.Path));
        Assert.Equal("of last week", await File.ReadAllTextAsync(_folder.In("recap.pdf"), TestContext.Current.CancellationToken));
    }

    [Fact]
    public async Task A_recap_goes_into_each_file_that_is_named_and_is_printed_where_none_is()
    {
        var (code, output, _) = await Cli.Run(
            "recap", "1", "--stop-at", "xy-wing", "--data", _folder.Path, "--pdf", _folder.In("recap.pdf"), "--html", _folder.In("recap.html"), "--md", _folder.In("recap.md"));

        Assert.Equal(0, code);
        Assert.Equal($"Written to {_folder.In("recap.html")}.\nWritten to {_folder.In("recap.pdf")}.\nWritten to {_folder.In("recap.md")}.\n", output);

        // Without the links to its pictures, which are there, the file is what is printed.
        var text = await File.ReadAllTextAsync(_folder.In("recap.md"), TestContext.Current.CancellationToken);
        var links = Regex.Matches(text, @"\n *!\[.+\]\((.+)\)\n");
        Assert.Equal(
            links.Select(link => _folder.In(link.Groups[1].Value)).Order(),
            Directory.GetFiles(_folder.Path, "recap-*").Order());
        Assert.True(links.Count > 1);
        foreach (var link in links.SkipLast(1))
        {
            using var picture = SKBitmap.Decode(_folder.In(link.Groups[1].Value));
            Assert.True(picture.Width > picture.Height);
        }

        Assert.Equal("svg", XDocument.Load(_folder.In(links[^1].Groups[1].Value)).Root!.Name.LocalName);
        Assert.Equal(
            Regex.Replace(text, @"\n *!\[.+\]\(.+\)\n", ""),
            (await Cli.Run("recap", "1", "--stop-at", "xy-wing", "--data", _folder.Path)).Output);
    }

    [Theory]
    [InlineData("recap", "1", "--pdf")]
    [InlineData("chapters", "1", "--out")]
    [InlineData("captions", "1", "--out")]
    [InlineData("description", "1", "--out")]
    [InlineData("shows", "export", "1", "--out")]
    public async Task A_file_that_cannot_be_written_is_said_before_any_work(params string[] words)
    {
        var file = _folder.In("nowhere", "file.txt");

        Assert.Equal(
            (2, "", $"The file {file} cannot be written: name another one with {words[^1]}.\n"),
            await Cli.Run([.. words, file, "--data", _folder.Path]));
    }

    [Theory]
    [InlineData("recap", "1", "--pdf")]
    [InlineData("sheet", "--rule", "xy-wing", "--pdf")]
    public async Task Two_options_that_name_one_file_are_refused(params string[] words)
    {
        Assert.Equal(
            (2, "", $"{(words[0] == "recap" ? "--html and --pdf" : "--pdf and --html")} name the same file {_folder.In("one")}: give each a file of its own.\n"),
            await Cli.Run([.. words, _folder.In("one"), "--html", _folder.In("one"), "--data", _folder.Path]));
        Assert.False(File.Exists(_folder.In("one")));
    }

    [Fact]
    public async Task Where_there_is_nothing_it_is_said()
    {
        using var folder = new TemporaryFolder();
        Assert.Equal(
            (0, "", $"No show was kept in {folder.Path} yet: play one, import one, or name another folder with --data.\n"),
            await Cli.Run("shows", "--data", folder.Path));

        using (var log = SqliteEventLog.Open(DataFolder.Open(folder.Path)))
            log.Append(0, [new PuzzleLoaded(DateTimeOffset.UnixEpoch, Grids.EssayOne, "Lanterns", "", "")]);
        Assert.Equal(
            (0, "WEBVTT\n\n", "Nothing was on air or called out in this show: there are no captions.\n"),
            await Cli.Run("captions", "latest", "--data", folder.Path));
        Assert.Contains("Lanterns: 0 entries, goes on now", (await Cli.Run("shows", "--data", folder.Path)).Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("recap")]
    [InlineData("chapters")]
    [InlineData("captions")]
    [InlineData("description")]
    [InlineData("contact-sheet", "--out", "sheet.png")]
    [InlineData("still", "--out", "still.png", "--show")]
    [InlineData("thumbnail", "--out", "thumb.png", "--show")]
    [InlineData("sheet", "--rule", "xy-wing", "--from")]
    public async Task A_show_that_is_not_there_is_said_in_one_sentence(params string[] words)
    {
        Assert.Equal((2, "", "There is no show 9: 'companion shows' lists them.\n"), await Cli.Run([.. words, "9", "--data", _folder.Path]));
    }

    [Fact]
    public async Task Any_moment_of_a_show_is_drawn()
    {
        await Draw("first.png", "--show", "1", "--step", "1");
        await Draw("last.png", "--show", "latest");
        await Draw("begin.png", "--show", "1", "--at", "0:00");
        Assert.NotEqual(await Bytes("first.png"), await Bytes("last.png"));
        Assert.Equal(await Bytes("first.png"), await Bytes("begin.png"));

        var (code, _, error) = await Cli.Run("still", "--show", "1", "--step", "100000", "--data", _folder.Path, "--out", _folder.In("x.png"));
        Assert.Equal(2, code);
        Assert.Contains("no number 100000", error, StringComparison.Ordinal);
        Assert.Equal(2, (await Cli.Run("still", "--at", "soon", "--out", _folder.In("x.png"))).ExitCode);
        Assert.Equal(2, (await Cli.Run("still", MadeShow.Lanterns, "--step", "1", "--out", _folder.In("x.png"))).ExitCode);
        Assert.False(File.Exists(_folder.In("x.png")));
    }

    public void Dispose() => _folder.Dispose();

    private async Task Draw(string file, params string[] words)
    {
        var (code, _, error) = await Cli.Run(["still", .. words, "--data", _folder.Path, "--out", _folder.In(file)]);
        Assert.Equal("", error);
        Assert.Equal(0, code);
    }

    private Task<byte[]> Bytes(string file) => File.ReadAllBytesAsync(_folder.In(file), TestContext.Current.CancellationToken);
}
