using System.Net;
using System.Text;
using System.Text.Json;
using Companion.Server.Access;
using Companion.Server.Shows;
using Companion.Server.Tests.Running;
using Companion.Session.Audience;
using Microsoft.Extensions.DependencyInjection;

namespace Companion.Server.Tests.Live;

public sealed class ShowTests
{
    private const string Replay = HubPaths.Overlay + HubPaths.Replay;

    [Fact]
    public async Task Nothing_on_air_survives_a_new_show_and_the_old_one_is_kept()
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk();
        await using var stage = await companion.OpenStage();
        await using var overlay = await companion.OpenOverlay();
        var next = await presenter.Sees("Next", view => view.GetProperty("deductions").GetArrayLength() > 0);
        await presenter.Do("StandBy", next.GetProperty("deductions")[0].GetProperty("id").GetString());
        await presenter.Do("NextGrade");
        await stage.Sees("Stage", view => view.GetProperty("picture").ValueKind == JsonValueKind.Object);

        await presenter.Do("BeginShow", "Second evening");

        var sequence = companion.Session.State.Sequence;
        Assert.Equal(JsonValueKind.Null, (await stage.Sees("Stage", sequence)).GetProperty("picture").ValueKind);
        Assert.Equal(JsonValueKind.Null, (await overlay.Sees("Overlay", sequence)).GetProperty("picture").ValueKind);
        var desk = await presenter.Sees("Desk", sequence);
        Assert.Equal("Second evening", desk.GetProperty("showTitle").GetString());
        Assert.Contains("nothing to undo", (await presenter.Ask("LoadPuzzle", Grids.EssayOne, "", "", "") is { Refusal: null } ? await presenter.Ask("Undo") : null)!.Refusal, StringComparison.Ordinal);
        await companion.IsOpenTo(AudienceDoor.Closed);

