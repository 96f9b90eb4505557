using Companion.Engine.Proofs;

namespace Companion.Engine.Tests.Proofs;

public class ProofCheckerTests
{
    private static readonly string[] NameMore =
        [
            "simple-colouring", "single-digit-chain", "almost-locked-set-blossom", "almost-locked-set-chain", "cell-forcing-chain",
            "house-forcing-chain", "joint-forcing-chain",
        ];

    public static TheoryData<string> Rules => [.. OneOfEachRule.Drawn.Keys];

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_good_deduction_holds(string rule)
    {
        var (board, deduction) = OneOfEachRule.On(rule);

        Assert.Equal(new ProofVerdict.Proven(), ProofChecker.Check(board, deduction));
    }

    // The whole reach of each pattern: nothing that follows is refused and nothing else is proven.
    [Theory]
    [InlineData("full-house", "c3=7 b4=7")]
    [InlineData("hidden-single", "r5c3=-7 c3=7 b4=7")]
    [InlineData("naked-single", "r5=7 c3=7 b4=7")]
    [InlineData("pointing", "r2-b1=5")]
    [InlineData("claiming", "b1-r2=5")]
    [InlineData("two-block-claiming", "b3-r2=5")]
    [InlineData("naked-pair", "r1=58")]
    [InlineData("hidden-pair", "r1c1=-58 r1c4=-58")]
    [InlineData("naked-triple", "r1=258")]
    [InlineData("hidden-triple", "r1c1=-258 r4c1=-258 r9c1=-258")]
    [InlineData("x-wing", "c3=5 c8=5")]
    [InlineData("xy-wing", "b4-r4-r6-c3=8 b6-r5-r6=8")]
    [InlineData("xyz-wing", "b4-r4-r6-c3=8")]
    [InlineData("swordfish", "c2-r1-r4-r9=5 c5-r1-r4-r9=5 c7-r1-r4-r9=5")]
    [InlineData("naked-quad", "b1=1258")]
    [InlineData("hidden-quad", "r1c1=-1258 r1c2=-1258 r2c3=-1258 r3c3=-1258")]
    [InlineData("jellyfish", "c2-r1-r4-r6-r9=5 c5-r1-r4-r6-r9=5 c7-r1-r4-r6-r9=5 c9-r1-r4-r6-r9=5")]
    [InlineData("remote-pairs", "c1=58 b1=58 r3=58 r5c7=58")]
    [InlineData("two-strong-links", "r1c8=5 r1c9=5 r3c1=5 r3c2=5")]
    [InlineData("w-wing", "r2-b1-b2=8 r3-b2-b3=8")]
    [InlineData("simple-colouring", "r5c8=5")]
    [InlineData("empty-rectangle", "r5c3=5")]
    [InlineData("wxyz-wing", "r3c1=8 r3c2=8")]
    [InlineData("finned-x-wing", "c8-r7-b3-b6=5")]
    [InlineData("finned-swordfish", "c5-r1-b5-b8=5")]
    [InlineData("finned-jellyfish", "c2-r9-b1-b4=5")]
    [InlineData("single-digit-chain", "r9c1=5 r5c1=5 r9c5=5")]
    [InlineData("xy-chain", "b1-c1-c3=1 r1c2=1 c1-b1-b7=1")]
    [InlineData("continuous-loop", "r1=2 c5=3 r4=4 c1=1")]
    [InlineData("alternating-inference-chain", "r4c1=2")]
    [InlineData("grouped-chain", "r1c1=5 r7c1=1")]
    [InlineData("two-sector-disjoint-subsets", "r3=12 b1=58")]
    [InlineData("almost-locked-set-ring", "r1-r4=1 r4-r1=2 c1=56 c5=7")]
    [InlineData("almost-locked-set-pair", "r1c9=3")]
    [InlineData("almost-locked-set-triple", "r1c6=5")]
    [InlineData("almost-locked-set-blossom", "r1c1=9")]
    [InlineData("cell-forcing-chain", "r1c1=9 r2c5=2")]
    [InlineData("house-forcing-chain", "r4c6=9")]
    [InlineData("joint-forcing-chain", "r1c1=9")]
    [InlineData("almost-locked-set-chain", "r2c3=5 r3c3=5 b4-r5-r6=5 r5c1=5 r6c1=5 r5c8=5 r5c9=5")]
    public void A_pattern_proves_all_that_it_removes_and_nothing_else(string rule, string removed)
    {
        var (board, deduction) = OneOfEachRule.On(rule);
        var expected = DrawnDeduction.Candidates(removed, deduction.PatternCells) & board.Candidates;

        var proven = board.Candidates.Where(candidate => ProofChecker.Check(board, deduction.Removing(candidate)).Holds);

        Assert.Equal(expected.ToString(), CandidateSet.Of([.. proven]).ToString());
    }

    // Every other link of a chain would do for one removed cell; but colouring paints along all of them.
    // And some house of a chain of one digit always crosses what the chain makes true, as the sets
    // of a blossom or chain may; and what one of several chains comes by may be excluded by another's cells.
    [Theory]
    [MemberData(nameof(Rules))]
    public void No_absent_candidate_of_a_minimal_pattern_can_be_spared(string rule)
    {
        var (_, deduction) = OneOfEachRule.On(rule);

        foreach (var spared in NameMore.Contains(rule) ? CandidateSet.Empty : deduction.RestsOn)
        {
            var mutant = deduction.RestingOn(deduction.RestsOn.Without(spared));
            Assert.IsType<ProofVerdict.NotForced>(ProofChecker.Check(Board.Blank.Remove(mutant.RestsOn), mutant));
        }
    }

