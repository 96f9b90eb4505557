using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

/// <summary>What holds of every deduction that a rule finds, on the ways through our own puzzles.</summary>
public sealed class DeductionTests(ITestOutputHelper output)
{
    [Fact]
    public void Every_deduction_is_true_of_the_solution_and_fits_its_board()
    {
        foreach (var (board, solution) in SolvingPath.OwnPositions)
        {
            foreach (var deduction in RuleCheck.Scan(board))
            {
                AssertFits(deduction, board);
                if (!deduction.Places.All(solution.Holds) || deduction.Removes.Any(solution.Holds))
                    Assert.Fail($"The solution says otherwise: {deduction}");
            }
        }
    }

    [Fact]
    public void No_deduction_is_found_twice()
    {
        foreach (var (board, _) in SolvingPath.OwnPositions.Where((_, place) => place % 3 == 0))
        {
            var names = RuleCheck.Scan(board).Select(deduction => deduction.ToString()).ToList();
            Assert.Equal(names.Count, names.Distinct(StringComparer.Ordinal).Count());
        }
    }

    [Fact]
    public void A_deduction_still_follows_when_every_absent_candidate_comes_back_but_those_it_rests_on()
    {
        foreach (var (board, deduction) in Sample())
        {
            var restored = Boards.Of(Boards.FilledIn(board), Boards.LeftByFilled(board) - deduction.RestsOn);
            Assert.True(
                GivesOnePatternOfMany(deduction) || MayPaintMore(deduction)
                    ? ProofChecker.Check(restored, deduction).Holds
                    : SamePatternsOn(restored, deduction).Any(),
                deduction.ToString());
        }
    }

    [Fact]
    public void A_deduction_is_gone_when_any_candidate_that_it_rests_on_comes_back()
    {
        var broughtBack = 0;
        foreach (var (board, deduction) in Sample().Where(sample => !GivesOnePatternOfMany(sample.Deduction)))
        {
            // Beside an equal digit nothing can come back: that absence is there for all to see.
            foreach (var candidate in deduction.RestsOn & Boards.LeftByFilled(board))
            {
                // Two that do no harm one by one may do so together (WXYZ-wing), and then it rests on one of them.
                var alone = board.Candidates.With(candidate);
                var withOthers = Boards.LeftByFilled(board) - deduction.RestsOn.Without(candidate);
                // By another house is another pattern.
                Assert.False(StillFollows(alone) && StillFollows(withOthers), $"{deduction} with {candidate} back");
                broughtBack++;

                bool StillFollows(CandidateSet standing) => SamePatternsOn(Boards.Of(Boards.FilledIn(board), standing), deduction)
                    .Any(other => other.Houses == deduction.Houses);
            }
        }

        output.WriteLine($"{broughtBack} candidates were brought back one by one.");
        Assert.True(broughtBack > 1_000);
    }

    /// <summary>Something follows that stands on the board, and what it rests on is absent and lies in open cells.</summary>
    internal static void AssertFits(Deduction deduction, Board board)
    {
        var follows = deduction.Places | deduction.Removes;
        Check(!follows.IsEmpty, "something follows");
        Check(board.Candidates.ContainsAll(follows), "what follows stands");
        Check((deduction.RestsOn & board.Candidates).IsEmpty, "what it rests on is absent");
        Check(board.Open.ContainsAll(deduction.RestsOn.Cells | deduction.PatternCells), "its cells are open");
        Check(deduction.Cells.All(part => !(board[part.Cell] & deduction.Digits).IsEmpty), "its cells have digits of it");
        Check(deduction.Links.All(link => board.Candidates.Contains(link.From)), "its links start at standing candidates");
        Check(deduction.Links.All(link => board.Candidates.Contains(link.To)), "its links end at standing candidates");

        void Check(bool holds, string what)
        {
            if (!holds)
                Assert.Fail($"It must hold that {what}: {deduction}");
        }
    }

    // Of each rule the first on every board of a part of the ways: enough of all kinds, and quick.
    private static IEnumerable<(Board Board, Deduction Deduction)> Sample() =>
        from position in SolvingPath.OwnPositions.Where((_, place) => place % 8 == 0)
        from deduction in RuleCheck.Scan(position.Board).DistinctBy(deduction => deduction.Rule)
        select (position.Board, deduction);

    // Such a rule may find another pattern for the same conclusion when the board changes, or the same cells linked another way.
    private static bool GivesOnePatternOfMany(Deduction deduction) => ChainRules.All.Contains(deduction.Rule.Value);

    // A house with one place gets a second, which is a link more: then a removed cell may be painted itself.
    private static bool MayPaintMore(Deduction deduction) => deduction.Cells[0].Role is Role.FirstColour or Role.SecondColour;

    private static IEnumerable<Deduction> SamePatternsOn(Board board, Deduction deduction) =>
        RuleCheck.Find(Ladder.Whole[deduction.Rule].Rule, board).Where(other =>
            (deduction.Houses - other.Houses).IsEmpty
            && other.Digits == deduction.Digits
            && other.PatternCells.ContainsAll(deduction.PatternCells)
            && other.Places == deduction.Places
            && other.Removes.ContainsAll(deduction.Removes));
}
