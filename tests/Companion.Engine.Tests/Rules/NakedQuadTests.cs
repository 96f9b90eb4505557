using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class NakedQuadTests
{
    [Fact]
    public void Four_cells_of_a_row_with_four_digits_between_them_clear_the_row() => RuleCheck.Finds(
        new NakedQuad(),
        Drawing.Board("""
            12 . 23 | . 34 . | 14 . .
            """),
        new Found("naked-quad 1234 subset r1c1 r1c3 r1c5 r1c7 in r1", """
            . 1234 . | 1234 . 1234 | . 1234 1234
            """)
        {
            RestsOn = """
            56789 . 56789 | . 56789 . | 56789 . .
            """,
        });

    [Fact]
    public void Four_cells_of_a_block_with_four_digits_between_them_clear_the_block() => RuleCheck.Finds(
        new NakedQuad(),
        Drawing.Board("""
            . .    .    | . . . | . . .
            . 5678 567  | . . . | . . .
            . 678  5678 | . . . | . . .
            """),
        new Found("naked-quad 5678 subset r2c2 r2c3 r3c2 r3c3 in b1", """
            5678 5678 5678 | . . . | . . .
            5678 .    .    | . . . | . . .
            5678 .    .    | . . . | . . .
            """));

    [Fact]
    public void Two_pairs_are_no_quad() => RuleCheck.FindsNothing(
        new NakedQuad(),
        Drawing.Board("""
            12 . 12 | . 34 . | 34 . .
            """));

    [Fact]
    public void A_triple_with_a_fourth_cell_is_no_quad() => RuleCheck.FindsNothing(
        new NakedQuad(),
        Drawing.Board("""
            12 . 23 | . 13 . | 1234 . .
            """));

    [Fact]
    public void Four_cells_with_five_digits_are_no_quad() => RuleCheck.FindsNothing(
        new NakedQuad(),
        Drawing.Board("""
            12 . 23 | . 34 . | 45 . .
            """));
}