        await presenter.Do("Shows");
        var shows = (await presenter.Sees("Shows", _ => true)).GetProperty("shows");
        Assert.Equal(2, shows.GetArrayLength());
        Assert.True(shows[1].GetProperty("isLive").GetBoolean());
    }

    [Fact]
    public async Task A_kept_show_goes_on_and_the_one_before_is_kept_too()
    {
        using var folder = new TemporaryFolder();
        Session.State.Grid grid;
        await using (var companion = await RunningCompanion.Start(folder.Path))
        {
            await using var presenter = await companion.OpenDesk();
            await presenter.Do("LoadPuzzle", Grids.EssayOne, "Lanterns", "", "");
            await presenter.Do("PlaceDigit", "r5c5", 5);
            grid = companion.Session.State.Grid;
            await presenter.Do("BeginShow", "");
            await presenter.Do("ReopenShow", 1);
            Assert.Equal((grid.Placed, grid.Credit), (companion.Session.State.Grid.Placed, companion.Session.State.Grid.Credit));
            Assert.Contains("no show 9", (await presenter.Ask("ReopenShow", 9)).Refusal, StringComparison.Ordinal);
            Assert.Equal(3, companion.Services.GetRequiredService<ShowLibrary>().List().Length);
        }

        await using var again = await RunningCompanion.Start(folder.Path);
        Assert.Equal(grid.Placed, again.Session.State.Grid.Placed);
        Assert.Equal(again.Session.State, again.Services.GetRequiredService<ShowLibrary>().Open("latest").Show.Last);
    }

    [Fact]
    public async Task A_replay_shows_each_moment_and_nothing_of_what_is_on_air()
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk();
        await presenter.Do("LoadPuzzle", Grids.EssayOne, "Lanterns", "", "");
        await presenter.Do("PlaceDigit", "r5c5", 5);
        await presenter.Do("ShowDelayCode");
        await presenter.Do("BeginShow", "");
        await presenter.Do("LoadPuzzle", Grids.Textbook, "On air", "", "");
        await using var replay = await OpenPage.Open(companion, Replay, AccessRole.Overlay, speaksMessagePack: true);

        var opened = await replay.Ask<JsonElement>("OpenShow", "1");
        var moments = opened.GetProperty("timeline").GetProperty("moments").EnumerateArray().Select(moment => moment.GetProperty("number").GetInt32()).ToList();
        var stages = new List<JsonElement>();
        foreach (var number in moments)
            stages.Add(await replay.Ask<JsonElement>("StageAfter", number));

        var show = companion.Services.GetRequiredService<ShowLibrary>().Open("1").Show;
        Assert.Equal(moments.Select(number => show.Moments[number - 1].State.Grid.Credit.Title), stages.Select(stage => stage.GetProperty("credit").GetProperty("title").GetString()));
        Assert.Equal(5, stages[^1].GetProperty("cells")[40].GetProperty("digit").GetInt32());
        Assert.All(stages, stage => Assert.Equal(JsonValueKind.Null, stage.GetProperty("code").ValueKind));
        Assert.DoesNotContain("On air", string.Concat(stages), StringComparison.Ordinal);
        Assert.Empty(replay.Told);
        Assert.Equal(JsonValueKind.Null, (await replay.Ask<JsonElement>("StageAfter", 99999)).ValueKind);
    }

    [Theory]
    [InlineData("99")]
    [InlineData("/etc/passwd")]
    [InlineData("")]
    [InlineData(null)]
    public async Task A_replay_of_what_is_no_kept_show_is_refused_plainly(string? show)
    {
        await using var companion = await RunningCompanion.Start();
        await using var replay = await OpenPage.Open(companion, HubPaths.Presenter + HubPaths.Replay, AccessRole.Presenter);

        Assert.Matches(@"^\w.*\.$", (await replay.Ask<JsonElement>("OpenShow", show)).GetProperty("refusal").GetString());
        Assert.Equal(JsonValueKind.Null, (await replay.Ask<JsonElement>("StageAfter", 1)).ValueKind);
    }

    [Theory]
    [InlineData(AccessRole.Viewer)]
    [InlineData(AccessRole.CoHost)]
    public async Task Only_the_stage_s_and_the_presenter_s_key_open_a_replay(AccessRole role)
    {
        await using var companion = await RunningCompanion.Start();

        foreach (var hub in new[] { HubPaths.Overlay, HubPaths.Presenter })
            await Assert.ThrowsAnyAsync<Exception>(async () => await (await OpenPage.Open(companion, hub + HubPaths.Replay, role)).DisposeAsync());
    }

    [Fact]
    public async Task The_recording_is_keyed_and_chapters_are_edited_and_taken_along()
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk();
        await presenter.Do("StartRecording");
        Assert.Equal("running", (await presenter.Sees("Desk", companion.Session.State.Sequence)).GetProperty("recording").GetProperty("phase").GetString());
        Assert.Contains("running already", (await presenter.Ask("StartRecording")).Refusal, StringComparison.Ordinal);
        await presenter.Do("StopRecording");

        await presenter.Do("SetOffset", 1, 60);
        var chapters = await presenter.Sees("Chapters", _ => true);
        Assert.Equal((60, true), (chapters.GetProperty("offset").GetDouble(), chapters.GetProperty("isRecorded").GetBoolean()));
        await Answered(presenter, "SaveChapters", 1, new[] { new { at = 0, title = "Lanterns are lit" }, new { at = 20, title = "Second" } });
        await presenter.Sees("Chapters", view => view.GetProperty("isEdited").GetBoolean());
        await Answered(presenter, "WriteChapters", 1, "list", "25");
        Assert.Equal("0:00 Lanterns are lit\n0:20 Second\n", (await presenter.Sees("Save", _ => true)).GetProperty("text").GetString());
        await Answered(presenter, "SaveChapters", 1, new[] { new { at = 0, title = "" } });
        Assert.Contains("title", (await presenter.Sees("ShowsRefused", _ => true)).GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_show_is_exported_by_the_panel_and_imported_by_it_whole_or_not_at_all()
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk();
        await presenter.Do("ExportShow", 1);
        var text = (await presenter.Sees("Save", _ => true)).GetProperty("text").GetString()!;
        using var browser = companion.Browser();
        var library = companion.Services.GetRequiredService<ShowLibrary>();

        Assert.Equal(HttpStatusCode.Unauthorized, (await Send(browser, text)).StatusCode);
        browser.DefaultRequestHeaders.Authorization = new("Bearer", companion.Keys[AccessRole.CoHost].Reveal());
        Assert.Equal(HttpStatusCode.Forbidden, (await Send(browser, text)).StatusCode);
        browser.DefaultRequestHeaders.Authorization = new("Bearer", companion.Keys[AccessRole.Presenter].Reveal());
        var refused = await Send(browser, text[..^20]);
        Assert.Equal(HttpStatusCode.BadRequest, refused.StatusCode);
        Assert.Contains("cut off", await refused.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Assert.Single(library.List());

        Assert.Equal(HttpStatusCode.NoContent, (await Send(browser, text)).StatusCode);
        Assert.Equal(library.List()[0].Hash, library.List()[1].Hash);
    }

    // A question is answered before the next is taken.
    private static async Task Answered(OpenPage page, string method, params object?[] arguments)
    {
        while (await page.Ask(method, arguments) is { Refusal: { } refusal })
        {
            Assert.Contains("still being answered", refusal, StringComparison.Ordinal);
            await Task.Delay(20, TestContext.Current.CancellationToken);
        }
    }

    private static Task<HttpResponseMessage> Send(HttpClient browser, string text) =>
        browser.PostAsync(new Uri("hubs/presenter/shows", UriKind.Relative), new StringContent(text, Encoding.UTF8), TestContext.Current.CancellationToken);
}
