using Companion.Engine;

namespace Companion.Sight.Reading;

/// <summary>Finds the digits that the marks of a cell are likeliest together, however likely each of them is alone.</summary>
internal sealed class MarkDecoding
{
    // A digit stands in a cell once.
    private const float Again = 0.001f;

    private readonly IReadOnlyList<float[]> _beliefs;
    private readonly bool _isAscending;
    private readonly int[] _digits;
    private int[] _best = [];
    private float _most;

    private MarkDecoding(IReadOnlyList<float[]> beliefs, bool isAscending) =>
        (_beliefs, _isAscending, _digits) = (beliefs, isAscending, new int[beliefs.Count]);

    /// <summary>How likely a mark that does not keep to what the others of its board keep to is, beside one that does.</summary>
    public const float Unusual = 0.02f;

    /// <summary>The likeliest digits.</summary>
    /// <param name="beliefs">For each mark, in <see cref="ReadingOrder"/>, how likely it is each digit: from 0 to 1, 1 for one digit at least.</param>
    /// <param name="isAscending">Whether the marks of the board ascend.</param>
    /// <returns>The index of a digit for each mark.</returns>
    public static int[] Likeliest(IReadOnlyList<float[]> beliefs, bool isAscending)
    {
        var decoding = new MarkDecoding(beliefs, isAscending);
        decoding.Try(0, 1, 0);
        return decoding._best;
    }

    // No mark makes the whole likelier: what is less likely than the best already needs no end.
    private void Try(int mark, float likely, int taken)
    {
        if (likely <= _most)
            return;
        if (mark == _digits.Length)
        {
            (_most, _best) = (likely, [.. _digits]);
            return;
        }

        foreach (var digit in Enumerable.Range(0, Digit.Count).Where(digit => _beliefs[mark][digit] > 0).OrderByDescending(digit => _beliefs[mark][digit]))
        {
            _digits[mark] = digit;
            var isAgain = (taken >> digit & 1) != 0;
            var isUnusual = _isAscending && mark > 0 && digit < _digits[mark - 1];
            Try(mark + 1, likely * _beliefs[mark][digit] * (isAgain ? Again : 1) * (isUnusual ? Unusual : 1), taken | 1 << digit);
        }
    }
}
