using System.Text.Json;
using Companion.Engine;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.CommandLine;

public sealed class CheckGradeTests : IDisposable
{
    // The last line of the 2011 list of extremely hard puzzles: nothing common opens it.
    private const string Hardest = "5..6......2.....4...1.2.3..9..8.......7.4.1.......9..6..4.7.2...3.....1......5..8";

    private readonly TemporaryFolder _folder = new();

    [Fact]
    public async Task Each_puzzle_is_graded_where_it_is_asked_for()
    {
        var lines = await Check([Grids.Textbook, Hardest, Grids.WithUselessRectangle], "--json", "--stop-at", "xyz-wing");

        Assert.Contains(
            """ "candidatesAfterLocked":0,"hardest":"hidden-single","grade":{"word":"flat","work":67,"rounds":8,"gates":0},"steps":[{"rule":""".Trim(), lines[0], StringComparison.Ordinal);
        Assert.EndsWith(
            """ "candidatesAfterLocked":241,"hardest":null,"grade":{"word":"unclimbed","work":null,"rounds":0,"gates":0},"steps":[]}""".Trim(), lines[1], StringComparison.Ordinal);
        Assert.EndsWith(""" "hardest":null,"grade":null,"steps":[]}""".Trim(), lines[2], StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_steps_lead_from_the_puzzle_to_its_solution_and_each_says_why()
    {
        var lines = await Check([Grids.WithRectangle], "--json", "--without-family", "uniqueness");
        using var json = JsonDocument.Parse(lines[0]);
        var board = Board.Parse(Grids.WithRectangle);

        foreach (var step in json.RootElement.GetProperty("steps").EnumerateArray())
        {
            Assert.Equal(["rule", "places", "removes", "text"], step.EnumerateObject().Select(member => member.Name));
            Assert.EndsWith(".", step.GetProperty("text").GetString(), StringComparison.Ordinal);
            board = board.Remove(Candidates(step.GetProperty("removes")));
            foreach (var placed in Candidates(step.GetProperty("places")))
                board = board.Place(placed);
        }

        Assert.Equal(json.RootElement.GetProperty("solution").GetString(), board.ToString());
    }

    [Fact]
    public async Task People_are_told_the_grade_in_a_few_words()
    {
        var lines = await Check([Grids.Textbook, Hardest], "--grade", "--stop-at", "xyz-wing");

        Assert.EndsWith("solved by singles; flat: work 67, up to hidden single, 8 rounds, 0 of them gates", lines[0], StringComparison.Ordinal);
        Assert.EndsWith("; unclimbed: the ladder does not solve it, 0 rounds, 0 of them gates", lines[1], StringComparison.Ordinal);
    }

    public void Dispose() => _folder.Dispose();

    private async Task<string[]> Check(string[] puzzles, params string[] options)
    {
        await File.WriteAllLinesAsync(_folder.In("puzzles.txt"), puzzles, TestContext.Current.CancellationToken);
        var (_, output, _) = await Cli.Run(["check", _folder.In("puzzles.txt"), .. options]);
        return output.TrimEnd().Split('\n');
    }

    private static CandidateSet Candidates(JsonElement list) => CandidateSet.Of([.. list.EnumerateArray().Select(one =>
        Candidate.Parse($"{one.GetProperty("cell").GetString()}={one.GetProperty("digit").GetInt32()}"))]);
}
