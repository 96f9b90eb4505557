using Companion.Server.Access;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Live;

/// <summary>Pages follow the session, however many they are and whenever they come.</summary>
public sealed class FollowTests
{
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task All_pages_of_all_roles_are_shown_the_same_entry(bool speaksMessagePack)
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk(speaksMessagePack: speaksMessagePack);
        await using var second = await companion.OpenDesk(speaksMessagePack: speaksMessagePack);
        await using var coHost = await companion.OpenDesk(AccessRole.CoHost, speaksMessagePack);
        await using var stage = await companion.OpenStage(speaksMessagePack);
        await using var main = await companion.OpenOverlay(speaksMessagePack: speaksMessagePack);
        await using var close = await companion.OpenOverlay("close", speaksMessagePack);

        await presenter.Do("LoadPuzzle", Grids.EssayOne, "One", "P. Norvig's essay", "");
        var reply = await presenter.Ask("PlaceDigit", "r5c5", 5);

        Assert.Null(reply.Refusal);
        foreach (var desk in new[] { presenter, second, coHost })
        {
            var view = await desk.Sees("Desk", reply.Sequence);
            Assert.Equal(5, view.GetProperty("cells")[40].GetProperty("digit").GetInt32());
            Assert.Equal(desk == coHost ? "coHost" : "presenter", view.GetProperty("role").GetString());
            var next = await desk.Sees("Next", reply.Sequence);
            Assert.NotEqual(0, next.GetProperty("deductions").GetArrayLength());
        }

        Assert.Equal(5, (await stage.Sees("Stage", reply.Sequence)).GetProperty("cells")[40].GetProperty("digit").GetInt32());
        foreach (var overlay in new[] { main, close })
            Assert.Equal(System.Text.Json.JsonValueKind.Null, (await overlay.Sees("Overlay", reply.Sequence)).GetProperty("picture").ValueKind);
    }

    [Fact]
    public async Task A_page_that_comes_late_or_again_is_right_at_once()
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk();
        await presenter.Do("LoadPuzzle", Grids.EssayOne, "", "", "");
        await using (await companion.OpenStage())
        {
        }

        var sequence = (await presenter.Ask("PlaceDigit", "r5c5", 5)).Sequence;
        await presenter.Sees("Next", sequence);

        await using var stage = await companion.OpenStage();
        await using var coHost = await companion.OpenDesk(AccessRole.CoHost);
        await stage.Sees("Stage", sequence);
        await coHost.Sees("Next", sequence);
        Assert.InRange(coHost.Told.First(told => told.Name == "Desk").View.GetProperty("sequence").GetInt64(), sequence, long.MaxValue);
    }

    [Fact]
    public async Task What_is_put_on_air_is_drawn_on_every_scene_in_its_own_frame_and_cleared_from_all()
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk();
        await using var stage = await companion.OpenStage();
        await using var main = await companion.OpenOverlay();
        await using var close = await companion.OpenOverlay("close");
        await presenter.Do("PlaceFrame", "close", new { left = 0.25, top = 0.0, width = 0.5, height = 1.0 });
        var next = await presenter.Sees("Next", view => view.GetProperty("deductions").GetArrayLength() > 0);

        await presenter.Do("StandBy", next.GetProperty("deductions")[0].GetProperty("id").GetString());
        var shown = (await presenter.Ask("NextGrade")).Sequence;

        Assert.Equal(1, (await stage.Sees("Stage", shown)).GetProperty("grade").GetInt32());
        Assert.Equal("house", (await main.Sees("Overlay", shown)).GetProperty("picture").GetProperty("shapes")[0].GetProperty("kind").GetString());
        Assert.Equal(0.25, (await close.Sees("Overlay", shown)).GetProperty("frame").GetProperty("left").GetDouble());

        var cleared = (await presenter.Ask("ClearAir")).Sequence;
        foreach (var overlay in new[] { main, close })
            Assert.Equal(System.Text.Json.JsonValueKind.Null, (await overlay.Sees("Overlay", cleared)).GetProperty("grade").ValueKind);
    }

    [Fact]
    public async Task An_overlay_of_a_scene_that_is_forgotten_goes_on_being_served_as_the_main_scene()
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk();
        await presenter.Do("PlaceFrame", "close", new { left = 0.25, top = 0.0, width = 0.5, height = 1.0 });
        await using var close = await companion.OpenOverlay("close");

        var sequence = (await presenter.Ask("ForgetScene", "close")).Sequence;
        await using var main = await companion.OpenOverlay();

        Assert.Equal(
            (await main.Sees("Overlay", sequence)).GetProperty("frame").ToString(),
            (await close.Sees("Overlay", sequence)).GetProperty("frame").ToString());
    }

    [Fact]
    public async Task The_first_session_of_all_begins_with_the_demo()
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk();

        var view = await presenter.Sees("Desk", 1);
        Assert.NotEqual("", view.GetProperty("credit").GetProperty("title").GetString());
        Assert.Equal(System.Text.Json.JsonValueKind.Null, view.GetProperty("undo").ValueKind);
    }
}
