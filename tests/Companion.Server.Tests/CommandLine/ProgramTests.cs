using Companion.Server.Tests.Running;

namespace Companion.Server.Tests.CommandLine;

/// <summary>The built program itself, as a process.</summary>
public sealed class ProgramTests
{
    [Fact]
    public async Task It_checks_what_is_piped_in()
    {
        var (code, output, error) = await CompanionProcess.Run(Grids.Textbook + "\n", "check", "-", "--json");

        Assert.Equal((0, ""), (code, error));
        Assert.StartsWith("{\"line\":1,", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Its_exit_code_tells_a_bad_puzzle_from_a_wrong_call()
    {
        Assert.Equal(1, (await CompanionProcess.Run(null, "scan", "55")).ExitCode);
        Assert.Equal(2, (await CompanionProcess.Run(null, "scan")).ExitCode);
    }

    [Fact]
    public async Task A_ladder_that_cannot_be_used_is_named_with_the_fault()
    {
        using var folder = new TemporaryFolder();
        await File.WriteAllTextAsync(
            folder.In("ladder.json"), """{ "families": { "fish": 1 }, "rungs": [ ] }""", TestContext.Current.CancellationToken);
        var (code, output, error) = await CompanionProcess.Run(null, "--port", "0", "--data", folder.Path);

        Assert.Equal((2, ""), (code, output));
        Assert.StartsWith("The ladder cannot be used: The family 'fish' is either true (on) or false (off). 'full-house' is missing. ", error, StringComparison.Ordinal);
        Assert.EndsWith($"Correct {folder.In("ladder.json")}.", error.Trim(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_second_one_on_the_same_folder_is_refused_plainly()
    {
        using var folder = new TemporaryFolder();
        await using var first = await CompanionProcess.Serve(folder.Path);
        var (code, output, error) = await CompanionProcess.Run(null, "--port", "0", "--data", folder.Path);

        Assert.Equal((2, ""), (code, output));
        Assert.Equal($"Another companion is running on {folder.Path}: stop that one, or name another folder with --data.", error.Trim());
    }
}
