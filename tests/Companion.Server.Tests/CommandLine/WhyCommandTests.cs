using System.Text.Json;

namespace Companion.Server.Tests.CommandLine;

public sealed class WhyCommandTests
{
    [Fact]
    public async Task A_digit_is_explained_step_by_step_and_by_the_one_step_that_does_it_alone()
    {
        // The essay's worked example: r5c5 can only be 5.
        var (code, output, error) = await Cli.Run("why", Grids.EssayOne, "r5c5=5");

        Assert.Equal((0, ""), (code, error));
        Assert.Equal(
            """
            Row five column five is five. It follows in three steps, the hardest a hidden single. A naked single does it alone.
               1  In column five, four has nowhere left to go but row three. So row three column five is four.
               2  In column five, three has nowhere left to go but row seven. So row seven column five is three.
               3  In column five, only row five is still open, and the digit it still needs is five. So row five column five is five.
              or  In row five column five, every digit but five is ruled out. So row five column five is five.

            """,
            output);
    }

    [Theory]
    [InlineData("r1c1=5", "Row one column one is five: it was given.")]
    [InlineData("r1c1-4", "Row one column one is five, so it is not four.")]
    [InlineData("r1c3-3", "Row one column three cannot be three: it sees row one column two, which is.")]
    public async Task What_the_digits_show_needs_no_step(string question, string answer)
    {
        var (code, output, _) = await Cli.Run("why", Grids.EssayOne, question);

        Assert.Equal((0, answer), (code, output.TrimEnd()));
    }

    [Theory]
    [InlineData("r5c5-5", "5 is not excluded from r5c5: it is the digit of the only solution. Row five column five is five.")]
    [InlineData("r1c3=1", "Row one column three cannot be one. It follows ")]
    [InlineData("r1c3-1", "Row one column three cannot be one. It follows ")]
    public async Task Who_has_it_the_wrong_way_round_is_told(string question, string answer)
    {
        var (code, output, _) = await Cli.Run("why", Grids.EssayOne, question);

        Assert.Equal(0, code);
        Assert.StartsWith(answer, output, StringComparison.Ordinal);
        Assert.StartsWith("   1  ", output.Split('\n')[1], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Candidates_that_are_gone_already_make_the_proof_shorter()
    {
        var (_, output, _) = await Cli.Run("why", Grids.EssayOne, "r1c3=4", "--without", "r1c3=1,r1c3=2");

        Assert.StartsWith("Row one column three is four.", output, StringComparison.Ordinal);
        Assert.Contains("A naked single does it alone.", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_the_ladder_does_not_prove_says_so_and_that_is_fine()
    {
        var (code, output, _) = await Cli.Run("why", Grids.EssayOne, "r1c3=4", "--stop-at", "full-house");

        Assert.Equal(0, code);
        Assert.Equal("Row one column three is four. No rule of the ladder proves it, up to full house.", output.TrimEnd());
    }

    [Fact]
    public async Task The_answer_has_the_documented_shape()
    {
        var (code, output, _) = await Cli.Run("why", Grids.EssayOne, "r5c5=5", "--json");
        using var json = JsonDocument.Parse(output);
        var root = json.RootElement;

        Assert.Equal(0, code);
        Assert.Equal(
            ["grid", "cell", "digit", "answer", "text", "proved", "cost", "upTo", "atOnce", "steps"],
            root.EnumerateObject().Select(member => member.Name));
        Assert.Equal(("r5c5", 5, "goes"), (root.GetProperty("cell").GetString(), root.GetProperty("digit").GetInt32(), root.GetProperty("answer").GetString()));
        Assert.True(root.GetProperty("proved").GetBoolean());
        Assert.Equal("naked-single", root.GetProperty("atOnce").GetProperty("rule").GetString());
        Assert.Equal(
            ["hidden-single", "hidden-single", "full-house"],
            root.GetProperty("steps").EnumerateArray().Select(step => step.GetProperty("rule").GetString()));
    }

    [Fact]
    public async Task What_is_not_proved_has_no_steps_in_json_and_names_the_last_rule()
    {
        var (_, output, _) = await Cli.Run("why", Grids.EssayOne, "r1c3=4", "--stop-at", "full-house", "--json");
        using var json = JsonDocument.Parse(output);

        Assert.False(json.RootElement.GetProperty("proved").GetBoolean());
        Assert.Equal("full-house", json.RootElement.GetProperty("upTo").GetString());
        Assert.Equal(0, json.RootElement.GetProperty("steps").GetArrayLength());
    }

    [Theory]
    [InlineData(".................................................................................", "solution")]
    [InlineData("55...............................................................................", "5 stands twice in row 1")]
    public async Task A_position_without_exactly_one_solution_ends_with_1_and_a_plain_sentence(string grid, string sentence)
    {
        var (code, output, error) = await Cli.Run("why", grid, "r5c5=5");

        Assert.Equal((1, ""), (code, output));
        Assert.Contains(sentence, error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_position_from_which_a_true_candidate_was_taken_has_no_solution()
    {
        var (code, _, error) = await Cli.Run("why", Grids.EssayOne, "r5c5=5", "--without", "r1c3=4");

        Assert.Equal(1, code);
        Assert.Contains("no solution", error, StringComparison.OrdinalIgnoreCase);
    }
}
