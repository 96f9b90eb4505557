using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

/// <summary>Whatever follows from a cell or a house by chains is found, and nothing else, with the fewest links there are.</summary>
public sealed class LiteralForcingTests(ITestOutputHelper output)
{
    [Fact]
    public void Whatever_follows_from_all_of_a_cell_or_house_is_found_with_the_fewest_links()
    {
        var (compared, placed) = (0, 0);
        foreach (var (board, _) in SolvingPath.OwnPositions.Where((_, place) => place % 60 == 0))
        {
            var literal = new LiteralForcing(new(board));
            var easier = CandidateSet.Of([.. literal.Easier.Select(Of)]);
            var expected = literal.Conclusions().ToDictionary(its => (Of(its.Single), its.Places), its => (its.Links, its.FromHouse));
            foreach (var fromHouse in new[] { false, true })
            {
                var found = RuleCheck.Find(Rule(fromHouse), board);
                foreach (var deduction in found)
                    AssertIsExpected(deduction, fromHouse);
                foreach (var ((single, places), (links, _)) in expected.Where(its => its.Value.FromHouse == fromHouse))
                {
                    var goes = places ? board.Candidates - board.Place(single).Candidates : CandidateSet.Of(single);
                    goes = places ? goes.Without(single) : goes;
                    var gone = found.Where(its => its.Links.Length <= links)
                        .Aggregate(CandidateSet.Empty, (all, its) => all | Concluded(its, board));
                    Assert.True(gone.ContainsAll(goes), $"Missed: {single} {places}, {links} links.\n{board.Candidates}");
                    compared++;
                    placed += places ? 1 : 0;
                }
            }

            void AssertIsExpected(Deduction deduction, bool fromHouse)
            {
                foreach (var single in deduction.Places)
                    Assert.Equal((deduction.Links.Length, fromHouse), expected[(single, true)]);
                var removed = (deduction.Removes - easier).Select(single => expected.GetValueOrDefault((single, false))).ToList();
                Assert.All(removed, its => Assert.InRange(its.Links, 1, deduction.Links.Length));
                Assert.True(removed.Count == 0 || removed.Contains((deduction.Links.Length, fromHouse)), $"{deduction} is not the shortest.");
            }
        }

        output.WriteLine($"{compared} conclusions, the same in both; {placed} of them digits that are placed.");
        Assert.True(compared - placed > 50 && placed > 10, $"{compared} {placed}");
    }

    private static Candidate Of(LiteralNode single) =>
        new(Cell.Of(single.Cells[0].Row, single.Cells[0].Column), Digit.Of(single.Digit));

    private static CandidateSet Concluded(Deduction deduction, Board board) => deduction.Places.Aggregate(
        deduction.Removes,
        (all, placed) => all | (board.Candidates - board.Place(placed).Candidates).Without(placed));

    private static IRule Rule(bool fromHouse) =>
        Ladder.Standard[new(fromHouse ? "house-forcing-chain" : "cell-forcing-chain")].Rule;
}
