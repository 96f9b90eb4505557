using Companion.Server.Access;
using Companion.Server.Live.Loop;
using Companion.Server.Tests.Running;
using Companion.Session.Scanning;
using Microsoft.Extensions.DependencyInjection;

namespace Companion.Server.Tests.Live;

/// <summary>Entries are proved beside the session, and the presenter may ask about cells.</summary>
public sealed class ProofTests(CompanionFixture fixture) : IClassFixture<CompanionFixture>
{
    private static readonly string[] Struck = ["r1c3"];

    [Fact]
    public async Task However_quickly_entries_are_made_each_is_proved_in_the_end_and_the_oldest_first()
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk();
        await presenter.Do("LoadPuzzle", Grids.EssayOne, "", "", "");

        await Task.WhenAll(
            presenter.Do("PlaceDigit", "r5c5", 5),
            presenter.Do("PlaceDigit", "r5c2", 2),
            presenter.Do("ToggleStrike", Struck, 1),
            presenter.Do("PlaceDigit", "r3c5", 4));

        await presenter.Sees("Desk", view => Proof(view) == ("4 in r3c5", "proved"));
        var entries = companion.Session.State.Attributions.Select(attributed => attributed.Entry).ToList();
        Assert.Equal(companion.Session.State.History.Made.Take(4).Select(step => step.Number).Reverse(), entries);
    }

    [Fact]
    public async Task An_entry_is_looked_into_after_its_scan_and_holds_no_entry_up()
    {
        using var scanner = HeldWorker.OfScans();
        await using var companion = await RunningCompanion.Start(adjust: builder => builder.Services.AddSingleton<IWorker<ScanResult>>(scanner));
        await using var presenter = await companion.OpenDesk();
        await presenter.Do("LoadPuzzle", Grids.EssayOne, "", "", "");
        await presenter.Do("PlaceDigit", "r5c5", 5);
        await presenter.Sees("Desk", view => Proof(view) == ("5 in r5c5", "pending"));
        Assert.Empty(companion.Session.State.Attributions);

        scanner.Release();

        var proof = (await presenter.Sees("Desk", view => Proof(view) == ("5 in r5c5", "proved"))).GetProperty("proof");
        Assert.Equal("follows in 3 steps, the hardest a hidden single; a naked single does it alone", proof.GetProperty("text").GetString());
        Assert.Equal(3, proof.GetProperty("steps").GetArrayLength());
    }

    [Fact]
    public async Task A_proof_is_kept_with_the_session_and_what_was_left_over_is_proved_after_a_restart()
    {
        using var folder = new TemporaryFolder();
        using var scanner = HeldWorker.OfScans();
        await using (var companion = await RunningCompanion.Start(folder.Path))
        {
            await using var presenter = await companion.OpenDesk();
            await presenter.Do("LoadPuzzle", Grids.EssayOne, "", "", "");
            await presenter.Do("PlaceDigit", "r3c5", 4);
            await presenter.Sees("Desk", view => Proof(view) == ("4 in r3c5", "proved"));
        }

        await using (var companion = await RunningCompanion.Start(
            folder.Path, adjust: builder => builder.Services.AddSingleton<IWorker<ScanResult>>(scanner)))
        {
            await using var presenter = await companion.OpenDesk();
            await presenter.Sees("Desk", view => Proof(view) == ("4 in r3c5", "proved"));
            await presenter.Do("PlaceDigit", "r7c5", 3);
        }

        await using (var companion = await RunningCompanion.Start(folder.Path))
        {
            await using var presenter = await companion.OpenDesk();
            await presenter.Sees("Desk", view => Proof(view) == ("3 in r7c5", "proved"));
            Assert.Equal(2, companion.Session.State.Attributions.Count);
        }
    }

    [Fact]
    public async Task A_question_is_answered_to_the_page_that_asked_and_to_no_other()
    {
        await using var presenter = await fixture.Companion.OpenDesk();
        await using var second = await fixture.Companion.OpenDesk();
        await using var coHost = await fixture.Companion.OpenDesk(AccessRole.CoHost);
        await using var overlay = await fixture.Companion.OpenOverlay();

        await presenter.Do("Why", "r1c1", 4);
        var view = await presenter.Sees("Why", _ => true);

        Assert.Equal(("r1c1", 4), (view.GetProperty("cell").GetString(), view.GetProperty("digit").GetInt32()));
        Assert.Equal("Row one column one is four: it was given.", view.GetProperty("text").GetString());
        await presenter.Do("PlaceDigit", "r3c2", 6);
        await Task.WhenAll(second.Sees("Desk", view => Proof(view).Entry == "6 in r3c2"), coHost.Sees("Desk", view => Proof(view).Entry == "6 in r3c2"));
        Assert.All([second, coHost, overlay], page => Assert.DoesNotContain("Why", page.Told.Select(told => told.Name)));
    }

    [Fact]
    public async Task An_answer_comes_with_the_steps_of_its_proof()
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk();
        await presenter.Do("LoadPuzzle", Grids.EssayOne, "", "", "");

        await presenter.Do("Why", "r5c5", 5);

        var view = await presenter.Sees("Why", _ => true);
        Assert.StartsWith("Row five column five is five. It follows in three steps", view.GetProperty("text").GetString(), StringComparison.Ordinal);
        Assert.Equal(
            ["hidden single", "hidden single", "full house"],
            view.GetProperty("steps").EnumerateArray().Select(step => step.GetProperty("name").GetString()));
    }

    private static (string? Entry, string? Kind) Proof(System.Text.Json.JsonElement view) =>
        view.GetProperty("proof") is { ValueKind: System.Text.Json.JsonValueKind.Object } proof
            ? (proof.GetProperty("entry").GetString(), proof.GetProperty("kind").GetString())
            : default;
}
