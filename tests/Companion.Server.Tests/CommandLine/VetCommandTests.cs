using System.Text.Json;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.CommandLine;

public sealed class VetCommandTests : IDisposable
{
    // The demo, of our own generator.
    private const string Demo = "45...9....8..5.4.31....48..6..9......7..1..9......2..8..61....25.2.9..4....4...35";

    // Of our own generator, seed 1, made to need an XY-chain.
    private const string Chain = "....6.45.9..7...1....8.47..5.7.98.6...........2.35.9.4..69.3....7...6..3.19.7....";

    private readonly TemporaryFolder _folder = new();

    [Fact]
    public async Task A_puzzle_is_vetted_in_sentences()
    {
        var (code, output, _) = await Vet([Demo], "--feature", "xy-wing", "--feature", "x-wing", "--stop-at", "xyz-wing");

        Assert.Equal(0, code);
        Assert.StartsWith("One solution, 27 givens, not minimal: each of those in ", output, StringComparison.Ordinal);
        Assert.Contains("\nThe cells of the givens look the same after a half-turn.\n", output, StringComparison.Ordinal);
        Assert.Contains("\nRules, hardest first: XY-wing (", output, StringComparison.Ordinal);
        Assert.Contains("\nXY-wing: needed. Without it and anything harder the ladder stops at ", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Json_has_all_of_it()
    {
        var (_, output, _) = await Vet([Demo, Grids.Textbook], "--json", "--feature", "xy-wing", "--stop-at", "xyz-wing");
        var lines = output.TrimEnd().Split('\n');
        using var demo = JsonDocument.Parse(lines[0]);
        using var textbook = JsonDocument.Parse(lines[1]);

        Assert.Equal(
            ["puzzle", "solutions", "clues", "redundant", "symmetries", "hardest", "grade", "rules", "featured", "corrections", "faults", "sentences"],
            demo.RootElement.EnumerateObject().Select(member => member.Name));
        Assert.Equal("xy-wing", demo.RootElement.GetProperty("hardest").GetString());
        Assert.Equal("needed", demo.RootElement.GetProperty("featured")[0].GetProperty("need").GetString());
        Assert.Equal("spare", textbook.RootElement.GetProperty("featured")[0].GetProperty("need").GetString());
        Assert.Equal("""["hidden-single","full-house"]""", textbook.RootElement.GetProperty("featured")[0].GetProperty("instead").GetRawText());
    }

    [Fact]
    public async Task A_mistyped_grid_tells_where_the_error_is_likely()
    {
        var (code, output, _) = await Vet(["55" + Demo[2..]]);

        Assert.Equal(1, code);
        Assert.Contains("5 stands twice in row 1, in r1c1 and r1c2: change one of them.", output, StringComparison.Ordinal);
        Assert.Contains("r1c1 4 for 5", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Of_more_changes_than_are_told_it_is_said_how_many_there_are()
    {
        // Without this given the grid has several solutions.
        var (_, output, _) = await Vet([Demo.Replace("25.2.9", "2..2.9", StringComparison.Ordinal)]);
        var (_, json, _) = await Vet([Demo.Replace("25.2.9", "2..2.9", StringComparison.Ordinal)], "--json");
        using var result = JsonDocument.Parse(json);
        var count = result.RootElement.GetProperty("corrections").GetArrayLength();

        Assert.True(count > 12);
        Assert.EndsWith($" and {count - 12} more.\n", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Many_givens_that_follow_from_the_others_are_counted_and_not_listed()
    {
        var (_, output, _) = await Vet(["." + Grids.TextbookSolved[1..]]);

        Assert.StartsWith("One solution, 80 givens, not minimal: each of them follows from the others.\n", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_rule_that_is_open_beside_easier_ones_alone_is_told_so_and_the_sentence_begins_like_one()
    {
        var (_, output, _) = await Vet([Chain], "--feature", "naked-pair", "--feature", "x-wing");

        Assert.Contains(
            "\nX-wing: not needed, and not open where easier rules stop, though it is on the way beside easier ones, first at ", output, StringComparison.Ordinal);
        Assert.Contains("\nNaked pair: ", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("hello")]
    [InlineData("1................................................................................")]
    public async Task What_is_no_slip_of_one_cell_is_not_called_one(string grid)
    {
        var (code, output, _) = await Vet([grid]);

        Assert.Equal(1, code);
        Assert.DoesNotContain("change of one cell", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Of_a_full_grid_it_is_said_that_nothing_is_left_to_solve()
    {
        var (code, output, _) = await Vet([Grids.TextbookSolved], "--feature", "xy-wing");

        Assert.Equal((0, "The grid is full and right: nothing is left to solve."), (code, output.TrimEnd()));
    }

    // The names of --symmetry of make, so that what vet finds can be asked for there.
    [Theory]
    [InlineData("half-turn")]
    [InlineData("quarter-turn")]
    [InlineData("left-right")]
    [InlineData("top-bottom")]
    [InlineData("falling-diagonal")]
    [InlineData("rising-diagonal")]
    public async Task A_symmetry_is_called_what_make_calls_it(string symmetry)
    {
        var (_, made, _) = await Cli.Run("make", "--symmetry", symmetry, "--seed", "4");
        var (_, output, _) = await Vet([made.TrimEnd()], "--stop-at", "xyz-wing");

        Assert.Contains(symmetry.Replace("-diagonal", " diagonal", StringComparison.Ordinal), output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_grid_may_be_drawn_in_nine_lines()
    {
        var (code, output, _) = await Vet(Demo.Chunk(9).Select(row => new string(row)));

        Assert.Equal(0, code);
        Assert.StartsWith("One solution, 27 givens, ", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_featured_rule_that_is_not_on_the_ladder_is_refused()
    {
        var (code, _, error) = await Vet([Demo], "--feature", "xy-wing", "--stop-at", "naked-pair");

        Assert.Equal(2, code);
        Assert.Equal("This ladder has no rule called 'xy-wing': name one of ladder.json that is not cut off.", error.TrimEnd());
    }

    public void Dispose() => _folder.Dispose();

    private async Task<(int Code, string Output, string Error)> Vet(IEnumerable<string> lines, params string[] options)
    {
        await File.WriteAllLinesAsync(_folder.In("puzzles.txt"), lines, TestContext.Current.CancellationToken);
        return await Cli.Run(["vet", _folder.In("puzzles.txt"), .. options]);
    }
}
