using System.Text.Json;
using Companion.Server.Settings;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.CommandLine;

public sealed class ScanCommandTests
{
    [Fact]
    public async Task A_position_is_scanned_into_the_documented_shape()
    {
        // The essay's worked example: r5c5 can only be 5.
        var (code, output, _) = await Cli.Run("scan", Grids.EssayOne, "--json");
        using var json = JsonDocument.Parse(output);

        Assert.Equal(0, code);
        Assert.Equal(["grid", "deductions"], Names(json.RootElement));
        Assert.Equal(Grids.EssayOne.Replace('0', '.'), json.RootElement.GetProperty("grid").GetString());
        Assert.All(json.RootElement.GetProperty("deductions").EnumerateArray(), deduction => Assert.Equal(
            ["rule", "cells", "digits", "restsOn", "places", "removes", "text"], Names(deduction)));
        Assert.Equal(
            """
            {"rule":"naked-single","cells":[{"cell":"r5c5","role":"single"}],"digits":[5],"restsOn":[{"cell":"r5c5","digit":1},{"cell":"r5c5","digit":2},{"cell":"r5c5","digit":3},{"cell":"r5c5","digit":4},{"cell":"r5c5","digit":6},{"cell":"r5c5","digit":7},{"cell":"r5c5","digit":8},{"cell":"r5c5","digit":9}],"places":[{"cell":"r5c5","digit":5}],"removes":[],"text":"In row five column five, every digit but five is ruled out. So row five column five is five."}
            """,
            Deduction(json, "naked-single", "r5c5").GetRawText());
    }

    [Fact]
    public async Task Candidates_that_are_gone_already_count_as_gone()
    {
        var (_, before, _) = await Cli.Run("scan", Grids.EssayOne, "--json");
        Assert.DoesNotContain("In row one column three, every digit but one is ruled out.", before, StringComparison.Ordinal);

        // r1c3 has 1, 2 and 4 from the digits alone.
        var (code, after, _) = await Cli.Run("scan", Grids.EssayOne, "--without", "r1c3=2,r1c3=4", "--json");

        Assert.Equal(0, code);
        Assert.Contains("In row one column three, every digit but one is ruled out.", after, StringComparison.Ordinal);
    }

    [Fact]
    public async Task People_are_given_a_numbered_line_a_deduction()
    {
        var (code, output, _) = await Cli.Run("scan", Grids.EssayOne);
        var lines = output.TrimEnd().Split('\n');

        Assert.Equal(0, code);
        Assert.All(lines, (line, index) => Assert.Matches($"^ +{index + 1}  [A-Z].*r[1-9]c[1-9]", line));
    }

    [Fact]
    public async Task A_full_grid_has_nothing_open_and_that_is_fine()
    {
        var (code, output, _) = await Cli.Run("scan", Grids.TextbookSolved);

        Assert.Equal(0, code);
        Assert.Equal("The grid is full.", output.Trim());
    }

    [Fact]
    public async Task A_grid_that_is_none_ends_with_1_and_every_reason()
    {
        var (code, output, error) = await Cli.Run("scan", "55" + Grids.EssayOne[2..]);

        Assert.Equal(1, code);
        Assert.Equal("", output);
        Assert.Equal(
            [
                "5 stands twice in row 1, in r1c1 and r1c2: change one of them.",
                "5 stands twice in block 1, in r1c1 and r1c2: change one of them.",
            ],
            error.TrimEnd().Split('\n'));
    }

    [Fact]
    public async Task A_scan_stops_at_a_rule_and_leaves_families_out()
    {
        var (_, all, _) = await Cli.Run("scan", Grids.EssayTwo, "--json");
        var (_, easy, _) = await Cli.Run("scan", Grids.EssayTwo, "--json", "--stop-at", "naked-triple", "--without-family", "singles");
        var rules = Rules(easy);

        Assert.Contains("hidden-single", Rules(all));
        Assert.Contains("continuous-loop", Rules(all));
        Assert.Contains("pointing", rules);
        Assert.All(rules, rule => Assert.Matches("pointing|claiming|naked-pair|hidden-pair|naked-triple", rule));
    }

    [Fact]
    public async Task Rules_that_assume_one_solution_are_used_where_the_digits_have_just_one()
    {
        var (_, one, _) = await Cli.Run("scan", Grids.WithRectangle, "--json");
        var (_, many, _) = await Cli.Run("scan", Grids.WithUselessRectangle, "--json");

        Assert.Contains(Rules(one), rule => rule.Contains("unique-rectangle", StringComparison.Ordinal));
        Assert.DoesNotContain(Rules(many), rule => rule.Contains("unique-rectangle", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_ladder_in_the_data_folder_wins_over_the_one_that_ships()
    {
        using var folder = new TemporaryFolder();
        var shipped = await File.ReadAllTextAsync(ShippedFiles.Ladder, TestContext.Current.CancellationToken);
        var own = shipped.Replace("\"singles\": true", "\"singles\": false", StringComparison.Ordinal);
        Assert.NotEqual(shipped, own);
        await File.WriteAllTextAsync(folder.In("ladder.json"), own, TestContext.Current.CancellationToken);

        var (code, output, _) = await Cli.Run("scan", Grids.EssayOne, "--json", "--data", folder.Path);

        Assert.Equal(0, code);
        Assert.DoesNotContain("naked-single", Rules(output));
    }

    private static HashSet<string> Rules(string json) => [.. JsonDocument.Parse(json).RootElement.GetProperty("deductions")
        .EnumerateArray().Select(deduction => deduction.GetProperty("rule").GetString()!)];

    private static IEnumerable<string> Names(JsonElement element) => element.EnumerateObject().Select(member => member.Name);

    private static JsonElement Deduction(JsonDocument json, string rule, string cell) =>
        json.RootElement.GetProperty("deductions").EnumerateArray().First(deduction =>
            deduction.GetProperty("rule").GetString() == rule
            && deduction.GetProperty("cells")[0].GetProperty("cell").GetString() == cell);
}
