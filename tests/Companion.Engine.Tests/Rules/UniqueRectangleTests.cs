using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class UniqueRectangleTests
{
    [Fact]
    public void The_fourth_corner_loses_the_two_candidates_that_the_other_three_have_alone() => RuleCheck.Finds(
        new UniqueRectangle(),
        Drawing.Board("""
            58 . . | 58   . . | . . .
            58 . . | 1578 . . | . . .
            """),
        new Found("unique-rectangle 58 floor r1c1 r1c4 r2c1 roof r2c4", """
            . . . | .  . . | . . .
            . . . | 58 . . | . . .
            """)
        {
            RestsOn = """
            1234679 . . | 1234679 . . | . . .
            1234679 . . | .       . . | . . .
            """,
            Links = "",
        });

    [Fact]
    public void The_two_blocks_may_lie_one_above_the_other() => RuleCheck.Finds(
        new UniqueRectangle(),
        Drawing.Board("""
            . . . | 12 . 12  | . . .
            . . . | .  . .   | . . .
            . . . | .  . .   | . . .
            ------+----------+------
            . . . | .  . .   | . . .
            . . . | .  . .   | . . .
            . . . | .  . .   | . . .
            ------+----------+------
            . . . | .  . .   | . . .
            . . . | .  . .   | . . .
            . . . | 12 . 123 | . . .
            """),
        new Found("unique-rectangle 12 floor r1c4 r1c6 r9c4 roof r9c6", """
            . . . | . . .  | . . .
            . . . | . . .  | . . .
            . . . | . . .  | . . .
            ------+--------+------
            . . . | . . .  | . . .
            . . . | . . .  | . . .
            . . . | . . .  | . . .
            ------+--------+------
            . . . | . . .  | . . .
            . . . | . . .  | . . .
            . . . | . . 12 | . . .
            """));

    [Fact]
    public void Four_blocks_are_too_many_since_these_would_change_by_the_exchange() => RuleCheck.FindsNothing(
        new UniqueRectangle(),
        Drawing.Board("""
            58 . . | 58   . . | . . .
            .  . . | .    . . | . . .
            .  . . | .    . . | . . .
            -------+----------+------
            58 . . | 1578 . . | . . .
            """));

    [Fact]
    public void A_corner_that_lacks_one_of_the_digits_spoils_it() => RuleCheck.FindsNothing(
        new UniqueRectangle(),
        Drawing.Board("""
            58 . . | 58  . . | . . .
            58 . . | 157 . . | . . .
            """));

    [Fact]
    public void A_filled_corner_spoils_it_for_it_may_be_a_given() => RuleCheck.FindsNothing(
        new UniqueRectangle(),
        Drawing.Board("""
            =5 . . | .    . . | . . .
            58 . . | 1578 . . | . . .
            """));
}
