using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

/// <summary>Whatever follows from two choices that cannot both be met is found, and nothing else, with the fewest links there are.</summary>
public sealed class LiteralJointForcingTests(ITestOutputHelper output)
{
    private const int MostLinks = 40;

    [Fact]
    public void Whatever_follows_from_two_that_cannot_both_be_met_is_found_with_the_fewest_links()
    {
        var (compared, placed, fish) = (0, 0, 0);
        foreach (var board in NetPositions.All.Where((_, place) => place % 6 == 0))
        {
            var expected = new LiteralJointForcing(new(board)).Conclusions(MostLinks).ToDictionary(its => (Of(its.Single), its.Places), its => its.Links);
            var found = RuleCheck.Find(new JointForcingChain(), board);
            foreach (var deduction in found)
            {
                foreach (var single in deduction.Places)
                    Assert.Equal(deduction.Links.Length, expected[(single, true)] + 1); // What cannot both be true is a link too.
                var removed = deduction.Removes.Select(single => expected.GetValueOrDefault((single, false))).ToList();
                Assert.True(removed.Count == 0 || removed.Contains(deduction.Links.Length - 1), $"{deduction} is not the shortest.");
                fish += deduction.Cells.Any(part => part.Role == Role.Base) ? 1 : 0;
            }

            foreach (var ((single, places), links) in expected)
            {
                var goes = places ? (board.Candidates - board.Place(single).Candidates).Without(single) : CandidateSet.Of(single);
                var gone = found.Where(its => its.Links.Length <= links + 1).Aggregate(CandidateSet.Empty, (all, its) => all | Concluded(its, board));
                Assert.True(gone.ContainsAll(goes), $"Missed: {single} {places}, {links} links.\n{board.Candidates}");
                compared++;
                placed += places ? 1 : 0;
            }
        }

        output.WriteLine($"{compared} conclusions, the same in both; {placed} of them digits that are placed; {fish} deductions go through an X-wing.");
        Assert.True(compared - placed > 15 && placed > 3 && fish > 5, $"{compared} {placed} {fish}");
    }

    private static Candidate Of(LiteralNode single) =>
        new(Cell.Of(single.Cells[0].Row, single.Cells[0].Column), Digit.Of(single.Digit));

    private static CandidateSet Concluded(Deduction deduction, Board board) => deduction.Places.Aggregate(
        deduction.Removes,
        (all, placed) => all | (board.Candidates - board.Place(placed).Candidates).Without(placed));
}
