using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class HiddenUniqueRectangleTests
{
    [Fact]
    public void The_corner_across_loses_a_digit_by_two_links_on_the_other() => RuleCheck.Finds(
        new HiddenUniqueRectangle(),
        Drawing.Board("""
            58 .  .  | .  .  .  | .  .  .
            .  -5 -5 | .  -5 -5 | -5 -5 -5
            .  .  .  | -5 .  .  | .  .  .
            ---------+----------+---------
            .  .  .  | -5 .  .  | .  .  .
            .  .  .  | -5 .  .  | .  .  .
            .  .  .  | -5 .  .  | .  .  .
            ---------+----------+---------
            .  .  .  | -5 .  .  | .  .  .
            .  .  .  | -5 .  .  | .  .  .
            .  .  .  | -5 .  .  | .  .  .
            """),
        new Found("hidden-unique-rectangle 58 floor r1c1 roof r1c4 r2c1 r2c4 in r2 c4", """
            . . . | . . . | . . .
            . . . | 8 . . | . . .
            """)
        {
            RestsOn = """
            1234679 . . | . . . | . . .
            .       5 5 | . 5 5 | 5 5 5
            .       . . | 5 . . | . . .
            ------------+-------+------
            .       . . | 5 . . | . . .
            .       . . | 5 . . | . . .
            .       . . | 5 . . | . . .
            ------------+-------+------
            .       . . | 5 . . | . . .
            .       . . | 5 . . | . . .
            .       . . | 5 . . | . . .
            """,
            Links = "r2c1=5 = r2c4=5, r1c4=5 = r2c4=5",
        });

    [Fact]
    public void Two_corners_side_by_side_and_a_link_between_the_others_take_the_other_digit_from_both() => RuleCheck.Finds(
        new HiddenUniqueRectangle(),
        Drawing.Board("""
            58 .  .  | 58 .  .  | .  .  .
            .  -5 -5 | .  -5 -5 | -5 -5 -5
            """),
        new Found("hidden-unique-rectangle 58 floor r1c1 r1c4 roof r2c1 r2c4 in r2", """
            . . . | . . . | . . .
            8 . . | 8 . . | . . .
            """));

    [Fact]
    public void Two_corners_crosswise_and_a_link_beside_one_of_the_others_take_the_digit_from_the_third() => RuleCheck.Finds(
        new HiddenUniqueRectangle(),
        Drawing.Board("""
            58 .  .  | .  .  .  | .  .  .
            .  -5 -5 | 58 -5 -5 | -5 -5 -5
            """),
        new Found("hidden-unique-rectangle 58 floor r1c1 r2c4 roof r1c4 r2c1 in r2", """
            . . . | 5 . . | . . .
            """));

    [Fact]
    public void Without_a_link_nothing_is_forced() => RuleCheck.FindsNothing(
        new HiddenUniqueRectangle(),
        Drawing.Board("""
            58 . . | 58 . . | . . .
            .  . . | .  . . | . . .
            """));

    [Fact]
    public void Three_corners_with_the_two_digits_alone_are_left_to_the_plain_rectangle() => RuleCheck.FindsNothing(
        new HiddenUniqueRectangle(),
        Drawing.Board("""
            58 .  .  | 58 .  .  | .  .  .
            58 -5 -5 | .  -5 -5 | -5 -5 -5
            """));
}
