using Companion.Engine;

namespace Companion.Sight.Reading;

/// <summary>
/// Finds the digits that the marks of a cell are likeliest together, however likely each of them is alone: mark by mark the likeliest way
/// to each set of digits that are taken and each last one (Viterbi, 1967), so that it ends soon however little is sure.
/// </summary>
internal static class MarkDecoding
{
    /// <summary>How likely a mark that does not keep to what the others of its board keep to is, beside one that does.</summary>
    public const float Unusual = 0.02f;

    // A digit stands in a cell once.
    private const float Again = 0.001f;

    /// <summary>The likeliest digits.</summary>
    /// <param name="beliefs">For each mark, in <see cref="ReadingOrder"/>, how likely it is each digit: from 0 to 1, 1 for one digit at least.</param>
    /// <param name="isAscending">Whether the marks of the board ascend.</param>
    /// <returns>The index of a digit for each mark.</returns>
    public static int[] Likeliest(IReadOnlyList<float[]> beliefs, bool isAscending)
    {
        var ways = new List<Dictionary<Way, (double Likely, Way Before)>> { new() { [new(0, -1)] = (1, default) } };
        foreach (var belief in beliefs)
        {
            var next = new Dictionary<Way, (double Likely, Way Before)>();
            foreach (var (before, (likely, _)) in ways[^1])
            {
                for (var digit = 0; digit < Digit.Count; digit++)
                {
                    var isAgain = (before.Taken >> digit & 1) != 0;
                    var isUnusual = isAscending && digit < before.Last;
                    var together = likely * belief[digit] * (isAgain ? Again : 1) * (isUnusual ? Unusual : 1);
                    var way = new Way(before.Taken | 1 << digit, digit);
                    if (belief[digit] > 0 && (!next.TryGetValue(way, out var known) || known.Likely < together))
                        next[way] = (together, before);
                }
            }

            ways.Add(next);
        }

        var digits = new int[beliefs.Count];
        var last = ways[^1].MaxBy(way => way.Value.Likely).Key;
        for (var mark = digits.Length - 1; mark >= 0; mark--)
            (digits[mark], last) = (last.Last, ways[mark + 1][last].Before);
        return digits;
    }

    /// <summary>Where a way through the marks has come to.</summary>
    /// <param name="Taken">The digits taken, as bits.</param>
    /// <param name="Last">The index of the last one; -1 before the first mark.</param>
    private readonly record struct Way(int Taken, int Last);
}
