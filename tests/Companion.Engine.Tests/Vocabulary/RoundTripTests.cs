using Companion.Engine.Proofs;
using CsCheck;

namespace Companion.Engine.Tests.Vocabulary;

/// <summary>Every type of the vocabulary reads what it writes, and nothing else.</summary>
public class RoundTripTests
{
    [Fact]
    public void Every_cell_digit_house_chute_candidate_and_region_reads_its_own_name()
    {
        Assert.All(CellSet.All, cell => Assert.Equal(cell, Cell.Parse(cell.ToString())));
        Assert.All(Digit.All, digit => Assert.Equal(digit, Digit.Parse(digit.ToString())));
        Assert.All(HouseSet.All, house => Assert.Equal(house, House.Parse(house.ToString())));
        Assert.All(Enumerable.Range(0, 6).Select(Chute.At), chute => Assert.Equal(chute, Chute.Parse(chute.ToString())));
        Assert.All(CandidateSet.Of(CellSet.All, DigitSet.All), one => Assert.Equal(one, Candidate.Parse(one.ToString())));
        Assert.All(Regions(), region => Assert.Equal(region, Region.Parse(region.ToString())));
    }

    [Fact]
    public void Every_name_is_a_different_one()
    {
        Assert.Equal(Cell.Count, CellSet.All.Select(cell => cell.ToString()).Distinct().Count());
        Assert.Equal(House.Count, HouseSet.All.Select(house => house.ToString()).Distinct().Count());
        Assert.Equal(Region.Count, Regions().Select(region => region.ToString()).Distinct().Count());
    }

    [Fact]
    public void Every_set_reads_what_it_writes()
    {
        Any.CellSet.Sample(set => CellSet.Parse(set.ToString()) == set);
        Any.DigitSet.Sample(set => DigitSet.Parse(set.ToString()) == set);
        Any.HouseSet.Sample(set => HouseSet.Parse(set.ToString()) == set);
        Any.CandidateSet.Sample(set => CandidateSet.Parse(set.ToString()) == set);
    }

    [Fact]
    public void Empty_and_full_sets_read_what_they_write()
    {
        Assert.Equal(CellSet.Empty, CellSet.Parse(CellSet.Empty.ToString()));
        Assert.Equal(CellSet.All, CellSet.Parse(CellSet.All.ToString()));
        Assert.Equal("", DigitSet.Empty.ToString());
        Assert.Equal(DigitSet.Empty, DigitSet.Parse(""));
        Assert.Equal("123456789", DigitSet.All.ToString());
        Assert.Equal(HouseSet.Empty, HouseSet.Parse(""));
        Assert.Equal(CandidateSet.Empty, CandidateSet.Parse(""));
    }

    [Fact]
    public void A_cell_set_is_written_as_a_grid()
    {
        const string Grid = """
            x........
            .x.......
            .........
            .........
            .........
            .........
            .......x.
            .........
            ........x
            """;

        Assert.Equal(Grid, CellSet.Of(Cell.Of(1, 1), Cell.Of(2, 2), Cell.Of(7, 8), Cell.Of(9, 9)).ToString());
    }

    [Fact]
    public void Sets_of_digits_houses_and_candidates_are_written_in_order()
    {
        Assert.Equal("258", DigitSet.Parse("8252").ToString());
        Assert.Equal("r4 c7 b2", HouseSet.Parse("b2 c7 r4").ToString());
        Assert.Equal("r1c2=3 r4c7=1 r4c7=5", CandidateSet.Parse("r4c7=5,r1c2=3\nr4c7=1").ToString());
    }

    [Fact]
    public void Names_of_cells_and_houses_may_be_in_capitals()
    {
        Assert.Equal(Cell.Of(4, 7), Cell.Parse("R4C7"));
        Assert.Equal(House.Block(2), House.Parse("B2"));
        Assert.Equal(new Candidate(Cell.Of(4, 7), Digit.Of(5)), Candidate.Parse("R4C7=5"));
    }

    [Theory]
    [InlineData("")]
    [InlineData("0")]
    [InlineData("10")]
    [InlineData("five")]
    [InlineData("r0c1")]
    [InlineData("r1c0")]
    [InlineData("c1r1")]
    [InlineData("r1c1 ")]
    [InlineData("r10c1")]
    [InlineData("x1")]
    [InlineData("b0")]
    [InlineData("r1c1=0")]
    [InlineData("r1c1-5")]
    [InlineData("r1c1=55")]
    [InlineData("band0")]
    [InlineData("band4")]
    [InlineData("stack")]
    [InlineData("stack11")]
    [InlineData("x........")]
    public void What_is_no_name_is_refused_by_all(string text)
    {
        Assert.False(Digit.TryParse(text, out var digit));
        Assert.False(Cell.TryParse(text, out var cell));
        Assert.False(House.TryParse(text, out var house));
        Assert.False(Chute.TryParse(text, out var chute));
        Assert.False(Candidate.TryParse(text, out var candidate));
        Assert.False(Region.TryParse(text, out var region));
        Assert.True((digit, cell, house, chute, candidate, region) == default);
        Assert.Throws<FormatException>(() => Digit.Parse(text));
        Assert.Throws<FormatException>(() => Cell.Parse(text));
        Assert.Throws<FormatException>(() => House.Parse(text));
        Assert.Throws<FormatException>(() => Chute.Parse(text));
        Assert.Throws<FormatException>(() => Candidate.Parse(text));
        Assert.Throws<FormatException>(() => Region.Parse(text));
        Assert.Throws<FormatException>(() => CellSet.Parse(text));
    }

    [Fact]
    public void A_set_with_one_bad_member_is_refused()
    {
        Assert.Throws<FormatException>(() => DigitSet.Parse("120"));
        Assert.False(DigitSet.TryParse("12x", out var digits));
        Assert.Equal(DigitSet.Empty, digits);
        Assert.Throws<FormatException>(() => HouseSet.Parse("r1 r10"));
        Assert.Throws<FormatException>(() => CandidateSet.Parse("r1c1=1 r1c1"));
        Assert.Throws<FormatException>(() => CellSet.Parse(new string('.', 82)));
        Assert.Throws<FormatException>(() => CellSet.Parse(new string('.', 80) + "o"));
    }

    [Fact]
    public void The_default_of_every_type_is_a_valid_value()
    {
        Assert.Equal("1", default(Digit).ToString());
        Assert.Equal("r1c1", default(Cell).ToString());
        Assert.Equal("r1", default(House).ToString());
        Assert.Equal("band1", default(Chute).ToString());
        Assert.Equal("r1", default(Region).ToString());
        Assert.Equal("r1c1=1", default(Candidate).ToString());
        Assert.Equal(CellSet.Empty, default);
        Assert.Equal(DigitSet.Empty, default);
        Assert.Equal(HouseSet.Empty, default);
        Assert.Equal(CandidateSet.Empty, default);
        Assert.Equal("", default(RuleId).ToString());
    }

    private static IEnumerable<Region> Regions() =>
        HouseSet.All.Select(Region.Of).Concat(Enumerable.Range(0, Chute.Count).Select(index => Region.Of(Chute.At(index))));
}
