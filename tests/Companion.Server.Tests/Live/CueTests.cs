using System.Text.Json;
using Companion.Server.Access;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.Live;

/// <summary>The cue list between two co-hosts and the presenter, over real connections.</summary>
public sealed class CueTests : IAsyncLifetime
{
    private const string Single = "naked-single 5 single r5c5";

    private RunningCompanion _companion = null!;
    private OpenPage _presenter = null!;
    private OpenPage _first = null!;
    private OpenPage _second = null!;
    private string _deduction = "";

    public async ValueTask InitializeAsync()
    {
        _companion = await RunningCompanion.Start();
        _presenter = await _companion.OpenDesk();
        _first = await _companion.OpenDesk(AccessRole.CoHost);
        _second = await _companion.OpenDesk(AccessRole.CoHost, speaksMessagePack: true);
        await _presenter.Do("LoadPuzzle", Grids.EssayOne, "", "", "");
        var next = await _presenter.Sees("Next", view => Ids(view).Any(id => id.StartsWith(Single, StringComparison.Ordinal)));
        _deduction = Ids(next).Single(id => id.StartsWith(Single, StringComparison.Ordinal));
    }

    [Fact]
    public async Task What_one_writes_all_see_in_order()
    {
        await _first.Do("CueText", "Thanks to the setter");
        await _second.Do("CueDeduction", _deduction, 2);
        await _first.Do("MoveCue", 2, null);

        foreach (var page in new[] { _presenter, _first, _second })
        {
            var view = await page.Sees("Cues", view => Drawn(view).StartsWith("2 listed", StringComparison.Ordinal));
            Assert.Matches(@"^2 listed grade 2 Look out for a naked single.*\n1 listed Thanks to the setter$", Drawn(view));
        }
    }

    [Fact]
    public async Task Who_comes_late_is_greeted_with_the_list()
    {
        await _first.Do("CueText", "Thanks to the setter");

        await using var late = await _companion.OpenDesk(AccessRole.CoHost);
        await late.Sees("Cues", view => Drawn(view) == "1 listed Thanks to the setter");
    }

    [Fact]
    public async Task Of_two_who_change_the_same_at_once_the_later_is_told_to_look_again()
    {
        await _first.Do("CueText", "Thanks");
        await _second.Sees("Cues", view => Drawn(view).Length > 0);

        var replies = await Task.WhenAll(_first.Ask("RewordCue", 1, 1, "Thanks to the setter"), _second.Ask("RewordCue", 1, 1, "Many thanks"));

        Assert.Equal(
            ["Somebody changed this just now: look again.", null],
            replies.Select(reply => reply.Refusal).OrderDescending());
        var kept = replies[0].Refusal is null ? "Thanks to the setter" : "Many thanks";
        await _presenter.Sees("Cues", view => Drawn(view) == $"1 listed {kept}");
    }

    [Fact]
    public async Task A_cue_is_sent_to_the_presenter_who_takes_it_on_air()
    {
        await using var overlay = await _companion.OpenOverlay();
        await _first.Do("CueDeduction", _deduction, 3);
        await _first.Do("TurnCue", 1, 1, "standBy");
        await _first.Do("TurnCue", 1, 2, "go");
        await _presenter.Sees("Cues", view => Drawn(view).StartsWith("1 go", StringComparison.Ordinal));
        Assert.DoesNotContain(overlay.Told, told => told.View.GetProperty("grade").ValueKind == JsonValueKind.Number);

        await _presenter.Do("TakeCue", 1, 3);

        await overlay.Sees("Overlay", view => view.GetProperty("grade") is { ValueKind: JsonValueKind.Number } grade && grade.GetInt32() == 3);
        await _first.Sees("Cues", view => Drawn(view).StartsWith("1 done", StringComparison.Ordinal));
    }

    [Fact]
    public async Task An_entry_that_passes_a_deduction_says_so_on_the_list()
    {
        await _first.Do("CueDeduction", _deduction, 2);
        await _presenter.Do("PlaceDigit", "r5c5", 5);

        await _first.Sees("Cues", view => Drawn(view).EndsWith("has been carried out", StringComparison.Ordinal));
        await _presenter.Do("Undo");
        var last = await _first.Sees("Desk", _companion.Session.State.Sequence);
        await _first.Sees("Cues", last.GetProperty("sequence").GetInt64());
        Assert.DoesNotContain("has been", Drawn(_first.Told.Last(told => told.Name == "Cues").View), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_list_outlives_a_restart()
    {
        using var folder = new TemporaryFolder();
        await using (var companion = await RunningCompanion.Start(folder.Path))
        {
            await using var coHost = await companion.OpenDesk(AccessRole.CoHost);
            await coHost.Do("CueText", "Thanks to the setter");
        }

        await using var again = await RunningCompanion.Start(folder.Path);
        await using var page = await again.OpenDesk(AccessRole.CoHost);
        await page.Sees("Cues", view => Drawn(view) == "1 listed Thanks to the setter");
    }

    public async ValueTask DisposeAsync()
    {
        await _first.DisposeAsync();
        await _second.DisposeAsync();
        await _presenter.DisposeAsync();
        await _companion.DisposeAsync();
    }

    private static IEnumerable<string> Ids(JsonElement next) =>
        next.GetProperty("deductions").EnumerateArray().Select(deduction => deduction.GetProperty("id").GetString()!);

    private static string Drawn(JsonElement cues) => string.Join('\n', cues.GetProperty("callOuts").EnumerateArray().Select(Line));

    private static string Line(JsonElement callOut)
    {
        var deduction = callOut.GetProperty("deduction");
        var (grade, passed) = deduction.ValueKind == JsonValueKind.Null
            ? ("", "")
            : ($"grade {deduction.GetProperty("grade")} ", deduction.GetProperty("passed").ToString());
        return $"{callOut.GetProperty("id")} {callOut.GetProperty("stage")} {grade}{callOut.GetProperty("text")} {passed}".TrimEnd();
    }
}
