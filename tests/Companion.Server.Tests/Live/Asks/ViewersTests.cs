using System.Text.Json;
using Companion.Server.Access;
using Companion.Server.Data;
using Companion.Server.Shows;
using Companion.Server.Tests.Running;
using Companion.Session.Asks;
using Companion.Session.Events;

namespace Companion.Server.Tests.Live.Asks;

/// <summary>The panels see what comes of viewers' asks, and the presenter says how far they go.</summary>
public sealed class ViewersTests
{
    private static readonly Way Chat = new("chat", IsShared: true);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_panel_is_shown_the_limits_when_it_opens_and_whenever_they_change(bool speaksMessagePack)
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk(speaksMessagePack: speaksMessagePack);
        await using var coHost = await companion.OpenDesk(AccessRole.CoHost, speaksMessagePack);
        Assert.Equal(15, (await coHost.Sees("Viewers", _ => true)).GetProperty("delay").GetProperty("seconds").GetInt32());

        await presenter.Do("LimitAsks", true, 2, true);
        await presenter.Do("SetDelay", 30);

        foreach (var desk in new[] { presenter, coHost })
        {
            var view = await desk.Sees("Viewers", view => view.GetProperty("delay").GetProperty("seconds").GetInt32() == 30);
            Assert.Equal("""{"open":true,"highest":2,"quietOnAir":true}""", Plain(view.GetProperty("limits")));
        }
    }

    [Fact]
    public async Task A_code_goes_on_air_is_written_by_viewers_and_the_presenter_takes_the_delay_over()
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk();
        await using var overlay = await companion.OpenOverlay();
        await using var stage = await companion.OpenStage();

        var shown = (await presenter.Ask("ShowDelayCode")).Sequence;
        var code = (await overlay.Sees("Overlay", shown)).GetProperty("code").GetString();
        Assert.Matches("^[a-z]{4}$", code);
        Assert.Equal(code, (await stage.Sees("Stage", shown)).GetProperty("code").GetString());

        await companion.Asks.Ask(Chat, "ann", "ann", $"!delay {code}");
        var view = await presenter.Sees("Viewers", view => view.GetProperty("measuredViewers").GetInt32() == 1);
        var measured = view.GetProperty("measured");
        await presenter.Do("UseMeasuredDelay");
        var used = await presenter.Sees("Viewers", view => Plain(view.GetProperty("delay")) == Plain(measured));
        Assert.InRange(used.GetProperty("delay").GetProperty("seconds").GetInt32(), 0, 30);

        var hidden = (await presenter.Ask("HideDelayCode")).Sequence;
        Assert.Equal(JsonValueKind.Null, (await overlay.Sees("Overlay", hidden)).GetProperty("code").ValueKind);
    }

    [Fact]
    public async Task Calls_are_shown_by_cell_with_no_digit_and_no_name_and_are_forgotten_with_the_show()
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk();
        await presenter.Do("LoadPuzzle", Grids.Textbook, "", "", "");
        await presenter.Do("SetDelay", 0);

        await companion.Asks.Ask(Chat, "ann-account", "Ann of the chat", "!call r2c2 6");
        await companion.Asks.Ask(Chat, "bob-account", "Bob of the chat", "!call r2c2 9");

        var view = await presenter.Sees("Viewers", view => view.GetProperty("calls") is var calls
            && calls.GetArrayLength() == 1 && calls[0].GetProperty("viewers").GetInt32() == 2);
        Assert.Equal("""{"cell":"r2c2","viewers":2,"named":2,"right":1,"standing":null,"earlier":null}""", Plain(view.GetProperty("calls")[0]));
        Assert.DoesNotContain(presenter.Told, told => told.View.ToString().Contains("of the chat", StringComparison.Ordinal)
            || told.View.ToString().Contains("-account", StringComparison.Ordinal));

        await presenter.Do("EndShow");
        await presenter.Sees("Viewers", view => view.GetProperty("calls").GetArrayLength() == 0);
    }

    [Fact]
    public async Task Called_cells_go_on_air_when_they_are_asked_to_by_whoever_may_and_are_cleared()
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk();
        await using var coHost = await companion.OpenDesk(AccessRole.CoHost);
        await using var overlay = await companion.OpenOverlay();
        await using var stage = await companion.OpenStage();
        await presenter.Do("LoadPuzzle", Grids.Textbook, "", "", "");
        await presenter.Do("SetDelay", 0);
        foreach (var (viewer, digit) in new[] { ("ann", 6), ("bob", 9) })
            await companion.Asks.Ask(Chat, viewer, viewer, $"!call r2c2 {digit}");
        await presenter.Sees("Viewers", view => view.GetProperty("calls").ToString().Contains("\"viewers\":2", StringComparison.Ordinal));
        Assert.NotNull((await coHost.Ask("StandByCalls")).Refusal);

        await presenter.Do("AllowCoHostOnAir", true);
        await coHost.Do("StandByCalls");
        var shown = (await coHost.Ask("NextGrade")).Sequence;

        const string Picture = """{"shapes":[{"kind":"called","x":1,"y":1,"count":"2+"}],"caption":"Viewers say they have found these"}""";
        Assert.Equal(Picture, (await overlay.Sees("Overlay", shown)).GetProperty("picture").ToString());
        Assert.Equal(Picture, (await stage.Sees("Stage", shown)).GetProperty("picture").ToString());
        Assert.Equal(1, (await presenter.Sees("Desk", shown)).GetProperty("calledOnAir").GetProperty("cells").GetInt32());

        var cleared = (await presenter.Ask("ClearAir")).Sequence;
        Assert.Equal(JsonValueKind.Null, (await overlay.Sees("Overlay", cleared)).GetProperty("picture").ValueKind);
    }

    [Fact]
    public async Task Where_viewers_were_first_is_kept_with_the_show_and_told_in_its_recap_without_a_name()
    {
        using var folder = new TemporaryFolder();
        await using (var companion = await RunningCompanion.Start(folder.Path))
        {
            await using var presenter = await companion.OpenDesk();
            await presenter.Do("LoadPuzzle", Grids.Textbook, "", "", "");
            await presenter.Do("SetDelay", 0);
            foreach (var viewer in new[] { "ann-account", "bob-account" })
                await companion.Asks.Ask(Chat, viewer, viewer, "!call r2c2 6");
            await presenter.Sees("Viewers", view => view.GetProperty("calls").ToString().Contains("\"viewers\":2", StringComparison.Ordinal));
            await presenter.Do("PlaceDigit", "r2c2", 6);
            // It comes beside the session, as proofs do; the log may be read meanwhile.
            var library = new ShowLibrary(DataFolder.Open(folder.Path));
            using var late = new CancellationTokenSource(Hall.Patience);
            while (!library.Open(ShowLibrary.Latest).Show.Events.OfType<CellsFoundFirst>().Any())
                await Task.Delay(50, late.Token);
        }

        var (code, recap, _) = await CommandLine.Cli.Run("recap", "latest", "--stop-at", "hidden-single", "--data", folder.Path);

        Assert.Equal(0, code);
        Assert.Matches(@"\n### What viewers found first\n\n- \d+:\d\d r2c2: 2 viewers or more had found it before\.\n", recap);
        Assert.DoesNotContain("account", recap, StringComparison.Ordinal);
        await CommandLine.Cli.Run("shows", "export", "latest", "--out", folder.In("show.json"), "--data", folder.Path);
        Assert.DoesNotContain("account", await File.ReadAllTextAsync(folder.In("show.json"), TestContext.Current.CancellationToken), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_viewer_is_answered_about_the_session_that_runs()
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk();
        await presenter.Do("LoadPuzzle", Grids.Textbook, "", "", "");
        await presenter.Do("SetDelay", 0);

        var reply = await companion.Asks.Ask(Chat, "ann", "ann", "!hint");

        Assert.Equal(["@ann: Look at block 1"], reply.Lines);
    }

    [Fact]
    public async Task After_a_restart_the_limits_are_as_they_were_and_viewers_see_the_session_that_goes_on()
    {
        using var folder = new TemporaryFolder();
        await using (var before = await RunningCompanion.Start(folder.Path))
        {
            await using var desk = await before.OpenDesk();
            await desk.Do("LoadPuzzle", Grids.Textbook, "Lanterns", "", "");
            await desk.Do("SetDelay", 0);
        }

        await using var companion = await RunningCompanion.Start(folder.Path);

        Assert.Equal(["@ann: “Lanterns”"], (await companion.Asks.Ask(Chat, "ann", "ann", "!puzzle")).Lines);
    }

    // A number may come as 12 or 12.0, by protocol.
    private static string Plain(JsonElement element) => JsonSerializer.Serialize(element);
}
