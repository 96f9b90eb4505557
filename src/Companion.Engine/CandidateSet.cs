using System.Collections;
using System.Runtime.CompilerServices;

namespace Companion.Engine;

/// <summary>
/// A set of candidates. The default value is the empty set. Written in reading order, such as <c>r1c2=3 r4c7=5</c>.
/// </summary>
public readonly struct CandidateSet : IReadOnlyCollection<Candidate>, IEquatable<CandidateSet>
{
    // One plane of 81 cells for each digit: 9 x 16 bytes, so that whole digits are combined by a few word operations.
    [InlineArray(Digit.Count)]
    private struct Planes
    {
        private CellSet _first;
    }

    private readonly Planes _planes;

    private CandidateSet(in Planes planes) => _planes = planes;

    /// <summary>No candidate.</summary>
    public static CandidateSet Empty => default;

    /// <summary>How many candidates it holds, 0 to 729.</summary>
    public int Count
    {
        get
        {
            var count = 0;
            for (var digit = 0; digit < Digit.Count; digit++)
                count += _planes[digit].Count;
            return count;
        }
    }

    /// <summary>Whether it holds no candidate.</summary>
    public bool IsEmpty
    {
        get
        {
            for (var digit = 0; digit < Digit.Count; digit++)
            {
                if (!_planes[digit].IsEmpty)
                    return false;
            }

            return true;
        }
    }

    /// <summary>The cells in which the digit is in the set.</summary>
    public CellSet this[Digit digit] => _planes[digit.Index];

    /// <summary>The digits that are in the set in this cell.</summary>
    public DigitSet this[Cell cell]
    {
        get
        {
            var digits = DigitSet.Empty;
            for (var digit = 0; digit < Digit.Count; digit++)
            {
                if (_planes[digit].Contains(cell))
                    digits = digits.With(Digit.At(digit));
            }

            return digits;
        }
    }

    /// <summary>The cells with at least one candidate in the set.</summary>
    public CellSet Cells
    {
        get
        {
            var cells = CellSet.Empty;
            for (var digit = 0; digit < Digit.Count; digit++)
                cells |= _planes[digit];
            return cells;
        }
    }

    /// <summary>The digits with at least one candidate in the set.</summary>
    public DigitSet Digits
    {
        get
        {
            var digits = DigitSet.Empty;
            for (var digit = 0; digit < Digit.Count; digit++)
            {
                if (!_planes[digit].IsEmpty)
                    digits = digits.With(Digit.At(digit));
            }

            return digits;
        }
    }

    /// <summary>The cells with exactly this many candidates in the set, 0 to 9.</summary>
    internal CellSet CellsWith(int count)
    {
        // atLeast[n]: the cells with n or more of the digits gone through so far. All 81 cells are counted at once.
        Span<CellSet> atLeast = stackalloc CellSet[count + 2];
        atLeast[0] = CellSet.All;
        for (var digit = 0; digit < Digit.Count; digit++)
        {
            for (var n = count + 1; n > 0; n--)
                atLeast[n] |= atLeast[n - 1] & _planes[digit];
        }

        return atLeast[count] - atLeast[count + 1];
    }

    /// <summary>The set of these candidates.</summary>
    public static CandidateSet Of(params ReadOnlySpan<Candidate> candidates)
    {
        var planes = default(Planes);
        foreach (var (cell, digit) in candidates)
            planes[digit.Index] = planes[digit.Index].With(cell);
        return new(planes);
    }

    /// <summary>One digit in these cells.</summary>
    public static CandidateSet Of(CellSet cells, Digit digit)
    {
        var planes = default(Planes);
        planes[digit.Index] = cells;
        return new(planes);
    }

    /// <summary>Each of these digits in each of these cells.</summary>
    public static CandidateSet Of(CellSet cells, DigitSet digits)
    {
        var planes = default(Planes);
        foreach (var digit in digits)
            planes[digit.Index] = cells;
        return new(planes);
    }

    /// <summary>Whether the candidate is in the set.</summary>
    public bool Contains(Candidate candidate) => _planes[candidate.Digit.Index].Contains(candidate.Cell);

    /// <summary>Whether all of the other set's candidates are in this one.</summary>
    public bool ContainsAll(in CandidateSet other) => (other - this).IsEmpty;

    /// <summary>The set with the candidate added.</summary>
    public CandidateSet With(Candidate candidate) => WithPlane(candidate.Digit, this[candidate.Digit].With(candidate.Cell));

    /// <summary>The set with the candidate taken out.</summary>
    public CandidateSet Without(Candidate candidate) => WithPlane(candidate.Digit, this[candidate.Digit].Without(candidate.Cell));

    /// <summary>The set with one digit's cells replaced.</summary>
    public CandidateSet WithPlane(Digit digit, CellSet cells)
    {
        var planes = _planes;
        planes[digit.Index] = cells;
        return new(planes);
    }

    /// <summary>The candidates of the set that lie in these cells.</summary>
    public CandidateSet In(CellSet cells)
    {
        var planes = default(Planes);
        for (var digit = 0; digit < Digit.Count; digit++)
            planes[digit] = _planes[digit] & cells;
        return new(planes);
    }

    /// <summary>The candidates in either set.</summary>
    public static CandidateSet operator |(in CandidateSet left, in CandidateSet right)
    {
        var planes = default(Planes);
        for (var digit = 0; digit < Digit.Count; digit++)
            planes[digit] = left._planes[digit] | right._planes[digit];
        return new(planes);
    }

    /// <summary>The candidates in both sets.</summary>
    public static CandidateSet operator &(in CandidateSet left, in CandidateSet right)
    {
        var planes = default(Planes);
        for (var digit = 0; digit < Digit.Count; digit++)
            planes[digit] = left._planes[digit] & right._planes[digit];
        return new(planes);
    }

    /// <summary>The candidates of the first set that are not in the second.</summary>
    public static CandidateSet operator -(in CandidateSet left, in CandidateSet right)
    {
        var planes = default(Planes);
        for (var digit = 0; digit < Digit.Count; digit++)
            planes[digit] = left._planes[digit] - right._planes[digit];
        return new(planes);
    }

    /// <summary>Whether the two sets hold the same candidates.</summary>
    public static bool operator ==(in CandidateSet left, in CandidateSet right) => left.Equals(right);

    /// <summary>Whether the two sets differ.</summary>
    public static bool operator !=(in CandidateSet left, in CandidateSet right) => !left.Equals(right);

    /// <summary>
    /// Reads names with white space or commas between, such as <c>r1c2=3,r4c7=5</c>; the empty text is the empty set.
    /// </summary>
    /// <param name="text">What to read.</param>
    /// <exception cref="FormatException">A word names no candidate.</exception>
    public static CandidateSet Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        char[] separators = [' ', ',', '\n', '\r', '\t'];
        return Of([.. text.Split(separators, StringSplitOptions.RemoveEmptyEntries).Select(Candidate.Parse)]);
    }

    /// <inheritdoc/>
    public bool Equals(CandidateSet other)
    {
        for (var digit = 0; digit < Digit.Count; digit++)
        {
            if (_planes[digit] != other._planes[digit])
                return false;
        }

        return true;
    }

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is CandidateSet other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = default(HashCode);
        for (var digit = 0; digit < Digit.Count; digit++)
            hash.Add(_planes[digit]);
        return hash.ToHashCode();
    }

    /// <summary>The names in reading order with one space between.</summary>
    public override string ToString() => string.Join(' ', this);

    /// <summary>By cell in reading order, then by digit.</summary>
    public Enumerator GetEnumerator() => new(this);

    IEnumerator<Candidate> IEnumerable<Candidate>.GetEnumerator() => GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>Walks a set in order without allocating.</summary>
    public struct Enumerator : IEnumerator<Candidate>
    {
        private readonly CandidateSet _set;
        private CellSet.Enumerator _cells;
        private DigitSet.Enumerator _digits;

        internal Enumerator(in CandidateSet set) => (_set, _cells) = (set, set.Cells.GetEnumerator());

        /// <summary>The candidate the walk is at.</summary>
        public readonly Candidate Current => new(_cells.Current, _digits.Current);

        readonly object IEnumerator.Current => Current;

        /// <summary>Goes to the next candidate.</summary>
        /// <returns>Whether there is one.</returns>
        public bool MoveNext()
        {
            while (!_digits.MoveNext())
            {
                if (!_cells.MoveNext())
                    return false;
                _digits = _set[_cells.Current].GetEnumerator();
            }

            return true;
        }

        /// <summary>Not supported.</summary>
        /// <exception cref="NotSupportedException">Always.</exception>
        public readonly void Reset() => throw new NotSupportedException();

        /// <summary>Nothing to release.</summary>
        public readonly void Dispose()
        {
        }
    }
}
