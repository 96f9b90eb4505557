using System.Globalization;
using Companion.Engine.Search;

namespace Companion.Engine.Tests.Corpus;

/// <summary>
/// The counts that D. Berthier published with his puzzles: "Unbiased Statistics of a Constraint Satisfaction Problem: a
/// Controlled-Bias Generator" (CISSE 2009, DOI 10.1007/978-90-481-9112-3_16); collection DOI 10.5281/zenodo.17491457.
/// </summary>
public sealed class PublishedCountsTests(ITestOutputHelper output)
{
    // Computed once for all tests; a skip for want of the file is thrown again in each.
    private static readonly Lazy<(string Puzzle, PuzzleCounts Published, PuzzleCounts Ours)[]> Rows =
        new(() => [.. OpenData.Lines("minimal-with-published-counts.tsv", hasHeader: true).AsParallel().AsOrdered().Select(Row)]);

    [Fact]
    public void All_five_counts_of_all_15000_puzzles_are_the_published_ones()
    {
        Assert.Equal(15_000, Rows.Value.Length);
        Assert.DoesNotContain(Rows.Value, row => row.Ours != row.Published);
    }

    [Fact]
    public void Singles_and_locked_candidates_solve_the_published_shares()
    {
        double rows = Rows.Value.Length;
        var bySingles = Rows.Value.Count(row => row.Ours.CandidatesAfterSingles == 0) / rows;
        var withLocked = Rows.Value.Count(row => row.Ours.CandidatesAfterLocked == 0) / rows;
        output.WriteLine(FormattableString.Invariant($"singles {bySingles:P2}, with locked candidates {withLocked:P2} of {rows}"));

        // Source: Berthier 2009, table 3. The standard deviation of a share of 15,000 is 0.4 points; three of them are allowed.
        Assert.InRange(bySingles, 0.3508 - 0.012, 0.3508 + 0.012);
        Assert.InRange(withLocked, 0.4490 - 0.012, 0.4490 + 0.012);
    }

    [Fact]
    public void All_15000_puzzles_are_minimal()
    {
        Assert.Equal(15_000, Rows.Value.AsParallel().Count(row => Minimality.IsMinimal(Puzzle.Parse(row.Puzzle))));
    }

    private static (string Puzzle, PuzzleCounts Published, PuzzleCounts Ours) Row(string line)
    {
        var columns = line.Split('\t');
        var counts = columns[1..].Select(column => int.Parse(column, CultureInfo.InvariantCulture)).ToArray();
        return (columns[0], new(counts[0], counts[1], counts[2], counts[3], counts[4]), PuzzleCounts.Of(Puzzle.Parse(columns[0])));
    }
}
