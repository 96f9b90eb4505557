using Companion.Engine.Proofs;

namespace Companion.Engine.Tests.Proofs;

public class WordingTests
{
    // For each rule the four grades, spoken and written. Lines set in further go on from the line before.
    [Theory]
    [InlineData("full-house", """
        Have a look at the middle band.
        Look at the middle band
        Look out for a full house.
        Look for a full house
        In row five, only column three is still open. Which digit is missing?
        Full house: r5c3 in row 5
        In row five, only column three is still open, and the digit it still needs is seven. So row five column three is
            seven.
        Full house: r5c3 in row 5 → r5c3 is 7
        """)]
    [InlineData("hidden-single", """
        Have a look at row five.
        Look at row 5
        Look out for a hidden single.
        Look for a hidden single
        Where in row five can seven still go?
        Hidden single: 7 in row 5
        In row five, seven has nowhere left to go but column three. So row five column three is seven.
        Hidden single: 7 in row 5 → r5c3 is 7
        """)]
    [InlineData("naked-single", """
        Have a look at row five.
        Look at row 5
        Look out for a naked single.
        Look for a naked single
        What can row five column three still be?
        Naked single: r5c3
        In row five column three, every digit but seven is ruled out. So row five column three is seven.
        Naked single: r5c3 → r5c3 is 7
        """)]
    [InlineData("pointing", """
        Have a look at block one.
        Look at block 1
        Look out for a pointing pattern.
        Look for a pointing pattern
        In block one, follow five: all its places lie in row two.
        Pointing: 5 in block 1 kept to row 2
        In block one, every place left for five lies in row two. Whichever of them takes it, that is the five of the row, so
            five comes out of row two columns six and nine.
        Pointing: 5 in block 1 kept to row 2 → 5 out of r2c6, r2c9
        """)]
    [InlineData("claiming", """
        Have a look at row two.
        Look at row 2
        Look out for a claiming pattern.
        Look for a claiming pattern
        In row two, follow five: all its places lie in block one.
        Claiming: 5 in row 2 kept to block 1
        In row two, every place left for five lies in block one. Whichever of them takes it, that is the five of the block,
            so five comes out of row one column one and row three column two.
        Claiming: 5 in row 2 kept to block 1 → 5 out of r1c1, r3c2
        """)]
    [InlineData("two-block-claiming", """
        Have a look at the top band.
        Look at the top band
        Look out for claiming by a pair of blocks.
        Look for claiming by a pair of blocks
        In blocks one and two, follow five: all its places lie in rows one and three.
        Claiming by a pair of blocks: 5 in blocks 1 and 2 kept to rows 1 and 3
        Blocks one and two both keep five to rows one and three. Each block takes it in a row of its own, which uses up both
            rows, so five comes out of row one column seven, and row three columns eight and nine.
        Claiming by a pair of blocks: 5 in blocks 1 and 2 kept to rows 1 and 3 → 5 out of r1c7, r3c8, r3c9
        """)]
    [InlineData("naked-pair", """
        Have a look at row one.
        Look at row 1
        Look out for a naked pair.
        Look for a naked pair
        Compare row one columns one and four: between them there is room only for the digits five and eight.
        Naked pair: 5 and 8 in r1c1, r1c4
        Row one columns one and four have only the digits five and eight between them: two cells for two digits, so none is
            left for the rest of row one. So five comes out of row one columns six and seven, and eight comes out of row one
            column seven.
        Naked pair: 5 and 8 in r1c1, r1c4 → 5 out of r1c6, r1c7; 8 out of r1c7
        """)]
    [InlineData("hidden-pair", """
        Have a look at row one.
        Look at row 1
        Look out for a hidden pair.
        Look for a hidden pair
        In row one, follow the digits five and eight: they only fit in columns one and four.
        Hidden pair: 5 and 8 in row 1 kept to r1c1, r1c4
        In row one, the digits five and eight only fit in columns one and four. The two digits fill the two cells and leave
            no room for anything else, so one and three come out of row one column one, and nine comes out of row one column
            four.
        Hidden pair: 5 and 8 in row 1 kept to r1c1, r1c4 → 1 and 3 out of r1c1; 9 out of r1c4
        """)]
    [InlineData("naked-triple", """
        Have a look at row one.
        Look at row 1
        Look out for a naked triple.
        Look for a naked triple
        Compare row one columns one, four and nine: between them there is room only for the digits two, five and eight.
        Naked triple: 2, 5 and 8 in r1c1, r1c4, r1c9
        Row one columns one, four and nine have only the digits two, five and eight between them: three cells for three
            digits, so none is left for the rest of row one. So two and eight come out of row one column seven, and five comes
            out of row one column six.
        Naked triple: 2, 5 and 8 in r1c1, r1c4, r1c9 → 2 and 8 out of r1c7; 5 out of r1c6
        """)]
    [InlineData("hidden-triple", """
        Have a look at column one.
        Look at column 1
        Look out for a hidden triple.
        Look for a hidden triple
        In column one, follow the digits two, five and eight: they only fit in rows one, four and nine.
        Hidden triple: 2, 5 and 8 in column 1 kept to r1c1, r4c1, r9c1
        In column one, the digits two, five and eight only fit in rows one, four and nine. The three digits fill the three
            cells and leave no room for anything else, so one comes out of column one rows one, four and nine.
        Hidden triple: 2, 5 and 8 in column 1 kept to r1c1, r4c1, r9c1 → 1 out of r1c1, r4c1, r9c1
        """)]
    [InlineData("x-wing", """
        Have a look at row two.
        Look at row 2
        Look out for an X-wing.
        Look for an X-wing
        In rows two and seven, follow five: it only fits in columns three and eight.
        X-wing on 5: rows 2 and 7, columns 3 and 8
        In rows two and seven, five only fits in columns three and eight. Each row takes it in a column of its own, which
            uses up both columns, so five comes out of row one column three, and column eight rows four and nine.
        X-wing on 5: rows 2 and 7, columns 3 and 8 → 5 out of r1c3, r4c8, r9c8
        """)]
    [InlineData("xy-wing", """
        Have a look at the middle band.
        Look at the middle band
        Look out for an XY-wing.
        Look for an XY-wing
        The pivot is row five column three, the pincers are row five column eight and row four column one, and the digits
            are two, five and eight.
        XY-wing on 2, 5 and 8: pivot r5c3, pincers r5c8, r4c1
        The pivot, row five column three, is two or five. If it is two, row five column eight has to be eight; if it is
            five, row four column one has to be eight. Either way a pincer is eight, and a cell that sees both pincers cannot
            be. So eight comes out of row four columns seven and nine, and row five column two.
        XY-wing on 2, 5 and 8: pivot r5c3, pincers r5c8, r4c1 → 8 out of r4c7, r4c9, r5c2
        """)]
    [InlineData("xyz-wing", """
        Have a look at the middle band.
        Look at the middle band
        Look out for an XYZ-wing.
        Look for an XYZ-wing
        The pivot is row five column three, the pincers are row five column eight and row four column one, and the digits
            are two, five and eight.
        XYZ-wing on 2, 5 and 8: pivot r5c3, pincers r5c8, r4c1
        The pivot, row five column three, is two, five or eight. If it is two, row five column eight has to be eight; if it
            is five, row four column one has to be eight; otherwise it is eight itself. In any case one of the three is eight,
            and a cell that sees all three cannot be. So eight comes out of row five columns one and two.
        XYZ-wing on 2, 5 and 8: pivot r5c3, pincers r5c8, r4c1 → 8 out of r5c1, r5c2
        """)]
    [InlineData("swordfish", """
        Have a look at row one.
        Look at row 1
        Look out for a swordfish.
        Look for a swordfish
        In rows one, four and nine, follow five: it only fits in columns two, five and seven.
        Swordfish on 5: rows 1, 4 and 9, columns 2, 5 and 7
        In rows one, four and nine, five only fits in columns two, five and seven. Each row takes it in a column of its own,
            which uses up all three columns, so five comes out of row two column two and row six column seven.
        Swordfish on 5: rows 1, 4 and 9, columns 2, 5 and 7 → 5 out of r2c2, r6c7
        """)]
    [InlineData("naked-quad", """
        Have a look at block one.
        Look at block 1
        Look out for a naked quad.
        Look for a naked quad
        Compare row one columns one and two, row two column three, and row three column three: between them there is room
            only for the digits one, two, five and eight.
        Naked quad: 1, 2, 5 and 8 in r1c1, r1c2, r2c3, r3c3
        Row one columns one and two, row two column three, and row three column three have only the digits one, two, five
            and eight between them: four cells for four digits, so none is left for the rest of block one. So one comes out of
            row one column three, and five and eight come out of row two column two.
        Naked quad: 1, 2, 5 and 8 in r1c1, r1c2, r2c3, r3c3 → 1 out of r1c3; 5 and 8 out of r2c2
        """)]
    [InlineData("hidden-quad", """
        Have a look at block one.
        Look at block 1
        Look out for a hidden quad.
        Look for a hidden quad
        In block one, follow the digits one, two, five and eight: they only fit in row one columns one and two, row two
            column three, and row three column three.
        Hidden quad: 1, 2, 5 and 8 in block 1 kept to r1c1, r1c2, r2c3, r3c3
        In block one, the digits one, two, five and eight only fit in row one columns one and two, row two column three, and
            row three column three. The four digits fill the four cells and leave no room for anything else, so three comes out
            of row one columns one and two, and row two column three, and four comes out of row one column two and row three
            column three.
        Hidden quad: 1, 2, 5 and 8 in block 1 kept to r1c1, r1c2, r2c3, r3c3 → 3 out of r1c1, r1c2, r2c3; 4 out of r1c2,
            r3c3
        """)]
    [InlineData("jellyfish", """
        Have a look at row one.
        Look at row 1
        Look out for a jellyfish.
        Look for a jellyfish
        In rows one, four, six and nine, follow five: it only fits in columns two, five, seven and nine.
        Jellyfish on 5: rows 1, 4, 6 and 9, columns 2, 5, 7 and 9
        In rows one, four, six and nine, five only fits in columns two, five, seven and nine. Each row takes it in a column
            of its own, which uses up all four columns, so five comes out of row two column two and row seven column seven.
        Jellyfish on 5: rows 1, 4, 6 and 9, columns 2, 5, 7 and 9 → 5 out of r2c2, r7c7
        """)]
    [InlineData("remote-pairs", """
        Have a look at block one.
        Look at block 1
        Look out for remote pairs.
        Look for remote pairs
        Follow the cells that can hold five or eight and nothing else: row two column one, row three columns seven and three,
            and row five column one.
        Remote pairs on 5 and 8: r2c1, r3c7, r3c3, r5c1
        Row two column one, row three columns seven and three, and row five column one can hold five or eight and nothing
            else, and each of them sees the next in the chain. So the digits take turns: row two column one and row three
            column seven share one of them, row three column three and row five column one the other. A cell that sees both
            kinds sees both digits, so five and eight come out of row five column seven.
        Remote pairs on 5 and 8: r2c1, r3c7, r3c3, r5c1 → 5 and 8 out of r5c7
        """)]
    [InlineData("two-strong-links", """
        Have a look at column three.
        Look at column 3
        Look out for a pair of strong links.
        Look for a pair of strong links
        In columns three and seven, follow five: each has only two places for it.
        Pair of strong links on 5: columns 3 and 7, ends r1c3, r3c7
        In columns three and seven, five has only two places each. Row five columns three and seven see each other, so at most
            one of them is five; then at least one of the ends, row one column three and row three column seven, is, and a
            cell that sees both ends cannot be. So five comes out of row one column eight and row three column one.
        Pair of strong links on 5: columns 3 and 7, ends r1c3, r3c7 → 5 out of r1c8, r3c1
        """)]
    [InlineData("w-wing", """
        Have a look at row seven.
        Look at row 7
        Look out for a W-wing.
        Look for a W-wing
        Compare row two column two and row three column eight, and in row seven the two places row seven columns two and eight
            for one of the digits five and eight.
        W-wing on 5 and 8: r2c2, r3c8, joined by r7c2, r7c8
        Row two column two and row three column eight can hold five or eight and nothing else. In row seven, five only fits in
            row seven columns two and eight, and whichever of these takes it is seen by one of the two cells, which is then
            eight. A cell that sees both cannot be, so eight comes out of row two column seven and row three column one.
        W-wing on 5 and 8: r2c2, r3c8, joined by r7c2, r7c8 → 8 out of r2c7, r3c1
        """)]
    [InlineData("simple-colouring", """
        Have a look at row one.
        Look at row 1
        Look out for simple colouring.
        Look for simple colouring
        In rows one and seven, columns one and five and block nine, follow five: each has only two places for it. Give them
            two colours in turn.
        Simple colouring on 5: rows 1 and 7, columns 1 and 5 and block 9
        In rows one and seven, columns one and five and block nine, five has only two places each, which makes two colours:
            row one column one, row seven column five and row eight column eight are all five or all not, and row one column
            five, row five column one and row seven column seven the other way round. A colour that stands twice in a house is
            not five, nor is a cell that sees both colours. So five comes out of row five column eight.
        Simple colouring on 5: rows 1 and 7, columns 1 and 5 and block 9 → 5 out of r5c8
        """)]
    [InlineData("empty-rectangle", """
        Have a look at column seven.
        Look at column 7
        Look out for an empty rectangle.
        Look for an empty rectangle
        In block one, five is kept to one row and one column. In column seven, it has only two places.
        Empty rectangle on 5: block 1, link r2c7, r5c7 in column 7
        In block one, five is kept to one row and one column. In column seven, it only fits in row two column seven and row
            five column seven. If row five column seven is not five, row two column seven is, and block one takes it in the
            other of the two lines. Either way five comes out of row five column three.
        Empty rectangle on 5: block 1, link r2c7, r5c7 in column 7 → 5 out of r5c3
        """)]
    [InlineData("wxyz-wing", """
        Have a look at the top band.
        Look at the top band
        Look out for a WXYZ-wing.
        Look for a WXYZ-wing
        Compare row three column three with row one column one, row two column two and row three column eight: between them
            there is room only for the digits one, two, five and eight.
        WXYZ-wing on 1, 2, 5 and 8: pivot r3c3, pincers r1c1, r2c2, r3c8
        Row three columns three and eight, row one column one, and row two column two have only the digits one, two, five and
            eight between them. The places of one, two and five see each other, so each of these digits fills one of the four
            cells at most, and one cell is left for eight. A cell that sees all its places there cannot be, so eight comes out
            of row three columns one and two.
        WXYZ-wing on 1, 2, 5 and 8: pivot r3c3, pincers r1c1, r2c2, r3c8 → 8 out of r3c1, r3c2
        """)]
    [InlineData("finned-x-wing", """
        Have a look at row two.
        Look at row 2
        Look out for a finned X-wing.
        Look for a finned X-wing
        In rows two and seven, follow five: it only fits in columns three and eight, but for the fin in row seven column nine.
        Finned X-wing on 5: rows 2 and 7, columns 3 and 8, fin r7c9
        In rows two and seven, five only fits in columns three and eight, but for row seven column nine. Without that fin,
            each row takes it in a column of its own, which uses up both columns; and a fin that is five clears what it sees.
            A cell of the columns that sees the fin goes without either way, so five comes out of column eight rows eight and
            nine.
        Finned X-wing on 5: rows 2 and 7, columns 3 and 8, fin r7c9 → 5 out of r8c8, r9c8
        """)]
    [InlineData("finned-swordfish", """
        Have a look at row one.
        Look at row 1
        Look out for a finned swordfish.
        Look for a finned swordfish
        In rows one, four and nine, follow five: it only fits in columns two, five and seven, but for the fins in row one
            columns four and six.
        Finned swordfish on 5: rows 1, 4 and 9, columns 2, 5 and 7, fins r1c4, r1c6
        In rows one, four and nine, five only fits in columns two, five and seven, but for row one columns four and six.
            Without those fins, each row takes it in a column of its own, which uses up all three columns; and a fin that is
            five clears what it sees. A cell of the columns that sees every fin goes without either way, so five comes out of
            column five rows two and three.
        Finned swordfish on 5: rows 1, 4 and 9, columns 2, 5 and 7, fins r1c4, r1c6 → 5 out of r2c5, r3c5
        """)]
    [InlineData("finned-jellyfish", """
        Have a look at row one.
        Look at row 1
        Look out for a finned jellyfish.
        Look for a finned jellyfish
        In rows one, four, six and nine, follow five: it only fits in columns two, five, seven and nine, but for the fin in
            row nine column three.
        Finned jellyfish on 5: rows 1, 4, 6 and 9, columns 2, 5, 7 and 9, fin r9c3
        In rows one, four, six and nine, five only fits in columns two, five, seven and nine, but for row nine column three.
            Without that fin, each row takes it in a column of its own, which uses up all four columns; and a fin that is five
            clears what it sees. A cell of the columns that sees the fin goes without either way, so five comes out of row
            seven column two.
        Finned jellyfish on 5: rows 1, 4, 6 and 9, columns 2, 5, 7 and 9, fin r9c3 → 5 out of r7c2
        """)]
    public void Each_rule_has_its_words(string rule, string expected)
    {
        var (board, deduction) = OneOfEachRule.On(rule);
        var hints = ShippedPhrases.Wording.HintsFor(board, deduction);

        var said = Enum.GetValues<Grade>().SelectMany(grade => new[] { hints[grade].Words.Spoken, hints[grade].Words.Written });

        Assert.Equal(expected.Replace("\n    ", " ", StringComparison.Ordinal).Split('\n'), said);
    }

