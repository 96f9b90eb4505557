using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class RemotePairsTests
{
    [Fact]
    public void The_ends_of_a_chain_of_four_equal_pairs_clear_what_both_see() => RuleCheck.Finds(
        new RemotePairs(),
        Drawing.Board("""
            .  . .  | . . . | .  . .
            58 . .  | . . . | .  . .
            .  . 58 | . . . | 58 . .
            --------+-------+-------
            .  . .  | . . . | .  . .
            58 . .  | . . . | .  . .
            """),
        new Found("remote-pairs 58 firstcolour r2c1 r3c7 secondcolour r3c3 r5c1", """
            . . . | . . . | .  . .
            . . . | . . . | .  . .
            . . . | . . . | .  . .
            ------+-------+-------
            . . . | . . . | .  . .
            . . . | . . . | 58 . .
            """)
        {
            RestsOn = """
            .       . .       | . . . | .       . .
            1234679 . .       | . . . | .       . .
            .       . 1234679 | . . . | 1234679 . .
            ------------------+-------+------------
            .       . .       | . . . | .       . .
            1234679 . .       | . . . | .       . .
            """,
            Links = "r2c1=5 - r3c3=5, r2c1=8 - r3c3=8, r2c1=5 - r5c1=5, r2c1=8 - r5c1=8, r3c7=5 - r3c3=5, r3c7=8 - r3c3=8",
        });

    [Fact]
    public void Cells_at_loose_ends_that_no_removed_cell_sees_are_left_out() => RuleCheck.Finds(
        new RemotePairs(),
        Drawing.Board("""
            .  . .  | . . . | .  58 .
            58 . .  | . . . | .  .  .
            .  . 58 | . . . | 58 .  .
            --------+-------+--------
            .  . .  | . . . | .  .  .
            58 . .  | . . . | .  .  .
            """),
        new Found("remote-pairs 58 firstcolour r2c1 r3c7 secondcolour r3c3 r5c1", """
            . . . | . . . | .  . .
            . . . | . . . | .  . .
            . . . | . . . | .  . .
            ------+-------+-------
            . . . | . . . | .  . .
            . . . | . . . | 58 . .
            """));

    [Fact]
    public void A_chain_of_three_ends_in_the_same_digit_and_clears_nothing() => RuleCheck.FindsNothing(
        new RemotePairs(),
        Drawing.Board("""
            . 58 . | . . . | 58 . .
            . .  . | . . . | .  . .
            . .  . | . . . | .  . .
            -------+-------+-------
            . .  . | . . . | .  . .
            . 58 . | . . . | .  . .
            """));

    [Fact]
    public void What_sees_two_neighbours_is_left_to_naked_pair() => RuleCheck.FindsNothing(
        new RemotePairs(),
        Drawing.Board("""
            . 58 . | . . . | 58 . .
            . .  . | . . . | .  . .
            . .  . | . . . | .  . .
            -------+-------+-------
            . .  . | . . . | .  . .
            . 58 . | . . . | 58 . .
            """));

    [Fact]
    public void A_third_candidate_in_a_cell_breaks_the_chain() => RuleCheck.FindsNothing(
        new RemotePairs(),
        Drawing.Board("""
            .  . .   | . . . | .  . .
            58 . .   | . . . | .  . .
            .  . 568 | . . . | 58 . .
            ---------+-------+-------
            .  . .   | . . . | .  . .
            58 . .   | . . . | .  . .
            """));
}
