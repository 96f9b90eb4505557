using System.Text.Json;
using Companion.Server.Tests.Running;
using SkiaSharp;

namespace Companion.Server.Tests.CommandLine;

public sealed class ReadCommandTests : IDisposable
{
    private static readonly string Read = Grids.EssayOne.Replace('0', '.');
    private readonly TemporaryFolder _folder = new();

    [Fact]
    public async Task The_picture_of_a_board_is_read_as_nine_lines_that_check_takes()
    {
        await Draw("board.png", Grids.EssayOne);

        var (code, output, error) = await Cli.Run("read", _folder.In("board.png"));
        Assert.Equal("", error);
        Assert.Equal(0, code);
        Assert.Equal(Read, string.Concat(output.Split(Environment.NewLine)));

        await File.WriteAllTextAsync(_folder.In("read.txt"), output, TestContext.Current.CancellationToken);
        var (checkedCode, verdict, _) = await Cli.Run("check", _folder.In("read.txt"));
        Assert.Equal(0, checkedCode);
        Assert.Contains("one solution", Assert.Single(verdict.Trim().Split('\n')), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(SKEncodedImageFormat.Png)]
    [InlineData(SKEncodedImageFormat.Jpeg)]
    [InlineData(SKEncodedImageFormat.Webp)]
    public async Task A_picture_may_be_piped_in_and_is_any_of_three_kinds(SKEncodedImageFormat format)
    {
        await Draw("board.png", Grids.EssayOne);
        using var bitmap = SKBitmap.Decode(_folder.In("board.png"));
        using var data = bitmap.Encode(format, 90);

        var (code, output, error) = await CompanionProcess.Pipe(data.ToArray(), "read", "-");
        Assert.Equal((0, "", Read), (code, error, string.Concat(output.Split(Environment.NewLine))));
    }

    [Fact]
    public async Task The_json_has_the_place_and_the_givens()
    {
        await Draw("board.png", Grids.EssayOne);

        var (code, output, _) = await Cli.Run("read", _folder.In("board.png"), "--json");

        using var json = JsonDocument.Parse(output);
        Assert.Equal(0, code);
        Assert.Equal(Read, json.RootElement.GetProperty("grid").GetString());
        Assert.Equal(4, json.RootElement.GetProperty("place").GetArrayLength());
        Assert.Equal(Read.Count(c => c != '.'), json.RootElement.GetProperty("givens").GetArrayLength());
        Assert.Equal(0, json.RootElement.GetProperty("unsure").GetArrayLength());
    }

    [Fact]
    public async Task A_picture_without_a_grid_a_file_that_is_no_picture_and_one_that_is_not_there_are_said_plainly()
    {
        await Blank("blank.png", 400);
        await Blank("huge.png", 4500);
        await File.WriteAllTextAsync(_folder.In("text.png"), "no picture", TestContext.Current.CancellationToken);

        await Refuses("blank.png", "No grid was found");
        await Refuses("text.png", "is no PNG, JPEG or WebP");
        await Refuses("huge.png", "has more than 16,588,800 pixels");
        await Refuses("none.png", "cannot be read");
        await Refuses("", "cannot be read"); // the folder
    }

    [Fact]
    public async Task What_is_piped_in_and_is_no_picture_is_said_plainly()
    {
        var (code, output, error) = await CompanionProcess.Pipe([], "read", "-");

        Assert.Equal((2, ""), (code, output));
        Assert.StartsWith("What was piped in is no PNG, JPEG or WebP", Assert.Single(error.Trim().Split('\n')), StringComparison.Ordinal);
    }

    public void Dispose() => _folder.Dispose();

    private async Task Refuses(string file, string reason)
    {
        var (code, output, error) = await Cli.Run("read", _folder.In(file));
        Assert.Equal(2, code);
        Assert.Equal("", output);
        Assert.Contains(reason, Assert.Single(error.Trim().Split('\n')), StringComparison.Ordinal);
    }

    private async Task Blank(string file, int side)
    {
        using var bitmap = new SKBitmap(side, side);
        using var data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        await File.WriteAllBytesAsync(_folder.In(file), data.ToArray(), TestContext.Current.CancellationToken);
    }

    private async Task Draw(string file, string grid)
    {
        var (code, _, error) = await Cli.Run("still", grid, "--out", _folder.In(file));
        Assert.Equal("", error);
        Assert.Equal(0, code);
    }
}
