using Companion.Server.AfterShow;
using Companion.Server.Data;
using Companion.Server.Log;
using Companion.Server.Tests.AfterShow;
using Companion.Server.Tests.Running;
using SkiaSharp;

namespace Companion.Server.Tests.CommandLine;

public sealed class StillCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    [Fact]
    public async Task A_grid_is_drawn_in_the_size_asked_for_and_with_a_deduction_it_looks_different()
    {
        await Draw("bare.png", Grids.EssayOne, "--size", "640x360");
        await Draw("why.png", Grids.EssayOne, "--size", "640x360", "--deduction", "1");
        await Draw("where.png", Grids.EssayOne, "--size", "640x360", "--deduction", "1", "--grade", "1");
        await Draw("dark.png", Grids.EssayOne, "--size", "640x360", "--theme", "dark");

        Assert.All(["bare.png", "why.png", "where.png", "dark.png"], file =>
        {
            using var picture = SKBitmap.Decode(_folder.In(file));
            Assert.Equal((640, 360), (picture.Width, picture.Height));
        });
        Assert.Distinct(Directory.GetFiles(_folder.Path, "*.png").Select(file => Convert.ToHexString(File.ReadAllBytes(file))));
    }

    [Fact]
    public async Task Without_a_grid_the_session_is_drawn_with_what_is_on_air()
    {
        var (code, _, error) = await Cli.Run("still", "--data", _folder.Path, "--out", _folder.In("none.png"));
        Assert.Equal(2, code);
        Assert.Contains("There is no session", error, StringComparison.Ordinal);

        await using var companion = await RunningCompanion.Start(_folder.Path);
        await using var presenter = await companion.OpenDesk();
        await presenter.Do("LoadPuzzle", Grids.EssayOne, "", "", "");
        await Draw("bare.png", "--data", _folder.Path);
        var next = await presenter.Sees("Next", view => view.GetProperty("sequence").GetInt64() >= 3);
        await presenter.Do("StandBy", next.GetProperty("deductions")[0].GetProperty("id").GetString());
        await presenter.Do("NextGrade");
        await Draw("onair.png", "--data", _folder.Path);
        await Draw("grid.png", Grids.EssayOne);

        Assert.Equal(await Bytes("grid.png"), await Bytes("bare.png"));
        Assert.NotEqual(await Bytes("bare.png"), await Bytes("onair.png"));
    }

    [Fact]
    public async Task What_is_on_air_alone_shows_through_and_lies_where_the_scene_has_the_board()
    {
        await using var companion = await RunningCompanion.Start(_folder.Path);
        await using var presenter = await companion.OpenDesk();
        await presenter.Do("LoadPuzzle", Grids.EssayOne, "", "", "");
        await presenter.Do("PlaceFrame", "close up", new { left = 0.5, top = 0.5, width = 0.25, height = 0.25 });
        await presenter.Do("PlaceFrame", "main", new { left = 0.1, top = 0.1, width = 0.4, height = 0.6 });
        var next = await presenter.Sees("Next", view => view.GetProperty("sequence").GetInt64() >= 3);
        await presenter.Do("StandBy", next.GetProperty("deductions")[0].GetProperty("id").GetString());
        await presenter.Do("NextGrade");
        await Draw("main.png", "--data", _folder.Path, "--transparent");
        await Draw("close.png", "--data", _folder.Path, "--transparent", "--scene", "close up");
        await Draw("without.png", "--data", _folder.Path, "--transparent", "--without-air");
        await Draw("bare.png", "--data", _folder.Path, "--without-air");
        await Draw("onair.png", "--data", _folder.Path);
        await Draw("grid.png", Grids.EssayOne);

        using var main = SKBitmap.Decode(_folder.In("main.png"));
        using var close = SKBitmap.Decode(_folder.In("close.png"));
        using var without = SKBitmap.Decode(_folder.In("without.png"));
        Assert.Contains(main.Pixels, pixel => pixel.Alpha == 255);
        Assert.Contains(main.Pixels, pixel => pixel.Alpha == 0);
        Assert.NotEqual(main.Bytes, close.Bytes);
        Assert.All(without.Pixels, pixel => Assert.Equal(0, pixel.Alpha));
        Assert.Equal(await Bytes("grid.png"), await Bytes("bare.png"));
        Assert.NotEqual(await Bytes("bare.png"), await Bytes("onair.png"));

        var (code, _, error) = await Cli.Run("still", "--data", _folder.Path, "--transparent", "--scene", "far", "--out", _folder.In("x.png"));
        Assert.Equal(2, code);
        Assert.Equal("There is no scene 'far': name one of close up, main with --scene.", error.Trim());
    }

    [Fact]
    public async Task The_files_ending_says_what_is_drawn_into_it()
    {
        await Draw("why.svg", Grids.EssayOne, "--size", "640x360", "--deduction", "1");
        await Draw("thumb.SVG", Grids.EssayOne, "--transparent", "--deduction", "1");

        var root = System.Xml.Linq.XDocument.Load(_folder.In("why.svg")).Root!;
        Assert.Equal(("svg", "640", "360"), (root.Name.LocalName, root.Attribute("width")!.Value, root.Attribute("height")!.Value));
        Assert.Equal("svg", System.Xml.Linq.XDocument.Load(_folder.In("thumb.SVG")).Root!.Name.LocalName);

        var (code, _, error) = await Cli.Run("still", Grids.EssayOne, "--out", _folder.In("x.gif"));
        Assert.Equal(2, code);
        Assert.Contains("end its name with .png or .svg", error, StringComparison.Ordinal);
        Assert.False(File.Exists(_folder.In("x.gif")));
    }

    [Fact]
    public async Task A_deduction_that_is_not_there_is_said_plainly()
    {
        var (code, _, error) = await Cli.Run("still", Grids.TextbookSolved, "--deduction", "1", "--out", _folder.In("x.png"));

        Assert.Equal(2, code);
        Assert.Equal("0 deductions are open and there is no number 1: 'companion scan' lists them.", error.Trim());
    }

    // The show takes 10 seconds for each step of its way.
    [Fact]
    public async Task A_time_behind_the_shows_end_is_said_plainly()
    {
        var show = MadeShow.Whole();
        using (var log = SqliteEventLog.Open(DataFolder.Open(_folder.Path)))
            log.Append(0, show.Events);
        var end = VideoClock.Of(show.Length);
        await Draw("end.png", "--show", "latest", "--at", end, "--data", _folder.Path);
        await Draw("usual.png", "--show", "latest", "--data", _folder.Path);
        Assert.Equal(await Bytes("usual.png"), await Bytes("end.png"));

        var (code, _, error) = await Cli.Run("still", "--show", "latest", "--at", "99:00", "--data", _folder.Path, "--out", _folder.In("x.png"));

        Assert.Equal((2, $"The show is {end} long and has no 1:39:00: name an earlier time with --at.\n"), (code, error));
        Assert.False(File.Exists(_folder.In("x.png")));
    }

    [Fact]
    public async Task A_bad_grid_ends_with_1_and_a_file_that_cannot_be_written_with_2()
    {
        Assert.Equal(1, (await Cli.Run("still", "12", "--out", _folder.In("x.png"))).ExitCode);

        var (code, _, error) = await Cli.Run("still", Grids.EssayOne, "--out", _folder.In("no", "such", "folder.png"));
        Assert.Equal(2, code);
        Assert.Contains("cannot be written", error, StringComparison.Ordinal);
    }

    public void Dispose() => _folder.Dispose();

    private async Task Draw(string file, params string[] words)
    {
        var (code, _, error) = await Cli.Run(["still", .. words, "--out", _folder.In(file)]);
        Assert.Equal("", error);
        Assert.Equal(0, code);
    }

    private Task<byte[]> Bytes(string file) => File.ReadAllBytesAsync(_folder.In(file), TestContext.Current.CancellationToken);
}
