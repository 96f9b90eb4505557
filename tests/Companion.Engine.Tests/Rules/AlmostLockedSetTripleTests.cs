using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class AlmostLockedSetTripleTests
{
    [Fact]
    public void The_middle_set_passes_the_want_of_a_digit_on() => RuleCheck.Finds(
        new AlmostLockedSetTriple(),
        Drawing.Board("""
            125 25 . | .   .  .  | . . .
            .   .  . | .   .  .  | . . .
            .   .  . | .   .  .  | . . .
            ---------+-----------+------
            .   .  . | .   .  .  | . . .
            136 .  . | 346 46 .  | . . .
            .   .  . | .   .  45 | . . .
            """),
        new Found("almost-locked-set-triple 123456 set r1c1 r1c2 r5c1 r5c4 r5c5 r6c6 sets r1c1+r1c2 r5c1+r5c4+r5c5 r6c6", """
            . . . | . . 5 | . . .
            """)
        {
            Links = "r1c1+r1c2=5 = r1c1=1, r1c1=1 - r5c1=1, r5c1=1 = r5c4+r5c5=4, r5c4+r5c5=4 - r6c6=4, r6c6=4 = r6c6=5",
            RestsOn = """
            346789 1346789 . | .      .      .       | . . .
            .      .       . | .      .      .       | . . .
            .      .       . | .      .      .       | . . .
            -----------------+-----------------------+------
            .      .       . | .      .      .       | . . .
            245789 .       . | 125789 125789 .       | . . .
            .      .       . | .      .      1236789 | . . .
            """,
        });

    [Fact]
    public void The_two_links_of_the_middle_set_are_two_digits() => RuleCheck.FindsNothing(
        new AlmostLockedSetTriple(),
        Drawing.Board("""
            125 25 . | .   .  .  | . . .
            .   .  . | .   .  .  | . . .
            .   .  . | .   .  .  | . . .
            ---------+-----------+------
            .   .  . | .   .  .  | . . .
            146 .  . | 346 34 .  | . . .
            .   .  . | .   .  15 | . . .
            """));

    [Fact]
    public void Two_sets_that_do_as_much_are_left_to_the_pair() => RuleCheck.FindsNothing(
        new AlmostLockedSetTriple(),
        Drawing.Board("""
            123 23 . | . .  . | . . .
            .   .  . | . .  . | . . .
            .   .  . | . .  . | . . .
            ---------+--------+--------
            .   .  . | . .  . | . . .
            14  .  . | . 45 . | . . 345
            """));

    [Fact]
    public void Cells_with_two_candidates_alone_are_left_to_XY_chain() => RuleCheck.FindsNothing(
        new AlmostLockedSetTriple(),
        Drawing.Board("""
            12 .  . | . 23 . | . . .
            .  .  . | . .  . | . . .
            .  .  . | . .  . | . . .
            --------+--------+------
            .  14 . | . 34 . | . . .
            """));
}
