using System.Collections;
using System.Numerics;

namespace Companion.Engine;

/// <summary>A set of digits. The default value is the empty set. Written in ascending order, such as <c>258</c>.</summary>
public readonly record struct DigitSet : IReadOnlyCollection<Digit>
{
    // Bit i stands for the digit i + 1; nine bits are used of the sixteen.
    private readonly ushort _bits;

    internal DigitSet(int bits) => _bits = (ushort)bits;

    /// <summary>No digit.</summary>
    public static DigitSet Empty => default;

    /// <summary>The digits 1 to 9.</summary>
    public static DigitSet All => new(0x1FF);

    internal int Bits => _bits;

    /// <summary>How many digits it holds, 0 to 9.</summary>
    public int Count => BitOperations.PopCount(_bits);

    /// <summary>Whether it holds no digit.</summary>
    public bool IsEmpty => _bits == 0;

    /// <summary>The smallest digit of the set.</summary>
    /// <exception cref="InvalidOperationException">The set is empty.</exception>
    public Digit First => _bits != 0
        ? Digit.At(BitOperations.TrailingZeroCount(_bits))
        : throw new InvalidOperationException("An empty digit set has no first digit.");

    /// <summary>The set of these digits.</summary>
    public static DigitSet Of(params ReadOnlySpan<Digit> digits)
    {
        var bits = 0;
        foreach (var digit in digits)
            bits |= 1 << digit.Index;
        return new(bits);
    }

    /// <summary>Whether the digit is in the set.</summary>
    public bool Contains(Digit digit) => (_bits >> digit.Index & 1) != 0;

    /// <summary>Whether all of the other set's digits are in this one.</summary>
    public bool ContainsAll(DigitSet other) => (other._bits & ~_bits) == 0;

    /// <summary>The set with the digit added.</summary>
    public DigitSet With(Digit digit) => new(_bits | 1 << digit.Index);

    /// <summary>The set with the digit taken out.</summary>
    public DigitSet Without(Digit digit) => new(_bits & ~(1 << digit.Index));

    /// <summary>The digits in either set.</summary>
    public static DigitSet operator |(DigitSet left, DigitSet right) => new(left._bits | right._bits);

    /// <summary>The digits in both sets.</summary>
    public static DigitSet operator &(DigitSet left, DigitSet right) => new(left._bits & right._bits);

    /// <summary>The digits of the first set that are not in the second.</summary>
    public static DigitSet operator -(DigitSet left, DigitSet right) => new(left._bits & ~right._bits);

    /// <summary>The digits not in the set.</summary>
    public static DigitSet operator ~(DigitSet set) => new(~set._bits & 0x1FF);

    /// <summary>Reads digits in any order, such as <c>258</c>; the empty text is the empty set.</summary>
    /// <param name="text">What to read.</param>
    /// <exception cref="FormatException">A character is not a digit from 1 to 9.</exception>
    public static DigitSet Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return TryParse(text, out var digits)
            ? digits
            : throw new FormatException($"'{text}' is not a list of digits such as 258.");
    }

    /// <summary>Reads digits in any order, such as <c>258</c>; the empty text is the empty set.</summary>
    /// <param name="text">What to read.</param>
    /// <param name="digits">The digits, or the empty set where the text holds anything else.</param>
    /// <returns>Whether every character is a digit from 1 to 9.</returns>
    public static bool TryParse(ReadOnlySpan<char> text, out DigitSet digits)
    {
        digits = default;
        var read = Empty;
        foreach (var character in text)
        {
            if (!Digit.TryParse([character], out var digit))
                return false;
            read = read.With(digit);
        }

        digits = read;
        return true;
    }

    /// <summary>The digits in ascending order, such as <c>258</c>; empty for the empty set.</summary>
    public override string ToString() => string.Concat(this);

    /// <summary>The digits in ascending order.</summary>
    public Enumerator GetEnumerator() => new(_bits);

    IEnumerator<Digit> IEnumerable<Digit>.GetEnumerator() => GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>Walks a set in ascending order without allocating.</summary>
    public struct Enumerator : IEnumerator<Digit>
    {
        private int _rest;

        internal Enumerator(int bits) => _rest = bits;

        /// <summary>The digit the walk is at.</summary>
        public Digit Current { get; private set; }

        readonly object IEnumerator.Current => Current;

        /// <summary>Goes to the next digit.</summary>
        /// <returns>Whether there is one.</returns>
        public bool MoveNext()
        {
            if (_rest == 0)
                return false;
            Current = Digit.At(BitOperations.TrailingZeroCount(_rest));
            _rest &= _rest - 1;
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
