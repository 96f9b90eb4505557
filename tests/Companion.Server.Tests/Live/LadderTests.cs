using System.Text.Json;
using Companion.Server.Access;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Live;

/// <summary>The ladder is cut while the session runs.</summary>
public sealed class LadderTests
{
    [Fact]
    public async Task Every_panel_is_shown_the_cut_and_the_list_keeps_to_it()
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk();
        await using var coHost = await companion.OpenDesk(AccessRole.CoHost);
        var loaded = (await presenter.Ask("LoadPuzzle", Grids.WithRectangle, "", "", "")).Sequence;
        Assert.Contains("uniqueness", await Families(presenter, loaded));

        await presenter.Do("StopLadder", "hidden-unique-rectangle");
        var last = (await presenter.Ask("SwitchFamily", "uniqueness", false)).Sequence;

        var view = await coHost.Sees("Ladder", last);
        Assert.Equal("hidden-unique-rectangle", view.GetProperty("last").GetString());
        Assert.False(IsOn(view, "uniqueness"));
        var families = await Families(presenter, last);
        Assert.DoesNotContain("uniqueness", families);
        Assert.Contains("singles", families);
    }

    [Fact]
    public async Task A_panel_that_comes_late_is_shown_the_cut()
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk();
        await presenter.Do("SwitchFamily", "fish", false);
        await using var late = await companion.OpenDesk(AccessRole.CoHost);

        Assert.False(IsOn(await late.Sees("Ladder", _ => true), "fish"));
    }

    private static bool IsOn(JsonElement ladder, string family) => ladder.GetProperty("families").EnumerateArray()
        .Single(one => one.GetProperty("name").GetString() == family).GetProperty("isOn").GetBoolean();

    // The families of all that is open in a state, once the scan of it is finished.
    private static async Task<List<string>> Families(OpenPage page, long sequence)
    {
        var next = await page.Sees(
            "Next", view => view.GetProperty("sequence").GetInt64() == sequence && !view.GetProperty("goesOn").GetBoolean());
        var families = (await page.Sees("Ladder", _ => true)).GetProperty("rungs").EnumerateArray()
            .ToDictionary(rung => rung.GetProperty("rule").GetString()!, rung => rung.GetProperty("family").GetString()!);
        return [.. next.GetProperty("deductions").EnumerateArray()
            .Select(deduction => families[deduction.GetProperty("rule").GetString()!]).Distinct()];
    }
}
