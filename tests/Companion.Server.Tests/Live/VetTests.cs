using System.Text.Json;
using Companion.Server.Access;
using Companion.Server.Settings;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Live;

/// <summary>The presenter has grids vetted, and says which rules a puzzle is to show.</summary>
public sealed class VetTests(CompanionFixture fixture) : IClassFixture<CompanionFixture>
{
    private static readonly string[] Wing = ["xy-wing"];
    private static readonly string[] NoRules = [];

    [Fact]
    public async Task A_grid_is_vetted_by_the_ladder_as_it_is_cut_for_the_page_that_asked_alone()
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk();
        await using var coHost = await companion.OpenDesk(AccessRole.CoHost);
        await presenter.Do("StopLadder", "xy-wing");

        await presenter.Do("Vet", Grids.Textbook, Wing);
        var vetted = await presenter.Sees("Vetted", _ => true);
        var result = vetted.GetProperty("result");

        Assert.Equal(Grids.Textbook, vetted.GetProperty("grid").GetString());
        Assert.Equal(1, result.GetProperty("solutions").GetInt32());
        Assert.Equal("spare", Assert.Single(result.GetProperty("featured").EnumerateArray()).GetProperty("need").GetString());
        Assert.Contains("One solution, ", result.GetProperty("sentences")[0].GetString(), StringComparison.Ordinal);
        await coHost.Sees("Desk", _ => true);
        Assert.DoesNotContain("Vetted", coHost.Told.Select(told => told.Name));

        await presenter.Do("StopLadder", "naked-single");
        var refusal = (await presenter.Ask("Vet", Grids.Textbook, Wing)).Refusal;
        Assert.Equal("The ladder is cut so that no XY-wing is looked for: look for it again, or feature another rule.", refusal);
    }

    [Fact]
    public async Task A_mistyped_grid_comes_back_with_the_change_that_makes_a_puzzle_of_it()
    {
        await using var presenter = await fixture.Companion.OpenDesk();
        var typed = $"{(Grids.EssayOne[0] == '1' ? '2' : '1')}{Grids.EssayOne[1..]}";

        await presenter.Do("Vet", typed, NoRules);

        var result = (await presenter.Sees("Vetted", view => view.GetProperty("grid").GetString() == typed)).GetProperty("result");
        Assert.NotEmpty(result.GetProperty("faults").EnumerateArray());
        Assert.Contains(
            result.GetProperty("corrections").EnumerateArray(), correction => correction.GetProperty("cell").GetString() == "r1c1");
    }

    [Fact]
    public async Task Featured_rules_are_shown_to_every_panel_and_the_demo_brings_its_own()
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk();
        await using var coHost = await companion.OpenDesk(AccessRole.CoHost);
        Assert.Equal("xy-wing", Assert.Single(Demo.Load().Featured).Rule.Value);
        Assert.Equal(["xy-wing late"], Featured(await coHost.Sees("Desk", _ => true)));

        var set = (await presenter.Ask("FeatureRules", new[] { new { rule = "swordfish", isEarly = true } }.ToList())).Sequence;

        Assert.Equal(["swordfish early"], Featured(await coHost.Sees("Desk", set)));
    }

    private static List<string> Featured(JsonElement desk) => [.. desk.GetProperty("featured").EnumerateArray().Select(each =>
        $"{each.GetProperty("rule").GetString()} {(each.GetProperty("isEarly").GetBoolean() ? "early" : "late")}")];
}
