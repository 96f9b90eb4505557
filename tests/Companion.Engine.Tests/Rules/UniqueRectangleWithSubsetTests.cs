using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class UniqueRectangleWithSubsetTests
{
    [Fact]
    public void The_other_digits_of_the_roof_make_a_pair_with_a_cell_of_its_row() => RuleCheck.Finds(
        new UniqueRectangleWithSubset(),
        Drawing.Board("""
            58  . . | 58  . . | .  . .
            158 . . | 358 . . | 13 . .
            """),
        new Found("unique-rectangle-with-subset 1358 floor r1c1 r1c4 roof r2c1 r2c4 subset r2c7 in r2", """
            . .  .  | . .  .  | . .  .
            . 13 13 | . 13 13 | . 13 13
            """)
        {
            RestsOn = """
            1234679 . . | 1234679 . . | .       . .
            24679   . . | 24679   . . | 2456789 . .
            """,
        });

    [Fact]
    public void They_make_a_triple_with_two_cells_of_their_block() => RuleCheck.Finds(
        new UniqueRectangleWithSubset(),
        Drawing.Board("""
            58 . . | 158 . .  | . . .
            58 . . | 358 . .  | . . .
            .  . . | 14  . 34 | . . .
            """),
        new Found("unique-rectangle-with-subset 13458 floor r1c1 r2c1 roof r1c4 r2c4 subset r3c4 r3c6 in b2", """
            . . . | . 134 134 | . . .
            . . . | . 134 134 | . . .
            . . . | . 134 .   | . . .
            """));

    [Fact]
    public void A_cell_of_the_house_with_one_of_the_two_digits_is_no_part_of_the_subset() => RuleCheck.FindsNothing(
        new UniqueRectangleWithSubset(),
        Drawing.Board("""
            58  . . | 58  . . | .   . .
            158 . . | 358 . . | 135 . .
            """));

    [Fact]
    public void A_roof_crosswise_has_no_house() => RuleCheck.FindsNothing(
        new UniqueRectangleWithSubset(),
        Drawing.Board("""
            58  . . | 358 . . | .  . .
            158 . . | 58  . . | 13 . .
            """));

    [Fact]
    public void One_other_digit_in_the_roof_is_left_to_the_rectangle_with_an_extra_digit() => RuleCheck.FindsNothing(
        new UniqueRectangleWithSubset(),
        Drawing.Board("""
            58  . . | 58  . . | .  .  .
            158 . . | 158 . . | 13 13 .
            """));
}