    [Theory]
    [InlineData("removes r1c1=1", "One comes out of row one column one.", "1 out of r1c1")]
    [InlineData("removes r1c1=12", "One and two come out of row one column one.", "1 and 2 out of r1c1")]
    [InlineData("removes r1c1=1 r5c5=1", "One comes out of row one column one and row five column five.", "1 out of r1c1, r5c5")]
    [InlineData("removes r1c1=1 r1c5=1", "One comes out of row one columns one and five.", "1 out of r1c1, r1c5")]
    [InlineData("removes r1c1=1 r4c1=1", "One comes out of column one rows one and four.", "1 out of r1c1, r4c1")]
    [InlineData("removes r1c1=12 r4c1=12", "One and two come out of column one rows one and four.", "1 and 2 out of r1c1, r4c1")]
    [InlineData(
        "removes r1c1=12 r4c1=1", "One comes out of column one rows one and four, and two comes out of row one column one.",
        "1 out of r1c1, r4c1; 2 out of r1c1")]
    [InlineData(
        "removes r1c1=1 r1c2=1 r4c4=1 r8c8=1",
        "One comes out of row one columns one and two, row four column four, and row eight column eight.",
        "1 out of r1c1, r1c2, r4c4, r8c8")]
    [InlineData("places r1c1=1", "Row one column one is one.", "r1c1 is 1")]
    [InlineData("places r1c1=1 r2c5=1", "Row one column one and row two column five are one.", "r1c1, r2c5 are 1")]
    [InlineData(
        "places r1c1=1 removes r5c5=2", "Row one column one is one, and two comes out of row five column five.",
        "r1c1 is 1; 2 out of r5c5")]
    public void A_conclusion_is_said_in_as_few_clauses_as_it_needs(string concluded, string spoken, string written)
    {
        var deduction = DrawnDeduction.Read($"own 1 single r9c9 {concluded}");

        Assert.Equal(new Saying(spoken, written), ShippedPhrases.Wording.Conclusion(deduction));
    }

    [Fact]
    public void A_deduction_that_rests_on_unseen_steps_says_so()
    {
        var unseen = CandidateSet.Parse("r1c2=5 r1c3=5");

        var saying = ShippedPhrases.Wording.Unseen(unseen);

        Assert.Equal(
            new Saying(
                "This builds on something the picture does not show yet: five is gone from row one columns two and three.",
                "Not shown yet: 5 gone from r1c2, r1c3"),
            saying);
        Assert.Throws<ArgumentException>(() => ShippedPhrases.Wording.Unseen(CandidateSet.Empty));
    }

    [Fact]
    public void A_rule_without_phrases_is_refused_by_name()
    {
        var refusal = Assert.Throws<ArgumentException>(() => ShippedPhrases.Wording.NameOf(new RuleId("no-such-rule")));

        Assert.Contains("no-such-rule", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_name_and_an_explanation_stand_for_every_rule()
    {
        foreach (var rule in OneOfEachRule.Drawn.Keys.Select(rule => new RuleId(rule)))
        {
            Assert.Matches("^[a-zA-Z -]+$", ShippedPhrases.Wording.NameOf(rule));
            Assert.Matches(@"^[A-Z][^{}]+\.$", ShippedPhrases.Wording.Explain(rule));
        }
    }
}
