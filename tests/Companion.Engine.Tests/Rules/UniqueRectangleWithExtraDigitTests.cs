using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class UniqueRectangleWithExtraDigitTests
{
    [Fact]
    public void A_third_digit_in_two_corners_of_a_block_goes_from_the_cells_that_see_both() => RuleCheck.Finds(
        new UniqueRectangleWithExtraDigit(),
        Drawing.Board("""
            58 . . | 358 . . | . . .
            58 . . | 358 . . | . . .
            """),
        new Found("unique-rectangle-with-extra-digit 358 floor r1c1 r2c1 roof r1c4 r2c4", """
            . . . | . 3 3 | . . .
            . . . | . 3 3 | . . .
            . . . | 3 3 3 | . . .
            ------+-------+------
            . . . | 3 . . | . . .
            . . . | 3 . . | . . .
            . . . | 3 . . | . . .
            ------+-------+------
            . . . | 3 . . | . . .
            . . . | 3 . . | . . .
            . . . | 3 . . | . . .
            """)
        {
            RestsOn = """
            1234679 . . | 124679 . . | . . .
            1234679 . . | 124679 . . | . . .
            """,
        });

    [Fact]
    public void A_third_digit_in_two_corners_of_two_blocks_goes_from_their_row() => RuleCheck.Finds(
        new UniqueRectangleWithExtraDigit(),
        Drawing.Board("""
            58  . . | 58  . . | . . .
            358 . . | 358 . . | . . .
            """),
        new Found("unique-rectangle-with-extra-digit 358 floor r1c1 r1c4 roof r2c1 r2c4", """
            . . . | . . . | . . .
            . 3 3 | . 3 3 | 3 3 3
            """));

    [Fact]
    public void A_third_digit_in_two_corners_crosswise_goes_from_the_cells_that_see_both() => RuleCheck.Finds(
        new UniqueRectangleWithExtraDigit(),
        Drawing.Board("""
            58  . . | 358 . . | . . .
            358 . . | 58  . . | . . .
            """),
        new Found("unique-rectangle-with-extra-digit 358 floor r1c1 r2c4 roof r1c4 r2c1", """
            . 3 3 | . . . | . . .
            . . . | . 3 3 | . . .
            """));

    [Fact]
    public void In_three_corners_it_goes_from_the_cells_that_see_all_three() => RuleCheck.Finds(
        new UniqueRectangleWithExtraDigit(),
        Drawing.Board("""
            58  . . | 358 . . | . . .
            358 . . | 358 . . | . . .
            """),
        new Found("unique-rectangle-with-extra-digit 358 floor r1c1 roof r1c4 r2c1 r2c4", """
            . . . | . . . | . . .
            . . . | . 3 3 | . . .
            """));

    [Fact]
    public void It_does_not_rest_on_the_absence_of_the_digit_from_a_corner_that_all_removed_cells_see() => RuleCheck.Finds(
        new UniqueRectangleWithExtraDigit(),
        Drawing.Board("""
            58  -3 -3 | 358 . . | . . .
            358 .  .  | 58  . . | . . .
            """),
        new Found("unique-rectangle-with-extra-digit 358 floor r1c1 r2c4 roof r1c4 r2c1", """
            . . . | . . . | . . .
            . . . | . 3 3 | . . .
            """)
        {
            RestsOn = """
            1234679 . . | 124679 . . | . . .
            124679  . . | 124679 . . | . . .
            """,
        });

    [Fact]
    public void Two_different_third_digits_are_left_to_the_subset() => RuleCheck.FindsNothing(
        new UniqueRectangleWithExtraDigit(),
        Drawing.Board("""
            58 . . | 358 . . | . . .
            58 . . | 158 . . | . . .
            """));

    [Fact]
    public void In_one_corner_it_is_left_to_the_plain_rectangle() => RuleCheck.FindsNothing(
        new UniqueRectangleWithExtraDigit(),
        Drawing.Board("""
            58 . . | 358 . . | . . .
            58 . . | 58  . . | . . .
            """));
}
