using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Engine.Tests.Rules;

namespace Companion.Engine.Tests.Proofs;

/// <summary>Proofs drawn as text. The positions are on the way through puzzles of our own.</summary>
public sealed class AttributionTests
{
    // The demo's puzzle, on the way to its XY-wing.
    private const string Demo = """
        4 5 . | . . 9 | . 2 .
        2 8 9 | . 5 1 | 4 . 3
        1 6 . | 2 . 4 | 8 5 9
        ------+-------+------
        6 2 . | 9 . . | . 1 .
        . 7 . | . 1 . | 2 9 .
        . . . | . . 2 | . . 8
        ------+-------+------
        . 4 6 | 1 . 5 | . 8 2
        5 . 2 | . 9 . | . 4 .
        . . . | 4 2 . | . 3 5
        """;

    private const string Crowded = """
        9 . . | 7 8 3 | 5 . .
        6 8 . | 2 4 5 | . 7 .
        . 5 7 | 6 1 9 | 4 . .
        ------+-------+------
        . 7 . | . . 8 | . . .
        . 9 . | . 7 6 | 2 1 .
        . 6 . | . 3 2 | 7 . .
        ------+-------+------
        . 1 9 | . . 7 | . . 2
        7 . . | 3 . 1 | . 5 .
        . 3 6 | . 2 4 | 1 . 7
        """;

    // P. Norvig, "Solving Any Sudoku Puzzle" (2006), grid1: r5c5 can only be 5.
    internal const string Essay = "530070000600195000098000060800060003400803001700020006060000280000419005000080079";

    private static readonly Ladder _ladder = ShippedLadder.Ladder.WithoutUniqueness();

    [Fact]
    public void An_entry_that_one_deduction_gives_is_proved_by_it() => Proves(Essay, Place("r3c5=4"), """
        hidden-single 4 single r3c5 in c5 places r3c5=4
        """);

    [Fact]
    public void Easier_steps_come_before_fewer_and_the_one_step_is_told_too()
    {
        var proved = Proves(Essay, Place("r5c5=5"), """
            hidden-single 4 single r3c5 in c5 places r3c5=4
            hidden-single 3 single r7c5 in c5 places r7c5=3
            full-house 5 single r5c5 in c5 places r5c5=5
            """);

        Assert.Equal("naked-single 5 single r5c5 places r5c5=5", proved.AtOnce?.ToString());
    }

    [Fact]
    public void What_is_needed_first_is_said_first() => Proves(Crowded, Place("r9c8=9"), """
        claiming 8 locked r7c7 r8c7 in c7 removes r7c8=8 r8c9=8 r9c8=8
        naked-single 9 single r9c8 places r9c8=9
        """);

    [Fact]
    public void The_lowest_hardest_rule_is_found_and_every_step_that_it_needs() => Proves(Demo, Place("r6c5=4"), """
        naked-pair 37 subset r3c5 r7c5 in c5 removes r1c5=3 r1c5=7 r4c5=3 r4c5=7 r6c5=3 r6c5=7
        xy-wing 467 pivot r6c8 pincer r6c5 r4c9 removes r4c5=4
        hidden-single 4 single r6c5 in b5 places r6c5=4
        """);

    [Fact]
    public void A_candidate_that_goes_is_proved_without_what_only_other_candidates_need() => Proves(Demo, Remove("r6c5=3"), """
        naked-pair 37 subset r3c5 r7c5 in c5 removes r1c5=3 r1c5=7 r4c5=3 r4c5=7 r6c5=3 r6c5=7
        """);

    [Fact]
    public void What_a_placed_digit_eliminates_needs_no_step_of_its_own() => Proves(Crowded, Remove("r8c9=9"), """
        claiming 8 locked r7c7 r8c7 in c7 removes r7c8=8 r8c9=8 r9c8=8
        naked-single 9 single r9c8 places r9c8=9
        """);

    [Fact]
    public void Several_things_are_proved_together() => Proves(
        Crowded,
        new(CandidateSet.Parse("r9c8=9"), CandidateSet.Parse("r8c9=8 r8c9=9")),
        """
        claiming 8 locked r7c7 r8c7 in c7 removes r7c8=8 r8c9=8 r9c8=8
        naked-single 9 single r9c8 places r9c8=9
        """);

    [Fact]
    public void What_is_so_already_needs_no_step()
    {
        var proved = Assert.IsType<Attribution.Proved>(Prove(Demo, new(CandidateSet.Parse("r1c1=4"), CandidateSet.Parse("r1c3=4"))));

        Assert.Empty(proved.Steps);
        Assert.Equal((default, 0), (proved.Hardest, proved.Cost));
    }

    [Theory]
    [InlineData("r6c5=4", false)]
    [InlineData("r4c5=4", true)]
    [InlineData("r1c1=5", true)]
    public void What_is_not_so_is_not_proved_by_the_whole_ladder(string candidate, bool isPlacement) => Assert.Equal(
        new Attribution.NotProved(Ladder.Standard.Rules.Last(rule => rule.Effort != Effort.LastResort).Id),
        Prove(Demo, isPlacement ? Place(candidate) : Remove(candidate)));

    [Fact]
    public void The_digit_that_stands_in_a_cell_is_not_gone_from_it() =>
        Assert.IsType<Attribution.NotProved>(Prove(Demo, Remove("r1c1=4")));

    [Fact]
    public void The_search_stops_where_it_is_wanted_no_more()
    {
        using var cancel = new CancellationTokenSource();
        cancel.Cancel();

        Assert.Throws<OperationCanceledException>(() => Attribution.Of(
            Board.Parse(Demo), Place("r6c5=4"), _ladder, cancel: cancel.Token));
    }

    [Fact]
    public void A_rule_that_takes_longer_to_look_than_wanted_is_not_tried()
    {
        var board = Drawing.Board("""
            . 12 . | . 23 . | . . .
            .  . . | .  . . | . . .
            .  . . | .  . . | . . .
            -------+--------+------
            . 14 . | . 34 . | . . .
            """);

        Assert.Equal("continuous-loop", Hardest(Effort.Search));
        Assert.Null(Hardest(Effort.Pattern));

        string? Hardest(Effort most) => Attribution.Of(
            board, Remove("r1c9=2"), _ladder, most, TestContext.Current.CancellationToken) is Attribution.Proved proved
            ? proved.Hardest.Value
            : null;
    }

    private static AttributionTarget Place(string candidate) => AttributionTarget.Place(Candidate.Parse(candidate));

    private static AttributionTarget Remove(string candidate) => AttributionTarget.Remove(Candidate.Parse(candidate));

    private static Attribution.Proved Proves(string board, AttributionTarget target, string steps)
    {
        var proved = Assert.IsType<Attribution.Proved>(Prove(board, target));

        Assert.Equal(steps, string.Join('\n', proved.Steps));
        Assert.Equal(proved.Steps.Sum(step => _ladder[step.Rule].Cost), proved.Cost);
        return proved;
    }

    private static Attribution Prove(string board, AttributionTarget target) => Attribution.Of(
        Board.Parse(board), target, _ladder, cancel: TestContext.Current.CancellationToken);
}
