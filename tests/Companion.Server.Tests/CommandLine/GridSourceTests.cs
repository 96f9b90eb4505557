using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.CommandLine;

/// <summary>A grid is given itself, in a file, or through a pipe, to each command that takes one.</summary>
public sealed class GridSourceTests : IDisposable
{
    // The demo, of our own generator.
    private const string Demo = "45...9....8..5.4.31....48..6..9......7..1..9......2..8..61....25.2.9..4....4...35";

    private readonly TemporaryFolder _folder = new();

    [Theory]
    [InlineData("scan", "GRID")]
    [InlineData("why", "GRID", "r3c2=6")]
    [InlineData("route", "GRID", "--stop-at", "xyz-wing")]
    [InlineData("vet", "GRID", "--stop-at", "xyz-wing")]
    public async Task A_file_with_the_grid_in_one_line_or_in_nine_says_what_the_grid_itself_says(params string[] command)
    {
        var itself = await Cli.Run(With(command, Demo));

        Assert.Equal((0, ""), (itself.ExitCode, itself.Error));
        Assert.Equal(itself, await Cli.Run(With(command, await FileOf($"# weekly\n{Demo}\t27 givens\n"))));
        Assert.Equal(itself, await Cli.Run(With(command, await FileOf(string.Join('\n', Demo.Chunk(9).Select(row => new string(row)))))));
    }

    [Theory]
    [InlineData("check")]
    [InlineData("scan")]
    [InlineData("why")]
    [InlineData("route")]
    [InlineData("vet")]
    [InlineData("still")]
    [InlineData("thumbnail")]
    public async Task An_empty_file_and_one_that_is_not_there_are_refused_in_one_sentence(string command)
    {
        var empty = await FileOf(command == "check" ? "# nothing yet\n" : "\n");

        foreach (var (source, words) in new[] { (empty, "has no puzzle: give one of 81 characters or nine lines of nine."), (_folder.In("absent.txt"), "is neither a grid") })
        {
            var (code, output, error) = await Cli.Run(
                [command, source, .. command == "why" ? ["r3c2=6"] : Array.Empty<string>(), .. command is "still" or "thumbnail" ? ["--out", _folder.In("a.png")] : Array.Empty<string>()]);

            Assert.Equal((2, ""), (code, output));
            Assert.Contains(words, Assert.Single(error.TrimEnd().Split('\n')), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Where_one_grid_is_wanted_several_are_refused()
    {
        var (code, _, error) = await Cli.Run("route", await FileOf($"{Demo}\n{Grids.Textbook}\n"));

        Assert.Equal(2, code);
        Assert.EndsWith("has 2 puzzles and this command takes one: give that one alone.\n", error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_no_grid_and_no_file_name_says_what_is_wrong_with_the_grid()
    {
        foreach (var command in new[] { "scan", "route", "vet" })
        {
            var (code, output, error) = await Cli.Run(command, Demo[1..]);

            Assert.Equal(1, code);
            Assert.Contains("A grid has 81 cells and this has 80", output + error, StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task Nothing_that_is_piped_in_and_a_picture_without_content_are_said_to_be_so()
    {
        foreach (var command in new[] { "vet", "check", "scan", "route" })
        {
            var (code, output, error) = await CompanionProcess.Run("\n", command, "-");

            Assert.Equal((2, ""), (code, output));
            Assert.Equal("What is piped in has no puzzle: give one of 81 characters or nine lines of nine.", error.TrimEnd());
        }

        var (picture, _, reason) = await Cli.Run("read", await FileOf(""));
        Assert.Equal(2, picture);
        Assert.Single(reason.TrimEnd().Split('\n'));
    }

    public void Dispose() => _folder.Dispose();

    private static string[] With(string[] command, string grid) => [.. command.Select(word => word == "GRID" ? grid : word)];

    private async Task<string> FileOf(string text)
    {
        var file = _folder.In($"{Guid.NewGuid():N}.txt");
        await File.WriteAllTextAsync(file, text, TestContext.Current.CancellationToken);
        return file;
    }
}
