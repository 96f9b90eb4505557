using System.Text.Json;
using Companion.Server.Access;
using Companion.Server.Live.Loop;
using Companion.Server.Tests.Running;
using Companion.Session.Planning;
using Microsoft.Extensions.DependencyInjection;

namespace Companion.Server.Tests.Live;

/// <summary>The featured rules are forecast beside the session, for the panels and for nobody else.</summary>
public sealed class ForecastTests
{
    [Fact]
    public async Task A_forecast_holds_no_entry_up_is_cancelled_by_the_next_one_and_the_latest_wins()
    {
        using var worker = HeldWorker.OfOutlooks();
        await using var companion = await RunningCompanion.Start(adjust: builder => builder.Services.AddSingleton<IWorker<Outlook>>(worker));
        await using var presenter = await companion.OpenDesk();
        await Begun(worker);

        // Each is answered, shown and scanned while the forecast of the board before it is still being worked out.
        foreach (var (cell, digit) in new[] { ("r3c2", 6), ("r2c6", 1), ("r3c8", 5) })
        {
            var held = worker.Begun.Last();
            var sequence = (await presenter.Ask("PlaceDigit", cell, digit)).Sequence;
            await presenter.Sees("Desk", sequence);
            await presenter.Sees("Next", view => view.GetProperty("sequence").GetInt64() >= sequence && !view.GetProperty("goesOn").GetBoolean());
            await Begun(worker, after: held);
        }

        Assert.DoesNotContain("Forecast", presenter.Told.Select(told => told.Name));
        Assert.Equal(worker.Begun.SkipLast(1), worker.Cancelled);
        worker.Release();

        Assert.Equal(worker.Begun.Last(), (await presenter.Sees("Forecast", _ => true)).GetProperty("sequence").GetInt64());
    }

    [Fact]
    public async Task Both_panels_and_who_comes_late_see_when_the_featured_rule_comes_and_no_other_page_does()
    {
        await using var companion = await RunningCompanion.Start();
        await using var presenter = await companion.OpenDesk();
        await using var coHost = await companion.OpenDesk(AccessRole.CoHost);
        await using var overlay = await companion.OpenOverlay();
        foreach (var page in new[] { presenter, coHost })
        {
            var wing = Assert.Single((await page.Sees("Forecast", _ => true)).GetProperty("rules").EnumerateArray());
            Assert.Equal(("xy-wing", "XY-wing", "ahead"), (Text(wing, "rule"), Text(wing, "name"), Text(wing, "coming")));
            Assert.Equal(3, wing.GetProperty("watch").GetArrayLength());
        }

        var entered = (await presenter.Ask("PlaceDigit", "r3c2", 6)).Sequence;
        await coHost.Sees("Forecast", entered);
        await presenter.Do("FeatureRules", (object)Array.Empty<object>());
        await presenter.Sees("Forecast", view => view.GetProperty("rules").GetArrayLength() == 0);

        await using var late = await companion.OpenDesk(AccessRole.CoHost);
        Assert.Empty((await late.Sees("Forecast", _ => true)).GetProperty("rules").EnumerateArray());
        Assert.DoesNotContain("Forecast", overlay.Told.Select(told => told.Name));
    }

    private static async Task Begun(HeldWorker<Outlook> worker, long after = 0)
    {
        while (worker.Begun.LastOrDefault() <= after)
            await Task.Delay(10, TestContext.Current.CancellationToken);
    }

    private static string? Text(JsonElement line, string name) => line.GetProperty(name).GetString();
}
