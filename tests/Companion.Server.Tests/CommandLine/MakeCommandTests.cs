using System.Text.Json;
using Companion.Engine;
using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.CommandLine;

public sealed class MakeCommandTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    [Fact]
    public async Task Puzzles_are_made_a_line_each_and_the_same_seed_makes_the_same()
    {
        var (code, output, error) = await Cli.Run("make", "--seed", "1", "--count", "3", "--feature", "xy-wing");
        var lines = output.TrimEnd().Split('\n');

        Assert.Equal((0, ""), (code, error));
        Assert.Equal(3, lines.Length);
        Assert.All(lines, line => Assert.Contains(GridSymmetry.HalfTurn, GridSymmetries.Of(Puzzle.Parse(line.Split('\t')[0]).Board.Givens)));
        Assert.All(lines, line => Assert.Matches("^[1-9.]{81}\t[0-9]+ givens\t[a-z]+, work [0-9]+\t[^\t]+\tseed [0-9]+$", line));
        Assert.Equal(output, (await Cli.Run("make", "--seed", "1", "--count", "3", "--feature", "xy-wing")).Output);
    }

    [Fact]
    public async Task The_seed_of_each_puzzle_makes_that_very_puzzle_again()
    {
        var (_, output, _) = await Cli.Run("make", "--seed", "1", "--count", "3", "--feature", "naked-pair");
        var (_, json, _) = await Cli.Run("make", "--seed", "1", "--count", "3", "--feature", "naked-pair", "--json");

        foreach (var (line, described) in output.TrimEnd().Split('\n').Zip(json.TrimEnd().Split('\n')))
        {
            var seed = line.Split('\t')[^1]["seed ".Length..];
            using var made = JsonDocument.Parse(described);

            Assert.Equal(seed, made.RootElement.GetProperty("seed").GetRawText());
            Assert.Equal((0, line + "\n", ""), await Cli.Run("make", "--seed", seed, "--feature", "naked-pair"));
        }
    }

    [Fact]
    public async Task As_many_givens_are_left_as_asked_or_it_is_said_that_there_are_more()
    {
        var (_, asked, silent) = await Cli.Run("make", "--clues", "30", "--seed", "3");
        var (_, more, said) = await Cli.Run("make", "--clues", "17", "--seed", "3", "--symmetry", "none");

        Assert.Contains("\t30 givens\t", asked, StringComparison.Ordinal);
        Assert.DoesNotContain("givens", silent, StringComparison.Ordinal);
        Assert.DoesNotContain("\t17 givens\t", more, StringComparison.Ordinal);
        Assert.Contains("It has more than 17 givens: with any of them gone there are several solutions.\n", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_seed_that_is_none_is_refused_in_plain_words()
    {
        var (code, _, error) = await Cli.Run("make", "--seed", "-1");

        Assert.Equal(2, code);
        Assert.StartsWith("--seed takes a whole number from 0 to 18446744073709551615 and not '-1'.", error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Stopped_it_says_how_many_were_made_and_ends_as_what_is_stopped_does()
    {
        // Hardly any puzzle needs one.
        var (code, said) = await CompanionProcess.Interrupt("-TERM", "make", "--feature", "jellyfish");

        Assert.Equal(2, code);
        Assert.Matches(@"^Making puzzles: (looking|[0-9,]+ tried, 0 as wanted), [0-9]+ s\. Ctrl\+C stops it\.", said);
        Assert.DoesNotMatch("(^| )0 tried", said);
        Assert.Contains("Stopped; 0 of 1 were made.", said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_made_is_read_and_found_as_wanted_by_vet()
    {
        var (_, made, _) = await Cli.Run(
            "make", "--seed", "2", "--count", "2", "--feature", "naked-pair", "--symmetry", "left-right", "--max", "xyz-wing");
        await File.WriteAllTextAsync(_folder.In("made.txt"), made, TestContext.Current.CancellationToken);
        var (code, output, _) = await Cli.Run("vet", _folder.In("made.txt"), "--json", "--feature", "naked-pair", "--stop-at", "xyz-wing");

        Assert.Equal(0, code);
        Assert.All(output.TrimEnd().Split('\n'), line =>
        {
            using var vetted = JsonDocument.Parse(line);
            Assert.Equal("needed", vetted.RootElement.GetProperty("featured")[0].GetProperty("need").GetString());
            Assert.Contains("leftRight", vetted.RootElement.GetProperty("symmetries").EnumerateArray().Select(name => name.GetString()));
        });
    }

    [Fact]
    public async Task Json_has_the_solution_the_seed_and_the_grade()
    {
        var (_, output, _) = await Cli.Run("make", "--seed", "3", "--json", "--symmetry", "none");
        using var made = JsonDocument.Parse(output);

        Assert.Equal(["puzzle", "solution", "clues", "seed", "hardest", "grade"], made.RootElement.EnumerateObject().Select(member => member.Name));
        Assert.Equal(
            made.RootElement.GetProperty("solution").GetString(), Puzzle.Parse(made.RootElement.GetProperty("puzzle").GetString()!).Solution.ToString());
    }

    [Theory]
    [InlineData("--symmetry", "odd")]
    [InlineData("--count", "0")]
    [InlineData("--seed", "-1")]
    [InlineData("--clues", "16")]
    [InlineData("--feature", "magic")]
    [InlineData("--max", "magic")]
    public async Task What_cannot_be_made_is_refused_in_one_sentence(string option, string value)
    {
        var (code, output, error) = await Cli.Run("make", option, value);

        Assert.Equal((2, ""), (code, output));
        Assert.Single(error.TrimEnd().Split('\n'));
    }

    public void Dispose() => _folder.Dispose();
}
