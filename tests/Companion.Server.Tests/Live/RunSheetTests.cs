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

    private static async Task<(JsonElement View, JsonElement Sheet)> Planned(OpenPage page, long sequence)
    {
        var view = await page.Sees("RunSheet", view =>
            view.GetProperty("plannedOf").GetInt64() >= sequence && view.GetProperty("sheet").ValueKind == JsonValueKind.Object);
        return (view, view.GetProperty("sheet"));
    }

    private static string Names(JsonElement step, string name) => string.Join(' ', step.GetProperty(name).EnumerateArray()
        .Select(each => $"{each.GetProperty("cell").GetString()}={each.GetProperty("digit").GetInt32()}"));
}
