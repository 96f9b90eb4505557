using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class NakedTripleTests
{
    [Fact]
    public void Three_cells_of_a_row_and_a_block_with_two_of_three_digits_each_clear_both_houses() => RuleCheck.Finds(
        new NakedTriple(),
        Drawing.Board("""
            12 23 13 | . . . | . . .
            """),
        new Found("naked-triple 123 subset r1c1 r1c2 r1c3 in r1 b1", """
            .   .   .   | 123 123 123 | 123 123 123
            123 123 123 | .   .   .   | .   .   .
            123 123 123 | .   .   .   | .   .   .
            """)
        {
            RestsOn = """
            456789 456789 456789 | . . . | . . .
            """,
        });

    [Fact]
    public void Three_cells_of_a_column_with_all_three_digits_clear_the_column() => RuleCheck.Finds(
        new NakedTriple(),
        Drawing.Board("""
            . . . | . . . | . . 467
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+--------
            . . . | . . . | . . 467
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+--------
            . . . | . . . | . . 467
            """),
        new Found("naked-triple 467 subset r1c9 r4c9 r7c9 in c9", """
            . . . | . . . | . . .
            . . . | . . . | . . 467
            . . . | . . . | . . 467
            ------+-------+--------
            . . . | . . . | . . .
            . . . | . . . | . . 467
            . . . | . . . | . . 467
            ------+-------+--------
            . . . | . . . | . . .
            . . . | . . . | . . 467
            . . . | . . . | . . 467
            """));

    [Fact]
    public void A_pair_with_a_third_cell_is_no_triple() => RuleCheck.FindsNothing(
        new NakedTriple(),
        Drawing.Board("""
            12 12 123 | . . . | . . .
            """));

    [Fact]
    public void Three_cells_with_four_digits_are_no_triple() => RuleCheck.FindsNothing(
        new NakedTriple(),
        Drawing.Board("""
            12 23 34 | . . . | . . .
            """));

    [Fact]
    public void Three_cells_in_no_common_house_are_no_triple() => RuleCheck.FindsNothing(
        new NakedTriple(),
        Drawing.Board("""
            12 .  . | . . . | 23 . .
            .  13 . | . . . | .  . .
            """));
}
