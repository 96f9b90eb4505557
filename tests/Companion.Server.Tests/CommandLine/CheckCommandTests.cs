using System.Text.Json;
using Companion.Engine.Tests;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.CommandLine;

public sealed class CheckCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    [Fact]
    public async Task Each_puzzle_becomes_one_line_in_the_documented_shape()
    {
        var (code, lines, _) = await Check(
            "# the textbook's easy example",
            "",
            Grids.Textbook,
            Grids.PrologManual + "\tthe SWI-Prolog manual's");

        Assert.Equal(0, code);
        // The counts of the second line are our own: nobody has published them.
        Assert.Equal(
            [
                $$"""{"line":3,"puzzle":"{{Grids.Textbook}}","solutions":1,"solution":"{{Grids.TextbookSolved}}","minimal":false,"clues":32,"candidatesAtStart":{{CandidatesAtStart(lines[0])}},"filledAfterSingles":81,"candidatesAfterSingles":0,"candidatesAfterLocked":0}""",
                lines[1],
            ],
            lines);
        using var second = JsonDocument.Parse(lines[1]);
        Assert.Equal(Grids.PrologManualSolved, second.RootElement.GetProperty("solution").GetString());
        Assert.True(second.RootElement.GetProperty("minimal").GetBoolean()); // 17 clues are the fewest, so none can be left out
        Assert.Equal(17, second.RootElement.GetProperty("clues").GetInt32());
    }

    [Fact]
    public async Task A_line_that_is_no_grid_is_still_one_line_with_every_reason_and_the_others_are_checked()
    {
        var (code, lines, _) = await Check("55" + Grids.EssayOne[2..], Grids.Textbook);

        Assert.Equal(1, code);
        Assert.Equal(2, lines.Length);
        Assert.Equal(
            $$"""{"line":1,"puzzle":"55{{Grids.EssayOne[2..]}}","solutions":0,"solution":null,"minimal":null,"clues":null,"candidatesAtStart":null,"filledAfterSingles":null,"candidatesAfterSingles":null,"candidatesAfterLocked":null,"faults":["5 stands twice in row 1, in r1c1 and r1c2: change one of them.","5 stands twice in block 1, in r1c1 and r1c2: change one of them."]}""",
            lines[0]);
    }

    [Theory]
    [InlineData(".................................................................................", 2, 0, 729)]
    [InlineData("123456789........................................................................", 2, 9, 540)] // 72 cells of 9, less 12 for each digit
    public async Task A_puzzle_with_more_than_one_solution_is_a_finding(string puzzle, int solutions, int clues, int candidates)
    {
        var (code, lines, _) = await Check(puzzle);
        using var line = JsonDocument.Parse(lines[0]);

        Assert.Equal(1, code);
        Assert.Equal(solutions, line.RootElement.GetProperty("solutions").GetInt32());
        Assert.Equal(JsonValueKind.Null, line.RootElement.GetProperty("solution").ValueKind);
        Assert.Equal(JsonValueKind.Null, line.RootElement.GetProperty("minimal").ValueKind);
        Assert.Equal(clues, line.RootElement.GetProperty("clues").GetInt32());
        Assert.Equal(candidates, line.RootElement.GetProperty("candidatesAtStart").GetInt32());
        Assert.Equal(clues, line.RootElement.GetProperty("filledAfterSingles").GetInt32()); // singles find nothing
        Assert.Equal(candidates, line.RootElement.GetProperty("candidatesAfterSingles").GetInt32());
        Assert.False(line.RootElement.TryGetProperty("faults", out _));
    }

    [Fact]
    public async Task A_puzzle_without_a_solution_is_a_finding()
    {
        var (code, lines, _) = await Check(
            "1234567.." // wants 8 and 9, and the two cells are closed to 8
            + "........."
            + "........."
            + ".......8."
            + "........."
            + "........."
            + "........8"
            + "........."
            + ".........");
        using var line = JsonDocument.Parse(lines[0]);

        Assert.Equal(1, code);
        Assert.Equal(0, line.RootElement.GetProperty("solutions").GetInt32());
    }

    [Fact]
    public async Task Five_counts_are_those_published_for_15_000_puzzles()
    {
        // D. Berthier, CISSE 2009, DOI 10.1007/978-90-481-9112-3_16
        var rows = OpenData.Lines("minimal-with-published-counts.tsv", hasHeader: true);
        var (code, lines, _) = await Check(rows);

        Assert.Equal(0, code);
        Assert.Equal(
            rows,
            lines.Select(line =>
            {
                using var json = JsonDocument.Parse(line);
                string[] names = ["puzzle", "clues", "candidatesAtStart", "filledAfterSingles", "candidatesAfterSingles", "candidatesAfterLocked"];
                Assert.True(json.RootElement.GetProperty("minimal").GetBoolean());
                return string.Join('\t', names.Select(name => json.RootElement.GetProperty(name).ToString()));
            }));
    }

    [Fact]
    public async Task People_are_given_a_line_a_puzzle()
    {
        await File.WriteAllLinesAsync(_folder.In("puzzles.txt"), [Grids.Textbook, "12"], TestContext.Current.CancellationToken);
        var (code, output, _) = await Cli.Run("check", _folder.In("puzzles.txt"));

        Assert.Equal(1, code);
        Assert.Equal(
            """
                 1  one solution, not minimal, 32 clues, solved by singles
                 2  A grid has 81 cells and this has 2: give 81 characters or nine lines of nine.
            """,
            output.TrimEnd());
    }

    public void Dispose() => _folder.Dispose();

    private async Task<(int ExitCode, string[] Lines, string Error)> Check(params string[] lines)
    {
        var file = _folder.In("puzzles.txt");
        await File.WriteAllLinesAsync(file, lines, TestContext.Current.CancellationToken);
        var (code, output, error) = await Cli.Run("check", file, "--json", "--counts");
        return (code, output.TrimEnd().Split('\n'), error);
    }

    private static int CandidatesAtStart(string line)
    {
        using var json = JsonDocument.Parse(line);
        return json.RootElement.GetProperty("candidatesAtStart").GetInt32();
    }
}
