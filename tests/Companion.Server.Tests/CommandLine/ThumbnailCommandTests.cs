using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Server.Data;
using Companion.Server.Log;
using Companion.Server.Tests.AfterShow;
using Companion.Server.Tests.Running;
using Companion.Session.Boards;
using Companion.Session.Events;
using Companion.Session.Shows;
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

    [Fact]
    public async Task Of_a_show_it_gives_nothing_away()
    {
        using (var log = SqliteEventLog.Open(DataFolder.Open(_folder.Path)))
            log.Append(0, MadeShow.Whole().Events);
        await Draw("usual.png", "--show", "latest", "--data", _folder.Path);
        await Draw("start.png", "--show", "latest", "--step", "1", "--data", _folder.Path);

        Assert.Equal(await Bytes("start.png"), await Bytes("usual.png"));
    }

    // Why it holds comes on air at once: the thumbnail has only which one it is.
    [Fact]
    public async Task Of_a_show_with_a_featured_rule_it_has_where_that_came_on_air()
    {
        var events = MadeShow.Whole().Events.ToList();
        var place = events.Count / 2;
        var board = KnownBoard.Of(StoredShow.Replay(events.Take(place)).Last).Value!;
        var (at, deduction) = (events[place].At, MadeShow.Ladder.Scan(board, Stop)[0]);
        events.Insert(place, new PutOnAir(at, deduction, Grade.Why));
        events.Insert(place + 1, new PutOnAir(at, deduction, Grade.Which));
        events.Insert(1, new RulesFeatured(events[0].At, new([new(deduction.Rule, Timing.Late)])));
        using (var log = SqliteEventLog.Open(DataFolder.Open(_folder.Path)))
            log.Append(0, events);
        await Draw("usual.png", "--show", "latest", "--data", _folder.Path);
        await Draw("why.png", "--show", "latest", "--step", $"{place + 2}", "--data", _folder.Path);
        await Draw("which.png", "--show", "latest", "--step", $"{place + 3}", "--data", _folder.Path);

        Assert.Equal(await Bytes("which.png"), await Bytes("usual.png"));
        Assert.NotEqual(await Bytes("why.png"), await Bytes("usual.png"));
    }

    private Task<byte[]> Bytes(string file) => File.ReadAllBytesAsync(_folder.In(file), Stop);

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public void Dispose() => _folder.Dispose();

    private async Task Draw(string file, params string[] words)
    {
        var (code, _, error) = await Cli.Run(["thumbnail", .. words, "--out", _folder.In(file)]);
        Assert.Equal("", error);
        Assert.Equal(0, code);
    }
}
