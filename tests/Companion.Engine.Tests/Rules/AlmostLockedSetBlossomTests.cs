using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class AlmostLockedSetBlossomTests
{
    [Fact]
    public void Whatever_the_stem_holds_one_of_the_sets_holds_the_common_digit() => RuleCheck.Finds(
        new AlmostLockedSetBlossom(),
        Drawing.Board("""
            .  . . | . 29  . | . . .
            .  . . | . .   . | . . .
            .  . . | . .   . | . . .
            -------+---------+------
            .  . . | . .   . | . . .
            19 . . | . 123 . | . . .
            .  . . | . .   . | . . .
            -------+---------+------
            .  . . | . .   . | . . .
            .  . . | . .   . | . . .
            89 . . | . 38  . | . . .
            """),
        new Found("almost-locked-set-blossom 12389 start r5c5 set r5c1 r1c5 r9c1 r9c5 sets r5c1 r1c5 r9c1+r9c5", """
            9 . . | . . . | . . .
            """)
        {
            Links = "r5c5=1 - r5c1=1, r5c1=1 = r5c1=9, r5c1=9 - r1c1=9, r5c5=2 - r1c5=2, r1c5=2 = r1c5=9, r1c5=9 - "
                + "r1c1=9, r5c5=3 - r9c5=3, r9c5=3 = r9c1=9, r9c1=9 - r1c1=9",
            RestsOn = """
            .       . . | . 1345678 . | . . .
            .       . . | . .       . | . . .
            .       . . | . .       . | . . .
            ------------+-------------+------
            .       . . | . .       . | . . .
            2345678 . . | . 456789  . | . . .
            .       . . | . .       . | . . .
            ------------+-------------+------
            .       . . | . .       . | . . .
            .       . . | . .       . | . . .
            1234567 . . | . 1245679 . | . . .
            """,
        });

    [Fact]
    public void A_candidate_of_the_stem_that_excludes_what_goes_needs_no_set() => RuleCheck.Finds(
        new AlmostLockedSetBlossom(),
        Drawing.Board("""
            . .  .  | . .   . | . . .
            . .  .  | . .   . | . . .
            . .  .  | . .   . | . . .
            --------+---------+------
            . 79 .  | . 17  . | . . .
            . .  .  | . 129 . | . . .
            . .  89 | . 28  . | . . .
            """),
        new Found("almost-locked-set-blossom 12789 start r5c5 set r4c2 r4c5 r6c3 r6c5 sets r4c2+r4c5 r6c3+r6c5", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            9 9 9 | . . . | . . .
            """)
        {
            Links = "r5c5=1 - r4c5=1, r4c5=1 = r4c2=9, r4c2=9 - r5c1=9, r5c5=2 - r6c5=2, r6c5=2 = r6c3=9, r6c3=9 - "
                + "r5c1=9, r5c5=9 - r5c1=9",
            RestsOn = """
            . .       .       | . .       . | . . .
            . .       .       | . .       . | . . .
            . .       .       | . .       . | . . .
            ------------------+-------------+------
            . 1234568 .       | . 2345689 . | . . .
            . .       .       | . 345678  . | . . .
            . .       1234567 | . 1345679 . | . . .
            """,
        });

    [Fact]
    public void A_candidate_of_the_stem_without_a_set_leaves_all_open() => RuleCheck.FindsNothing(
        new AlmostLockedSetBlossom(),
        Drawing.Board("""
            .  . . | . 29   . | . . .
            .  . . | . .    . | . . .
            .  . . | . .    . | . . .
            -------+----------+------
            .  . . | . .    . | . . .
            19 . . | . 1234 . | . . .
            .  . . | . .    . | . . .
            -------+----------+------
            .  . . | . .    . | . . .
            .  . . | . .    . | . . .
            89 . . | . 38   . | . . .
            """));

    [Fact]
    public void A_stem_with_two_candidates_is_left_to_chains() => RuleCheck.FindsNothing(
        new AlmostLockedSetBlossom(),
        Drawing.Board("""
            .  . . | . 29 . | . . .
            .  . . | . .  . | . . .
            .  . . | . .  . | . . .
            -------+--------+------
            .  . . | . .  . | . . .
            19 . . | . 12 . | . . .
            .  . . | . .  . | . . .
            -------+--------+------
            .  . . | . .  . | . . .
            .  . . | . .  . | . . .
            89 . . | . 38 . | . . .
            """));
}
