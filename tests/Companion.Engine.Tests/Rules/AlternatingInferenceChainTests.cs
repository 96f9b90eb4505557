using Companion.Engine.Rules;

namespace Companion.Engine.Tests.Rules;

public sealed class AlternatingInferenceChainTests
{
    [Fact]
    public void An_end_takes_its_digit_from_the_cell_of_the_other_end_that_it_sees() => RuleCheck.Finds(
        new AlternatingInferenceChain(),
        Drawing.Board("""
            25 . . | . . . | . .  .
            .  . . | . . . | . -5 .
            .  . . | . . . | . -5 .
            -------+-------+-------
            .  -7 -7 | -7 -7 -7 | -7 . -7
            .  . . | . . . | . -5 .
            .  . . | . . . | . -5 .
            -------+-------+-------
            .  . . | . . . | . -5 .
            .  . . | . . . | . -5 .
            .  . . | . . . | . -5 .
            """),
        new Found("alternating-inference-chain 257 chainend r1c1 chain r1c8 r4c8 chainend r4c1 in r4 c8", """
            . . . | . . . | . . .
            . . . | . . . | . . .
            . . . | . . . | . . .
            ------+-------+------
            2 . . | . . . | . . .
            """)
        {
            Links = "r1c1=2 = r1c1=5, r1c1=5 - r1c8=5, r1c8=5 = r4c8=5, r4c8=5 - r4c8=7, r4c8=7 = r4c1=7",
            RestsOn = """
            1346789 . . | . . . | . . .
            .       . . | . . . | . 5 .
            .       . . | . . . | . 5 .
            ------------+-------+------
            .       7 7 | 7 7 7 | 7 . 7
            .       . . | . . . | . 5 .
            .       . . | . . . | . 5 .
            ------------+-------+------
            .       . . | . . . | . 5 .
            .       . . | . . . | . 5 .
            .       . . | . . . | . 5 .
            """,
        });

    [Fact]
    public void A_chain_that_ends_where_it_begins_places_the_digit() => RuleCheck.Finds(
        new AlternatingInferenceChain(),
        Drawing.Board("""
            .  -1 -1 | -1 .  -1 | -1 -1 -1
            -1 .  .  | .  .  .  | .  .  .
            -1 .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            -1 12 .  | .  12 .  | .  .  .
            .  .  .  | .  .  .  | .  .  .
            -1 .  .  | .  .  .  | .  .  .
            ---------+----------+---------
            -1 .  .  | .  .  .  | .  .  .
            -1 .  .  | .  .  .  | .  .  .
            -1 .  .  | .  .  .  | .  .  .
            """),
        new Found("alternating-inference-chain 12 chainend r1c1 chain r5c1 r4c2 chainend r4c5 in c1", """
            . . . | . 1 . | . . .
            """)
        {
            Links = "r1c1=1 = r5c1=1, r5c1=1 - r4c2=1, r4c2=1 = r4c2=2, r4c2=2 - r4c5=2, r4c5=2 = r4c5=1",
        },
        new Found("alternating-inference-chain 12 chainend r1c1 chain r1c5 r4c5 chainend r4c2 in r1", """
            . . . | . . . | . . .
            . 1 . | . . . | . . .
            . 1 . | . . . | . . .
            ------+-------+------
            . . . | . . . | . . .
            1 . . | . . . | . . .
            """)
        {
            Links = "r1c1=1 = r1c5=1, r1c5=1 - r4c5=1, r4c5=1 = r4c5=2, r4c5=2 - r4c2=2, r4c2=2 = r4c2=1",
        },
        new Found("alternating-inference-chain 12 chainend r1c1 chain r5c1 r4c2 r4c5 r1c5 in r1 c1", """
            =1 . . | . . . | . . .
            """)
        {
            Links = "r1c1=1 = r5c1=1, r5c1=1 - r4c2=1, r4c2=1 = r4c2=2, r4c2=2 - r4c5=2, r4c5=2 = r4c5=1, r4c5=1 - r1c5=1, "
                + "r1c5=1 = r1c1=1",
        });

    [Fact]
    public void A_chain_of_cells_with_two_candidates_is_left_to_XY_chain() => RuleCheck.FindsNothing(
        new AlternatingInferenceChain(),
        Drawing.Board("""
            12 .  .  | .  23 .  | . . .
            .  .  .  | .  .  .  | . . .
            .  .  .  | .  .  .  | . . .
            ---------+----------+------
            .  14 .  | .  34 .  | . . .
            """));

    [Fact]
    public void A_chain_that_closes_is_left_to_continuous_loop() => RuleCheck.FindsNothing(
        new AlternatingInferenceChain(),
        Drawing.Board("""
            12 .  .  | .  .  .  | . . .
            .  .  .  | .  -2 .  | . . .
            .  .  .  | .  -2 .  | . . .
            ---------+----------+------
            -1 -3 -3 | -3 .  -3 | -3 -3 -3
            .  .  .  | .  -2 .  | . . .
            .  .  .  | .  -2 .  | . . .
            ---------+----------+------
            13 .  .  | .  -2 .  | . . .
            .  .  .  | .  -2 .  | . . .
            .  .  .  | .  -2 .  | . . .
            """));

    [Fact]
    public void A_third_place_of_a_digit_breaks_the_chain() => RuleCheck.FindsNothing(
        new AlternatingInferenceChain(),
        Drawing.Board("""
            25 . . | . . . | . .  .
            .  . . | . . . | . -5 .
            .  . . | . . . | . -5 .
            -------+-------+-------
            .  -7 -7 | -7 -7 . | -7 . -7
            .  . . | . . . | . -5 .
            .  . . | . . . | . -5 .
            -------+-------+-------
            .  . . | . . . | . -5 .
            .  . . | . . . | . -5 .
            .  . . | . . . | . -5 .
            """));
}
