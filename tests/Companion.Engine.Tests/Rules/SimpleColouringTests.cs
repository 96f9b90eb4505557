using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class SimpleColouringTests
{
    [Fact]
    public void A_cell_that_sees_both_colours_loses_the_digit() => RuleCheck.Finds(
        new SimpleColouring(),
        Drawing.Board("""
            .  -4 -4 | -4 .  -4 | -4 -4 -4
            -4 .  .  | .  -4 .  | .  .  .
            -4 .  .  | .  -4 .  | .  .  .
            ---------+----------+---------
            -4 .  .  | .  -4 .  | .  .  .
            .  .  .  | .  -4 .  | .  .  .
            -4 .  .  | .  -4 .  | .  .  .
            ---------+----------+---------
            -4 -4 -4 | -4 .  -4 | .  -4 -4
            -4 .  .  | .  -4 .  | -4 .  -4
            -4 .  .  | .  -4 .  | -4 -4 -4
            """),
        new Found("simple-colouring 4 firstcolour r1c1 r7c5 r8c8 secondcolour r1c5 r5c1 r7c7 in r1 r7 c1 c5 b9", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . . | . 4 .
            """)
        {
            RestsOn = """
            . 4 4 | 4 . 4 | 4 4 4
            4 . . | . 4 . | . . .
            4 . . | . 4 . | . . .
            ------+-------+------
            4 . . | . 4 . | . . .
            . . . | . 4 . | . . .
            4 . . | . 4 . | . . .
            ------+-------+------
            4 4 4 | 4 . 4 | . 4 4
            4 . . | . 4 . | 4 . 4
            4 . . | . 4 . | 4 4 4
            """,
            Links = "r1c1=4 = r1c5=4, r7c5=4 = r7c7=4, r1c1=4 = r5c1=4, r1c5=4 = r7c5=4, r7c7=4 = r8c8=4",
        });

    [Fact]
    public void A_colour_of_which_two_cells_share_a_column_goes() => RuleCheck.Finds(
        new SimpleColouring(),
        Drawing.Board("""
            . -4 -4 | -4 .  -4 | -4 -4 -4
            . .  .  | .  -4 .  | .  .  .
            . .  .  | .  -4 .  | .  .  .
            --------+----------+---------
            . -4 -4 | .  -4 -4 | -4 -4 -4
            . .  .  | -4 -4 -4 | .  .  .
            . .  .  | -4 .  -4 | .  .  .
            --------+----------+---------
            . .  .  | .  -4 .  | .  .  .
            . .  .  | .  -4 .  | .  .  .
            . .  .  | .  -4 .  | .  .  .
            """),
        new Found("simple-colouring 4 firstcolour r1c5 r4c4 secondcolour r1c1 r4c1 r6c5 in r1 r4 c5 b5", """
            4 . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            4 . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . 4 . | . . .
            """));

    [Fact]
    public void Places_at_loose_ends_that_no_removed_cell_sees_are_left_out() => RuleCheck.Finds(
        new SimpleColouring(),
        Drawing.Board("""
            .  -4 -4 | -4 .  -4 | -4 -4 -4
            -4 -4 .  | .  -4 .  | .  .  .
            -4 -4 .  | .  -4 .  | .  .  .
            ---------+----------+---------
            -4 .  .  | .  -4 .  | .  .  .
            .  .  .  | .  -4 .  | .  .  .
            -4 .  .  | .  -4 .  | .  .  .
            ---------+----------+---------
            -4 -4 -4 | -4 .  -4 | .  -4 -4
            -4 .  -4 | -4 -4 -4 | -4 .  -4
            -4 .  .  | .  -4 .  | -4 -4 -4
            """),
        new Found("simple-colouring 4 firstcolour r1c1 r7c5 r8c8 secondcolour r1c5 r5c1 r7c7 in r1 r7 c1 c5 b9", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            . . . | . . . | . 4 .
            """));

    [Fact]
    public void Two_joined_places_in_a_block_are_left_to_pointing() => RuleCheck.FindsNothing(
        new SimpleColouring(),
        Drawing.Board("""
            .  .  -4 | . . . | . . .
            -4 -4 -4 | . . . | . . .
            -4 -4 -4 | . . . | . . .
            """));

    [Fact]
    public void A_third_place_in_a_row_breaks_the_link() => RuleCheck.FindsNothing(
        new SimpleColouring(),
        Drawing.Board("""
            .  -4 -4 | -4 .  -4 | -4 -4 -4
            -4 .  .  | .  -4 .  | .  .  .
            -4 .  .  | .  -4 .  | .  .  .
            ---------+----------+---------
            -4 .  .  | .  -4 .  | .  .  .
            .  .  .  | .  -4 .  | .  .  .
            -4 .  .  | .  -4 .  | .  .  .
            ---------+----------+---------
            -4 .  -4 | -4 .  -4 | .  -4 -4
            -4 .  .  | .  -4 .  | -4 .  -4
            -4 .  .  | .  -4 .  | -4 -4 -4
            """));
}
