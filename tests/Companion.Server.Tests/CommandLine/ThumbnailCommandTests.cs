using Companion.Server.Tests.Running;
using SkiaSharp;

namespace Companion.Server.Tests.CommandLine;

public sealed class ThumbnailCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    [Fact]
    public async Task It_is_1280_by_720_and_has_title_and_credit_and_pattern()
    {
        await Draw("bare.png", Grids.EssayOne);
        await Draw("title.png", Grids.EssayOne, "--title", "Lanterns");
        await Draw("credit.png", Grids.EssayOne, "--title", "Lanterns", "--credit", "set by the signal station");
        await Draw("pattern.png", Grids.EssayOne, "--title", "Lanterns", "--deduction", "1");
        await Draw("why.png", Grids.EssayOne, "--title", "Lanterns", "--deduction", "1", "--grade", "4");

        Assert.All(["bare.png", "title.png", "credit.png", "pattern.png", "why.png"], file =>
        {
            using var picture = SKBitmap.Decode(_folder.In(file));
            Assert.Equal((1280, 720), (picture.Width, picture.Height));
        });
        Assert.Distinct(Directory.GetFiles(_folder.Path, "*.png").Select(file => Convert.ToHexString(File.ReadAllBytes(file))));
    }

    [Fact]
    public async Task Title_and_credit_are_those_of_the_session_unless_others_are_given()
    {
        await using var companion = await RunningCompanion.Start(_folder.Path);
        await using var presenter = await companion.OpenDesk();
        await presenter.Do("LoadPuzzle", Grids.EssayOne, "Lanterns", "A. Setter", "");

        await Draw("session.png", "--data", _folder.Path);
        await Draw("given.png", Grids.EssayOne, "--title", "Lanterns", "--credit", "set by A. Setter");

        Assert.Equal(await File.ReadAllBytesAsync(_folder.In("given.png"), Stop), await File.ReadAllBytesAsync(_folder.In("session.png"), Stop));
    }

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public void Dispose() => _folder.Dispose();

    private async Task Draw(string file, params string[] words)
    {
        var (code, _, error) = await Cli.Run(["thumbnail", .. words, "--out", _folder.In(file)]);
        Assert.Equal("", error);
        Assert.Equal(0, code);
    }
}
