using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class GroupedChainTests
{
    [Fact]
    public void A_group_that_is_true_goes_on_where_all_its_cells_see() => RuleCheck.Finds(
        new GroupedChain(),
        Drawing.Board("""
            .  -1 -1 | -1 -1 -1 | .  .  -1
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  12
            ---------+----------+---------
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            .  .  .  | .  .  .  | .  .  12
            """),
        new Found("grouped-chain 12 chainend r1c1 chain r1c7 r1c8 r3c9 chainend r7c9 in r1", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            1 . . | . . . | . . .
            """)
        {
            Links = "r1c1=1 = r1c7+r1c8=1, r1c7+r1c8=1 - r3c9=1, r3c9=1 = r3c9=2, r3c9=2 - r7c9=2, r7c9=2 = r7c9=1",
            RestsOn = """
            . 1 1 | 1 1 1 | . . 1
            . . . | . . . | . . .
            . . . | . . . | . . 3456789
            ------+-------+------------
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------------
            . . . | . . . | . . 3456789
            """,
        });

    [Fact]
    public void A_group_at_an_end_clears_what_all_its_cells_see() => RuleCheck.Finds(
        new GroupedChain(),
        Drawing.Board("""
            .  -1 -1 | -1 -1 -1 | .  .  -1
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            .  .  .  | .  .  .  | .  .  .
            13 .  .  | .  .  .  | .  .  13
            """),
        new Found("grouped-chain 13 chainend r1c7 r1c8 chain r1c1 r5c1 chainend r5c9 in r1", """
            . . . | . . . | . . .
            . . . | . . . | . . 1
            . . . | . . . | . . 1
            """)
        {
            Links = "r1c7+r1c8=1 = r1c1=1, r1c1=1 - r5c1=1, r5c1=1 = r5c1=3, r5c1=3 - r5c9=3, r5c9=3 = r5c9=1",
        });

    [Fact]
    public void A_group_may_stand_between_candidates_that_are_not_its_digit() => RuleCheck.Finds(
        new GroupedChain(),
        Drawing.Board("""
            .  -1 -1 | -1 -1 -1 | .  .  -1
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  12
            ---------+----------+---------
            .  .  .  | .  .  .  | .  .  .
            12  .  .  | .  .  .  | .  .  .
            """),
        new Found("grouped-chain 12 chainend r3c9 chain r1c7 r1c8 r1c1 chainend r5c1 in r1", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            2 . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . . | . . 2
            """)
        {
            Links = "r3c9=2 = r3c9=1, r3c9=1 - r1c7+r1c8=1, r1c7+r1c8=1 = r1c1=1, r1c1=1 - r5c1=1, r5c1=1 = r5c1=2",
        });

    [Fact]
    public void A_chain_whose_ends_see_each_other_is_a_loop_and_clears_what_sees_both_ends_of_a_weak_link() => RuleCheck.Finds(
        new GroupedChain(),
        Drawing.Board("""
            .  -1 -1 | -1 -1 -1 | .  .  -1
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  12
            ---------+----------+---------
            .  .  .  | .  .  .  | .  .  .
            12 .  .  | .  23 .  | .  .  23
            """),
        new Found("grouped-chain 12 chainend r3c9 chain r1c7 r1c8 r1c1 chainend r5c1 in r1", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            2 . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . . | . . 2
            """)
        {
            Links = "r3c9=2 = r3c9=1, r3c9=1 - r1c7+r1c8=1, r1c7+r1c8=1 = r1c1=1, r1c1=1 - r5c1=1, r5c1=1 = r5c1=2",
            RestsOn = """
            .       1 1 | 1 1 1 | . . 1
            .       . . | . . . | . . .
            .       . . | . . . | . . 3456789
            ------------+-------+------------
            .       . . | . . . | . . .
            3456789 . . | . . . | . . .
            """,
        },
        new Found("grouped-chain 123 chain r3c9 r1c7 r1c8 r1c1 r5c1 r5c5 r5c9 in r1", """
            . .  .  | .  . .  | .  .  2
            1 .  .  | .  . .  | 1  1  12
            1 .  .  | .  . .  | 1  1  .
            --------+---------+---------
            1 .  .  | .  . .  | .  .  2
            . 23 23 | 23 . 23 | 23 23 2
            1 .  .  | .  . .  | .  .  2
            --------+---------+---------
            1 .  .  | .  . .  | .  .  2
            1 .  .  | .  . .  | .  .  2
            1 .  .  | .  . .  | .  .  2
            """)
        {
            Links = "r3c9=2 = r3c9=1, r3c9=1 - r1c7+r1c8=1, r1c7+r1c8=1 = r1c1=1, r1c1=1 - r5c1=1, r5c1=1 = r5c1=2, "
                + "r5c1=2 - r5c5=2, r5c5=2 = r5c5=3, r5c5=3 - r5c9=3, r5c9=3 = r5c9=2, r5c9=2 - r3c9=2",
        },
        new Found("grouped-chain 123 chainend r3c9 chain r1c7 r1c8 r1c1 r5c1 r5c9 chainend r5c5 in r1", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . 2 . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . . | . . 2
            """)
        {
            Links = "r3c9=2 = r3c9=1, r3c9=1 - r1c7+r1c8=1, r1c7+r1c8=1 = r1c1=1, r1c1=1 - r5c1=1, r5c1=1 = r5c1=2, "
                + "r5c1=2 - r5c9=2, r5c9=2 = r5c9=3, r5c9=3 - r5c5=3, r5c5=3 = r5c5=2",
        });

    [Fact]
    public void A_row_and_a_column_of_one_digit_that_meet_in_a_block_count() => RuleCheck.Finds(
        new GroupedChain(),
        Drawing.Board("""
            .  -1 -1 | -1 -1 -1 | .  .  -1
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            .  .  .  | .  .  .  | .  .  -1
            .  .  .  | .  .  .  | .  .  -1
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            .  .  .  | .  .  .  | .  .  -1
            .  .  .  | .  .  .  | .  .  -1
            .  .  .  | .  .  .  | .  .  -1
            """),
        new Found("grouped-chain 1 chainend r1c1 chain r1c7 r1c8 r2c9 r3c9 chainend r6c9 in r1 c9", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . . | . . .
            1 . . | . . . | . . .
            """)
        {
            Links = "r1c1=1 = r1c7+r1c8=1, r1c7+r1c8=1 - r2c9+r3c9=1, r2c9+r3c9=1 = r6c9=1",
            RestsOn = """
            . 1 1 | 1 1 1 | . . 1
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . 1
            . . . | . . . | . . 1
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . 1
            . . . | . . . | . . 1
            . . . | . . . | . . 1
            """,
        });

    [Fact]
    public void A_place_in_a_third_block_breaks_the_link() => RuleCheck.FindsNothing(
        new GroupedChain(),
        Drawing.Board("""
            .  -1 -1 | -1 .  -1 | .  .  -1
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  12
            ---------+----------+---------
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            .  .  .  | .  .  .  | .  .  12
            """));

    [Fact]
    public void A_chain_of_single_candidates_is_left_to_alternating_inference_chain() => RuleCheck.FindsNothing(
        new GroupedChain(),
        Drawing.Board("""
            .  -1 -1 | -1 -1 -1 | .  -1 -1
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  12
            ---------+----------+---------
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            .  .  .  | .  .  .  | .  .  12
            """));

    [Fact]
    public void Two_links_of_one_digit_are_left_to_empty_rectangle() => RuleCheck.FindsNothing(
        new GroupedChain(),
        Drawing.Board("""
            .  -1 -1 | . . . | .  . .
            .  -1 -1 | . . . | .  . .
            -1 .  .  | . . . | .  . .
            ---------+-------+-------
            .  .  .  | . . . | .  . .
            .  -1 -1 | . -1 -1 | -1  -1 -1
            """));
}
