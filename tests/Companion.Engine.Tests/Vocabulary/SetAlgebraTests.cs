using CsCheck;

namespace Companion.Engine.Tests.Vocabulary;

/// <summary>The sets over bits do what plain hash sets do.</summary>
public class SetAlgebraTests
{
    [Fact]
    public void Cell_sets_agree_with_plain_sets() => Gen.Select(Any.CellSet, Any.CellSet, Any.Cell).Sample((left, right, cell) =>
    {
        var (one, other) = (left.ToHashSet(), right.ToHashSet());
        AssertSame(one.Union(other), left | right);
        AssertSame(one.Intersect(other), left & right);
        AssertSame(one.Except(other), left - right);
        AssertSame(CellSet.All.Except(one), ~left);
        AssertSame(one.Append(cell).Distinct(), left.With(cell));
        AssertSame(one.Where(member => member != cell), left.Without(cell));
        Assert.Equal(one.Contains(cell), left.Contains(cell));
        Assert.Equal(one.IsSupersetOf(other), left.ContainsAll(right));
        Assert.True((left | right).ContainsAll(right));
        Assert.Equal(one.Overlaps(other), left.Overlaps(right));
        Assert.Equal(one.Count == 0, left.IsEmpty);
        Assert.Equal(one.SetEquals(other), left == right);
    });

    [Fact]
    public void Digit_sets_agree_with_plain_sets() =>
        Gen.Select(Any.DigitSet, Any.DigitSet, Any.Digit).Sample((left, right, digit) =>
        {
            var (one, other) = (left.ToHashSet(), right.ToHashSet());
            AssertSame(one.Union(other), left | right);
            AssertSame(one.Intersect(other), left & right);
            AssertSame(one.Except(other), left - right);
            AssertSame(DigitSet.All.Except(one), ~left);
            AssertSame(one.Append(digit).Distinct(), left.With(digit));
            AssertSame(one.Where(member => member != digit), left.Without(digit));
            Assert.Equal(one.Contains(digit), left.Contains(digit));
            Assert.Equal(one.IsSupersetOf(other), left.ContainsAll(right));
            Assert.True((left | right).ContainsAll(right));
            Assert.Equal(one.Count == 0, left.IsEmpty);
            Assert.Equal(one.SetEquals(other), left == right);
        });

    [Fact]
    public void House_sets_agree_with_plain_sets() => Gen.Select(Any.HouseSet, Any.HouseSet).Sample((left, right) =>
    {
        var (one, other) = (left.ToHashSet(), right.ToHashSet());
        AssertSame(one.Union(other), left | right);
        AssertSame(one.Intersect(other), left & right);
        AssertSame(one.Except(other), left - right);
        Assert.All(HouseSet.All, house => Assert.Equal(one.Contains(house), left.Contains(house)));
        AssertSame(one.Append(House.Column(5)).Distinct(), left.With(House.Column(5)));
        Assert.Equal(one.Count == 0, left.IsEmpty);
        Assert.Equal(one.SetEquals(other), left == right);
    });

    [Fact]
    public void Candidate_sets_agree_with_plain_sets() =>
        Gen.Select(Any.CandidateSet, Any.CandidateSet, Any.Candidate).Sample((left, right, candidate) =>
        {
            var (one, other) = (left.ToHashSet(), right.ToHashSet());
            AssertSame(one.Union(other), left | right);
            AssertSame(one.Intersect(other), left & right);
            AssertSame(one.Except(other), left - right);
            AssertSame(one.Append(candidate).Distinct(), left.With(candidate));
            AssertSame(one.Where(member => member != candidate), left.Without(candidate));
            Assert.Equal(one.Contains(candidate), left.Contains(candidate));
            Assert.Equal(one.IsSupersetOf(other), left.ContainsAll(right));
            Assert.Equal(one.Count == 0, left.IsEmpty);
            Assert.Equal(one.SetEquals(other), left == right);
            Assert.Equal(!one.SetEquals(other), left != right);
        });

    [Fact]
    public void A_candidate_set_can_be_asked_by_cell_and_by_digit() =>
        Gen.Select(Any.CandidateSet, Any.CellSet, Any.Digit).Sample((set, cells, digit) =>
        {
            var plain = set.ToHashSet();
            var (byCell, byDigit) = (plain.ToLookup(one => one.Cell), plain.ToLookup(one => one.Digit));
            Assert.All(CellSet.All, cell => Assert.Equal(byCell[cell].Select(one => one.Digit).Order(), set[cell]));
            Assert.All(Digit.All, each => Assert.Equal(byDigit[each].Select(one => one.Cell).Order(), set[each]));
            Assert.Equal(plain.Select(one => one.Cell).Distinct().Order(), set.Cells);
            Assert.Equal(plain.Select(one => one.Digit).Distinct().Order(), set.Digits);
            AssertSame(plain.Where(one => cells.Contains(one.Cell)), set.In(cells));
            Assert.Equal(cells, set.WithPlane(digit, cells)[digit]);
            for (var count = 0; count <= 9; count++)
                Assert.Equal(CellSet.All.Where(cell => set[cell].Count == count), set.CellsWith(count));
        });

    [Fact]
    public void Cells_and_digits_multiply_to_candidates() => Gen.Select(Any.CellSet, Any.DigitSet).Sample((cells, digits) =>
        AssertSame(cells.SelectMany(cell => digits.Select(digit => new Candidate(cell, digit))), CandidateSet.Of(cells, digits)));

    [Fact]
    public void Equal_sets_have_equal_hashes() => Any.CandidateSet.Sample(set =>
    {
        var same = CandidateSet.Parse(set.ToString());
        Assert.Equal(set.GetHashCode(), same.GetHashCode());
        Assert.True(set.Equals((object)same));
        Assert.False(set.Equals("not a set"));
    });

    [Fact]
    public void The_first_member_is_the_smallest_and_an_empty_set_has_none()
    {
        Any.CellSet.Where(set => !set.IsEmpty).Sample(set => set.First == set.Min());
        Any.DigitSet.Where(set => !set.IsEmpty).Sample(set => set.First == set.Min());
        Any.HouseSet.Where(set => !set.IsEmpty).Sample(set => set.First == set.Min());
        Assert.Throws<InvalidOperationException>(() => CellSet.Empty.First);
        Assert.Throws<InvalidOperationException>(() => DigitSet.Empty.First);
        Assert.Throws<InvalidOperationException>(() => HouseSet.Empty.First);
    }

    // Same members, in order and counted.
    private static void AssertSame<TMember>(IEnumerable<TMember> expected, IReadOnlyCollection<TMember> actual)
    {
        var members = expected.Order().ToList();
        Assert.Equal(members, actual);
        Assert.Equal(members.Count, actual.Count);
    }
}
