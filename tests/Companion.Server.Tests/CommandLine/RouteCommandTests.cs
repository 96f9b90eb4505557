using System.Text.Json;
using System.Xml.Linq;
using Companion.Engine;

namespace Companion.Server.Tests.CommandLine;

public sealed class RouteCommandTests
{
    // The demo, of our own generator.
    private const string Demo = "45...9....8..5.4.31....48..6..9......7..1..9......2..8..61....25.2.9..4....4...35";

    [Fact]
    public async Task A_run_sheet_tells_passages_steps_and_the_clock()
    {
        var (code, output, _) = await Cli.Run("route", Demo, "--feature", "xy-wing", "--stop-at", "grouped-chain");

        Assert.Equal(0, code);
        Assert.StartsWith(
            """
              0:00  Singles in the top band (0:25)
                       1  Hidden single: 6 in block 1 → r3c2 is 6
            """,
            output,
            StringComparison.Ordinal);
        Assert.Contains("  Featured: XY-wing (0:", output, StringComparison.Ordinal);
        Assert.Contains("  gate ", output, StringComparison.Ordinal);
        Assert.Contains("\nXY-wing: step ", output, StringComparison.Ordinal);
        Assert.Contains("  The grid is full.\n", output, StringComparison.Ordinal);
        Assert.Matches("\nWorth saying, the rarest first:\n( +[0-9]* +[A-Z0-9][^\n]*\\.\n)+", output);
    }

    [Fact]
    public async Task Json_has_steps_that_lead_to_the_solution_and_a_clock_at_the_speed_of_speech()
    {
        var (_, output, _) = await Cli.Run("route", Demo, "--feature", "xy-wing", "--json", "--stop-at", "grouped-chain");
        using var sheet = JsonDocument.Parse(output);
        var board = Board.Parse(sheet.RootElement.GetProperty("grid").GetString()!);
        var at = 0.0;
        foreach (var step in sheet.RootElement.GetProperty("steps").EnumerateArray())
        {
            Assert.Equal(
                ["number", "at", "seconds", "rule", "name", "places", "removes", "isGate", "isFeatured", "short", "text"],
                step.EnumerateObject().Select(member => member.Name));
            Assert.Equal(at, step.GetProperty("at").GetDouble(), tolerance: 0.06);
            // 150 words a minute, radio practice: broadcast authors name 160 to 180 as the upper end.
            at += step.GetProperty("seconds").GetDouble();
            board = board.Remove(Candidates(step.GetProperty("removes")));
            foreach (var placed in Candidates(step.GetProperty("places")))
                board = board.Place(placed);
        }

        Assert.Equal(Puzzle.Parse(Demo).Solution.ToString(), board.ToString());
        Assert.Equal(at, sheet.RootElement.GetProperty("seconds").GetDouble(), tolerance: 0.5);
    }

    [Fact]
    public async Task The_page_to_print_holds_every_step_and_pictures_of_its_own_for_the_featured_ones()
    {
        var (_, page, _) = await Cli.Run("route", Demo, "--feature", "xy-wing", "--html", "--stop-at", "grouped-chain");
        var (_, output, _) = await Cli.Run("route", Demo, "--feature", "xy-wing", "--json", "--stop-at", "grouped-chain");
        using var sheet = JsonDocument.Parse(output);
        var html = XDocument.Parse(page).Root!;

        Assert.Equal(
            sheet.RootElement.GetProperty("steps").EnumerateArray().Select(step => step.GetProperty("text").GetString()),
            html.Descendants("ol").Elements("li").Select(item => item.Nodes().OfType<XText>().Last().Value.TrimStart()));
        Assert.Equal(
            sheet.RootElement.GetProperty("steps").EnumerateArray().Count(step => step.GetProperty("isGate").GetBoolean()),
            html.Descendants("b").Count());
        var source = Assert.Single(html.Descendants("figure")).Element("img")!.Attribute("src")!.Value;
        Assert.StartsWith("data:image/png;base64,iVBORw0KGgo", source, StringComparison.Ordinal);
        Assert.DoesNotContain("http", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Each_featured_rule_may_be_early_or_late()
    {
        string[] route = ["route", Demo, "--stop-at", "grouped-chain", "--feature"];

        var (_, early, _) = await Cli.Run([.. route, "claiming:early"]);
        var (_, late, _) = await Cli.Run([.. route, "claiming:late", "--early"]);

        Assert.Equal((await Cli.Run([.. route, "claiming", "--early"])).Output, early);
        Assert.Equal((await Cli.Run([.. route, "claiming"])).Output, late);
        Assert.NotEqual(early, late);
    }

    [Fact]
    public async Task A_time_that_is_neither_early_nor_late_is_refused()
    {
        var (code, _, error) = await Cli.Run("route", Demo, "--feature", "xy-wing:soon");

        Assert.Equal(2, code);
        Assert.Equal("A featured rule is shown early or late and not 'soon': write it as in xy-wing:early.", error.TrimEnd());
    }

    [Theory]
    [InlineData(Demo, "r3c2=6,r3c2=9", "--without takes out r3c2=6, which is in the solution of this grid: no solution is left.")]
    [InlineData("55" + ".......", "", "A grid has 81 cells and this has 9: give 81 characters or nine lines of nine.")]
    public async Task What_is_taken_out_of_the_solution_is_not_called_mistyped(string grid, string without, string sentence)
    {
        var (code, _, error) = await Cli.Run("route", grid, "--without", without);

        Assert.Equal((1, sentence), (code, error.TrimEnd()));
    }

    [Fact]
    public async Task Whoever_speaks_slower_takes_longer()
    {
        var slow = await Seconds("--words-per-minute", "110");
        var usual = await Seconds();

        Assert.Equal(150.0 / 110, slow / usual, tolerance: 0.01);
    }

    [Fact]
    public async Task Where_the_ladder_leads_no_further_the_sheet_says_so()
    {
        var (code, output, _) = await Cli.Run("route", Demo, "--stop-at", "naked-pair");

        Assert.Equal(1, code);
        Assert.Contains("  The ladder leads no further.\n", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_grid_that_is_no_puzzle_is_refused()
    {
        var (code, _, error) = await Cli.Run("route", "4" + Demo[1..].Replace('5', '.'));

        Assert.Equal(1, code);
        Assert.Contains("more than one solution", error, StringComparison.Ordinal);
    }

    private static async Task<double> Seconds(params string[] options)
    {
        var (_, output, _) = await Cli.Run(["route", Demo, "--json", "--stop-at", "xyz-wing", .. options]);
        using var sheet = JsonDocument.Parse(output);
        return sheet.RootElement.GetProperty("seconds").GetDouble();
    }

    private static CandidateSet Candidates(JsonElement list) => CandidateSet.Of([.. list.EnumerateArray().Select(one =>
        Candidate.Parse($"{one.GetProperty("cell").GetString()}={one.GetProperty("digit").GetInt32()}"))]);
}
