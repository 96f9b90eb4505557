using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class AlmostLockedSetRingTests
{
    [Fact]
    public void Each_set_holds_all_its_digits_but_one_of_the_two_links() => RuleCheck.Finds(
        new AlmostLockedSetRing(),
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
            """),
        new Found("almost-locked-set-ring 12567 set r1c1 r4c1 r8c1 r1c5 r4c5 sets r1c1+r4c1+r8c1 r1c5+r4c5", """
            .  1 1 | 1 . 1 | 1 1 1
            56 . . | . 7 . | . . .
            56 . . | . 7 . | . . .
            -------+-------+------
            .  2 2 | 2 . 2 | 2 2 2
            56 . . | . 7 . | . . .
            56 . . | . 7 . | . . .
            -------+-------+------
            56 . . | . 7 . | . . .
            .  . . | . 7 . | . . .
            56 . . | . 7 . | . . .
            """)
        {
            Links = "r1c1=1 = r4c1=2, r4c1=2 - r4c5=2, r4c5=2 = r1c5=1, r1c5=1 - r1c1=1",
            RestsOn = """
            234789  . . | . 2345689 . | . . .
            .       . . | . .       . | . . .
            .       . . | . .       . | . . .
            ------------+-------------+------
            134789  . . | . 1345689 . | . . .
            .       . . | . .       . | . . .
            .       . . | . .       . | . . .
            ------------+-------------+------
            .       . . | . .       . | . . .
            1234789 . . | . .       . | . . .
            """,
        });

    [Fact]
    public void A_place_of_a_link_that_does_not_see_all_in_the_other_set_breaks_the_ring() => RuleCheck.FindsNothing(
        new AlmostLockedSetRing(),
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
            256 . . | . .  . | . . .
            """));

    [Fact]
    public void Two_sets_in_one_house_are_left_to_naked_subsets() => RuleCheck.FindsNothing(
        new AlmostLockedSetRing(),
        Drawing.Board("""
            123 13 . | . 12 . | . . .
            """));
}
