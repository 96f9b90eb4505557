using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class AlmostLockedSetPairTests
{
    [Fact]
    public void One_of_the_sets_lacks_the_link_and_holds_the_other_common_digit() => RuleCheck.Finds(
        new AlmostLockedSetPair(),
        Drawing.Board("""
            123 23 . | . .  . | . . .
            .   .  . | . .  . | . . .
            .   .  . | . .  . | . . .
            ---------+--------+--------
            .   .  . | . .  . | . . .
            14  .  . | . 45 . | . . 345
            """),
        new Found("almost-locked-set-pair 12345 set r1c1 r1c2 r5c1 r5c5 r5c9 sets r1c1+r1c2 r5c1+r5c5+r5c9", """
            . . . | . . . | . . 3
            """)
        {
            Links = "r1c1+r1c2=3 = r1c1=1, r1c1=1 - r5c1=1, r5c1=1 = r5c9=3",
            RestsOn = """
            456789 1456789 . | . .       . | . . .
            .      .       . | . .       . | . . .
            .      .       . | . .       . | . . .
            -----------------+-------------+-----------
            .      .       . | . .       . | . . .
            236789 .       . | . 1236789 . | . . 126789
            """,
        });

    [Fact]
    public void Four_cells_count_where_none_sees_the_others() => RuleCheck.Finds(
        new AlmostLockedSetPair(),
        Drawing.Board("""
            125 25 . | . . . | . . .
            .   .  . | . . . | . . .
            .   .  . | . . . | . . .
            ---------+-------+-------
            .   .  . | . . . | . . .
            14  .  . | . . . | . . 45
            """),
        new Found("almost-locked-set-pair 1245 set r1c1 r1c2 r5c1 r5c9 sets r1c1+r1c2 r5c1+r5c9", """
            . . . | . . . | . . 5
            """)
        {
            Links = "r1c1+r1c2=5 = r1c1=1, r1c1=1 - r5c1=1, r5c1=1 = r5c9=5",
            RestsOn = """
            346789  1346789 . | . . . | . . .
            .       .       . | . . . | . . .
            .       .       . | . . . | . . .
            ------------------+-------+------------
            .       .       . | . . . | . . .
            2356789 .       . | . . . | . . 1236789
            """,
        });

    [Fact]
    public void Sets_that_lie_near_each_other_clear_several_cells() => RuleCheck.Finds(
        new AlmostLockedSetPair(),
        Drawing.Board("""
            124 24 .  | . . . | . . .
            .   .  .  | . . . | . . .
            .   .  .  | . . . | . . .
            ----------+-------+------
            .   .  .  | . . . | . . .
            13  34 45 | . . . | . . .
            """),
        new Found("almost-locked-set-pair 1234 set r1c1 r1c2 r5c1 r5c2 sets r1c1+r1c2 r5c1+r5c2", """
            . . . | . . . | . . .
            . 4 . | . . . | . . .
            . 4 . | . . . | . . .
            """)
        {
            Links = "r1c1+r1c2=4 = r1c1=1, r1c1=1 - r5c1=1, r5c1=1 = r5c2=4",
            RestsOn = """
            356789  1356789 . | . . . | . . .
            .       .       . | . . . | . . .
            .       .       . | . . . | . . .
            ------------------+-------+------
            .       .       . | . . . | . . .
            2456789 1256789 . | . . . | . . .
            """,
        });

    [Fact]
    public void Four_cells_of_which_one_sees_the_others_are_left_to_WXYZ_wing() => RuleCheck.FindsNothing(
        new AlmostLockedSetPair(),
        Drawing.Board("""
            14 .  .    | . . . | . .  .
            .  24 .    | . . . | . .  .
            .  .  1234 | . . . | . 34 .
            """));

    [Fact]
    public void A_ring_is_left_to_its_own_rule() => RuleCheck.FindsNothing(
        new AlmostLockedSetPair(),
        Drawing.Board("""
            156 . . | . 17 . | . . .
            .   . . | . .  . | . . .
            .   . . | . .  . | . . .
            --------+--------+------
            256 . . | . 27 . | . . .
            .   . . | . .  . | . . .
            .   . . | . .  . | . . .
            --------+--------+------
            .   . . | . .  . | . . .
            56  . . | . .  . | . . .
            """));

    [Fact]
    public void A_link_with_a_place_that_does_not_see_the_other_set_links_nothing() => RuleCheck.FindsNothing(
        new AlmostLockedSetPair(),
        Drawing.Board("""
            123 123 . | . .  . | . . .
            .   .   . | . .  . | . . .
            .   .   . | . .  . | . . .
            ----------+--------+--------
            .   .   . | . .  . | . . .
            14  .   . | . 45 . | . . 345
            """));
}
