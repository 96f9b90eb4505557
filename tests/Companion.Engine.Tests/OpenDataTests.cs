namespace Companion.Engine.Tests;

public sealed class OpenDataTests
{
    [Fact]
    public void A_file_that_is_there_is_read_without_its_header()
    {
        var lines = OpenData.Lines("minimal-with-published-counts.tsv", hasHeader: true);

        Assert.Equal(15_000, lines.Length);
        Assert.All(lines, line => Assert.Matches("^[.0-9]{81}\t", line));
    }

    [Fact]
    public void A_file_that_is_not_there_skips_the_test_and_names_the_file()
    {
        Assert.Contains("no-such-file.txt", SkipReason(() => OpenData.Lines("no-such-file.txt")), StringComparison.Ordinal);
    }

    // Record.Exception lets a skip through, so that it would skip this test.
    private static string? SkipReason(Action action)
    {
        try
        {
            action();
            return null;
        }
        catch (Xunit.Sdk.SkipException skip)
        {
            return skip.Message;
        }
    }
}
