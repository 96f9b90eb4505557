using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class ContinuousLoopTests
{
    [Fact]
    public void Four_cells_with_two_candidates_in_a_ring_clear_a_house_for_each_digit() => RuleCheck.Finds(
        new ContinuousLoop(),
        Drawing.Board("""
            12 .  .  | .  23 .  | . . .
            .  .  .  | .  .  .  | . . .
            .  .  .  | .  .  .  | . . .
            ---------+----------+------
            14 .  .  | .  34 .  | . . .
            """),
        new Found("continuous-loop 1234 chain r1c1 r4c1 r4c5 r1c5", """
            . 2 2 | 2 . 2 | 2 2 2
            1 . . | . 3 . | . . .
            1 . . | . 3 . | . . .
            ------+-------+------
            . 4 4 | 4 . 4 | 4 4 4
            1 . . | . 3 . | . . .
            1 . . | . 3 . | . . .
            ------+-------+------
            1 . . | . 3 . | . . .
            1 . . | . 3 . | . . .
            1 . . | . 3 . | . . .
            """)
        {
            Links = "r1c1=2 = r1c1=1, r1c1=1 - r4c1=1, r4c1=1 = r4c1=4, r4c1=4 - r4c5=4, r4c5=4 = r4c5=3, r4c5=3 - r1c5=3, "
                + "r1c5=3 = r1c5=2, r1c5=2 - r1c1=2",
            RestsOn = """
            3456789 . . | . 1456789 . | . . .
            .       . . | . .       . | . . .
            .       . . | . .       . | . . .
            ------------+-------------+------
            2356789 . . | . 1256789 . | . . .
            """,
        });

    [Fact]
    public void Cells_and_houses_may_take_turns_and_a_cell_on_the_way_loses_its_other_candidates() => RuleCheck.Finds(
        new ContinuousLoop(),
        Drawing.Board("""
            12 .  .  | .  .  .  | . . .
            .  .  .  | .  -2 .  | . . .
            .  .  .  | .  -2 .  | . . .
            ---------+----------+------
            .  -3 -3 | -3 .  -3 | -3 -3 -3
            .  .  .  | .  -2 .  | . . .
            .  .  .  | .  -2 .  | . . .
            ---------+----------+------
            13 .  .  | .  -2 .  | . . .
            .  .  .  | .  -2 .  | . . .
            .  .  .  | .  -2 .  | . . .
            """),
        new Found("continuous-loop 123 chain r1c1 r7c1 r4c1 r4c5 r1c5 in r4 c5", """
            .  2 2 | 2 .       2 | 2 2 2
            13 . . | . .       . | . . .
            13 . . | . .       . | . . .
            -------+-------------+------
            1  . . | . 1456789 . | . . .
            13 . . | . .       . | . . .
            13 . . | . .       . | . . .
            -------+-------------+------
            .  . . | . .       . | . . .
            13 . . | . .       . | . . .
            13 . . | . .       . | . . .
            """)
        {
            Links = "r1c1=2 = r1c1=1, r1c1=1 - r7c1=1, r7c1=1 = r7c1=3, r7c1=3 - r4c1=3, r4c1=3 = r4c5=3, r4c5=3 - r4c5=2, "
                + "r4c5=2 = r1c5=2, r1c5=2 - r1c1=2",
        });

    [Fact]
    public void A_naked_pair_is_left_to_its_own_rule() => RuleCheck.FindsNothing(
        new ContinuousLoop(),
        Drawing.Board("""
            12 .  .  | .  12 .  | . . .
            """));

    [Fact]
    public void A_chain_that_does_not_close_is_none() => RuleCheck.FindsNothing(
        new ContinuousLoop(),
        Drawing.Board("""
            12 .  .  | .  23 .  | . . .
            .  .  .  | .  .  .  | . . .
            .  .  .  | .  .  .  | . . .
            ---------+----------+------
            .  14 .  | .  34 .  | . . .
            """));

    [Fact]
    public void A_loop_may_turn_within_a_cell_and_clears_the_rest_of_it() => RuleCheck.Finds(
        new ContinuousLoop(),
        Drawing.Board("""
            .  -1 -1 | -1 .  -1 | -1 -1 -1
            -2 .  .  | .  -2 .  | .  .  .
            -2 .  .  | .  -2 .  | .  .  .
            ---------+----------+---------
            .  .  .  | .  .  .  | .  .  .
            -2 .  .  | .  -2 .  | .  .  .
            -2 .  .  | .  -2 .  | .  .  .
            ---------+----------+---------
            -2 .  .  | .  -2 .  | .  .  .
            -2 .  .  | .  -2 .  | .  .  .
            -2 .  .  | .  -2 .  | .  .  .
            """),
        new Found("continuous-loop 12 chain r1c1 r1c5 r4c5 r4c1 in r1 c1 c5", """
            3456789 . . | . 3456789 . | . . .
            .       . . | . .       . | . . .
            .       . . | . .       . | . . .
            ------------+-------------+------
            .       2 2 | 2 .       2 | 2 2 2
            """)
        {
            Links = "r1c1=1 = r1c5=1, r1c5=1 - r1c5=2, r1c5=2 = r4c5=2, r4c5=2 - r4c1=2, r4c1=2 = r1c1=2, r1c1=2 - r1c1=1",
        });
}
