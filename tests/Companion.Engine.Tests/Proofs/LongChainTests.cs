using Companion.Engine.Proofs;

namespace Companion.Engine.Tests.Proofs;

/// <summary>Patterns far longer than any of the ladder: chains of cells with two candidates each.</summary>
public class LongChainTests
{
    // Whatever the first cell takes, the last or the first is 1: if the first is not 1 it is 2, then the second is 3, and so on.
    // So 1 goes from r9c1, which sees both ends.
    private const string Chain = """
        r1c1=12 r1c4=23 r2c5=34 r2c8=45 r3c9=56 r6c9=67 r5c8=78 r5c5=89 r4c4=29 r4c2=23 r5c3=34 r8c3=45 r7c2=56 r7c5=67 r8c6=78
        r8c9=89 r9c8=19
        """;

    [Fact]
    public void A_chain_of_seventeen_cells_and_nine_digits_is_followed_to_its_end()
    {
        var deduction = Read(Chain, "r9c1=1");

        Assert.True(ProofChecker.Check(BoardOf(deduction), deduction).Holds);
    }

    [Fact]
    public void A_chain_with_a_gap_proves_nothing()
    {
        foreach (var link in Read(Chain, "r9c1=1").PatternCells)
        {
            var whole = Read(Chain, "r9c1=1");
            var gap = whole.RestingOn(whole.RestsOn.In(~CellSet.Of(link)));

            Assert.IsType<ProofVerdict.NotForced>(ProofChecker.Check(BoardOf(gap), gap));
        }
    }

    private static Board BoardOf(Deduction deduction) => Board.Blank.Remove(deduction.RestsOn);

    private static Deduction Read(string chain, string removes)
    {
        var links = chain.Split((char[])[' ', '\n']).Select(link => link.Split('=')).ToList();
        return new()
        {
            Rule = new("own"),
            Cells = [.. links.Select(link => new PatternCell(Cell.Parse(link[0]), Role.Subset))],
            Digits = DigitSet.All,
            RestsOn = links.Aggregate(CandidateSet.Empty, (all, link) =>
                all | CandidateSet.Of(CellSet.Of(Cell.Parse(link[0])), ~DigitSet.Parse(link[1]))),
            Removes = CandidateSet.Parse(removes),
        };
    }
}
