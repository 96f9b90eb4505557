using System.Text.Json;
using Companion.Server.Access;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Live;

/// <summary>The way on is planned beside the session, and shown to the panels and to nobody else.</summary>
public sealed class RunSheetTests
{
    [Fact]
    public async Task It_is_planned_anew_after_each_entry_and_both_panels_see_it_with_its_notes()
    {
        using var folder = new TemporaryFolder();
        await using (var companion = await RunningCompanion.Start(folder.Path))
        {
            await using var presenter = await companion.OpenDesk();
            await using var coHost = await companion.OpenDesk(AccessRole.CoHost);
            await using var overlay = await companion.OpenOverlay();
            var first = await Planned(presenter, 0);
            Assert.Equal("xy-wing", Assert.Single(first.Sheet.GetProperty("featured").EnumerateArray()).GetProperty("rule").GetString());

            var entered = (await presenter.Ask("PlaceDigit", "r3c2", 6)).Sequence;
            var (view, sheet) = await Planned(coHost, entered);
            Assert.Equal('6', sheet.GetProperty("grid").GetString()![19]);
            Assert.All(view.GetProperty("notes").EnumerateArray(), note => Assert.Equal("", note.GetString()));

            var step = sheet.GetProperty("steps")[0];
            await coHost.Do("NoteStep", Names(step, "places"), Names(step, "removes"), "Slowly");
            await presenter.Sees("RunSheet", seen => seen.GetProperty("notes").EnumerateArray().Any(note => note.GetString() == "Slowly"));
            Assert.DoesNotContain("RunSheet", overlay.Told.Select(told => told.Name));
        }

        await using (var companion = await RunningCompanion.Start(folder.Path))
        {
            await using var late = await companion.OpenDesk();
            var (view, _) = await Planned(late, 1);
            Assert.Equal("Slowly", view.GetProperty("notes")[0].GetString());
        }
    }

    [Fact]
    public async Task Numbers_and_clock_go_on_from_what_was_done_and_go_back_with_an_undo()
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk();
        var steps = (await Planned(presenter, 0)).Sheet.GetProperty("steps");
        var (all, second) = (steps.GetArrayLength(), steps[1]);

        // The first step of the demo's way, a hidden single.
        var entered = (await presenter.Ask("PlaceDigit", "r3c2", 6)).Sequence;
        var view = await presenter.Sees("RunSheet", view => view.GetProperty("plannedOf").GetInt64() >= entered
            && view.GetProperty("done") is var done && done.GetArrayLength() == 1 && done[0].GetProperty("how").GetString() != "");
        var (did, sheet) = (view.GetProperty("done")[0], view.GetProperty("sheet"));
        Assert.Equal((1, 1, 0.0), (did.GetProperty("first").GetInt32(), did.GetProperty("last").GetInt32(), did.GetProperty("begins").GetDouble()));
        var now = sheet.GetProperty("steps")[0];
        Assert.Equal((2, second.GetProperty("short").GetString()), (now.GetProperty("number").GetInt32(), now.GetProperty("short").GetString()));
        Assert.Equal(second.GetProperty("at").GetDouble(), now.GetProperty("at").GetDouble(), tolerance: 0.11);
        Assert.Equal(all, sheet.GetProperty("steps")[all - 2].GetProperty("number").GetInt32());
        var passages = sheet.GetProperty("passages");
        Assert.Equal((2, all), (passages[0].GetProperty("first").GetInt32(), passages[passages.GetArrayLength() - 1].GetProperty("last").GetInt32()));
        Assert.InRange(sheet.GetProperty("featured")[0].GetProperty("step").GetInt32(), 2, all);

        var undone = (await presenter.Ask("Undo")).Sequence;
        var again = await Planned(presenter, undone);
        Assert.Equal((1, 0.0), (again.Sheet.GetProperty("steps")[0].GetProperty("number").GetInt32(), again.Sheet.GetProperty("steps")[0].GetProperty("at").GetDouble()));
    }

    private static async Task<(JsonElement View, JsonElement Sheet)> Planned(OpenPage page, long sequence)
    {
        var view = await page.Sees("RunSheet", view =>
            view.GetProperty("plannedOf").GetInt64() >= sequence && view.GetProperty("sheet").ValueKind == JsonValueKind.Object);
        return (view, view.GetProperty("sheet"));
    }

    private static string Names(JsonElement step, string name) => string.Join(' ', step.GetProperty(name).EnumerateArray()
        .Select(each => $"{each.GetProperty("cell").GetString()}={each.GetProperty("digit").GetInt32()}"));
}