    // A naked subset follows from its cells alone: it names its houses as the place to look.
    [Theory]
    [InlineData("full-house")]
    [InlineData("hidden-single")]
    [InlineData("pointing")]
    [InlineData("claiming")]
    [InlineData("two-block-claiming")]
    [InlineData("hidden-pair")]
    [InlineData("hidden-triple")]
    [InlineData("hidden-quad")]
    [InlineData("x-wing")]
    [InlineData("swordfish")]
    [InlineData("jellyfish")]
    [InlineData("two-strong-links")]
    [InlineData("w-wing")]
    [InlineData("empty-rectangle")]
    [InlineData("finned-x-wing")]
    [InlineData("finned-swordfish")]
    [InlineData("finned-jellyfish")]
    [InlineData("single-digit-chain")]
    [InlineData("alternating-inference-chain")]
    public void A_house_that_must_hold_the_digit_cannot_be_left_out(string rule)
    {
        var (board, deduction) = OneOfEachRule.On(rule);

        foreach (var house in deduction.Houses)
        {
            var mutant = deduction.About(deduction.Houses - HouseSet.Of(house), deduction.Digits);
            Assert.IsType<ProofVerdict.NotForced>(ProofChecker.Check(board, mutant));
        }
    }

    // But a naked single follows from its cell alone, whatever digits are named.
    [Theory]
    [MemberData(nameof(Rules))]
    public void A_digit_of_the_pattern_cannot_be_another(string rule)
    {
        var (board, deduction) = OneOfEachRule.On(rule);

        foreach (var digit in rule == "naked-single" ? DigitSet.Empty : deduction.Digits)
        {
            foreach (var other in ~deduction.Digits)
            {
                var mutant = deduction.About(deduction.Houses, deduction.Digits.Without(digit).With(other));
                Assert.IsType<ProofVerdict.NotForced>(ProofChecker.Check(board, mutant));
            }
        }
    }

    [Fact]
    public void What_the_board_shows_beyond_the_names_does_not_help()
    {
        // 7 has one place left in row 5, but the deduction does not rest on its absence from the other cells.
        var (board, deduction) = OneOfEachRule.On("hidden-single");

        var verdict = ProofChecker.Check(board, deduction.RestingOn(CandidateSet.Empty));

        Assert.Equal(new ProofVerdict.NotForced(Candidate.Parse("r5c3=7"), IsPlacement: true), verdict);
        Assert.Equal("r5c3 need not be 7, by what it names.", verdict.Sentence);
    }

    [Fact]
    public void A_conclusion_may_be_about_a_digit_that_is_not_named()
    {
        var (board, pair) = OneOfEachRule.On("hidden-pair");
        var follows = Candidate.Parse("r1c1=3");
        var doesNot = Candidate.Parse("r1c2=3");

        Assert.True(ProofChecker.Check(board, pair.Removing(follows)).Holds);
        Assert.Equal(new ProofVerdict.NotForced(doesNot, IsPlacement: false), ProofChecker.Check(board, pair.Removing(doesNot)));
    }

    [Fact]
    public void A_cell_with_one_other_digit_left_is_that_digit()
    {
        // r1c1 can be 5 or 9, and r1c2 only 5: so r1c1 is 9, which is no digit of the pattern.
        var deduction = DrawnDeduction.Read("own 5 single r1c2 r1c1 places r1c1=9 rests r1c2=-5 r1c1=-59");
        var board = Board.Blank.Remove(deduction.RestsOn);

        Assert.True(ProofChecker.Check(board, deduction).Holds);
        Assert.False(ProofChecker.Check(board, deduction.RestingOn(deduction.RestsOn.Without(Candidate.Parse("r1c1=8")))).Holds);
    }

    [Theory]
    [InlineData("own 5 single r1c1", "It concludes nothing.")]
    [InlineData("own 5 single r1c1 removes r1c4=5 rests r1c1=6", "It rests on 6 being gone from r1c1, where it stands.")]
    [InlineData("own 5 single r1c1 removes r1c4=5 rests r9c9=5", "It is about the candidates of r9c9, which is filled.")]
    [InlineData("own 5 single r9c9 removes r1c4=5", "It is about the candidates of r9c9, which is filled.")]
    [InlineData("own 5 single r1c1 removes r1c9=3", "It concludes about 3 in r1c9, which does not stand.")]
    [InlineData("own 5 single r1c1 places r9c9=3", "It concludes about 3 in r9c9, which does not stand.")]
    [InlineData("own 5 single r1c1 removes r1c4=5", "r1c4 can still be 5, by what it names.")]
    public void A_refusal_gives_its_reason(string drawn, string reason)
    {
        var board = Board.Parse($"{new string('.', 80)}3");

        var verdict = ProofChecker.Check(board, DrawnDeduction.Read(drawn));

        Assert.False(verdict.Holds);
        Assert.Equal(reason, verdict.Sentence);
    }

    [Fact]
    public void Too_wide_a_claim_is_not_called_proven()
    {
        // Nine cells for eight digits cannot be filled, but to see it by trial takes more steps than a search is given.
        var deduction = DrawnDeduction.Read("""
            own 12345678 subset r1c1 r1c2 r1c3 r1c4 r1c5 r1c6 r1c7 r1c8 r1c9 removes r9c9=1
            rests r1c1=9 r1c2=9 r1c3=9 r1c4=9 r1c5=9 r1c6=9 r1c7=9 r1c8=9 r1c9=9
            """);

        var verdict = ProofChecker.Check(Board.Blank.Remove(deduction.RestsOn), deduction);

        Assert.Equal(new ProofVerdict.TooWide(Candidate.Parse("r9c9=1")), verdict);
    }
}
