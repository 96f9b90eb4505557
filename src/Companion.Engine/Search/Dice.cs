namespace Companion.Engine.Search;

/// <summary>
/// Numbers that look random and follow from a seed alone, the same on every machine and in every version: SplitMix64 (Steele,
/// Lea, Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014; the constants are from memory and pinned by a test).
/// </summary>
/// <param name="seed">Any number; equal seeds throw equal numbers.</param>
internal sealed class Dice(ulong seed)
{
    private ulong _state = seed;

    /// <summary>The next 64 bits.</summary>
    internal ulong Next()
    {
        _state += 0x9E37_79B9_7F4A_7C15;
        var bits = _state;
        bits = (bits ^ bits >> 30) * 0xBF58_476D_1CE4_E5B9;
        bits = (bits ^ bits >> 27) * 0x94D0_49BB_1331_11EB;
        return bits ^ bits >> 31;
    }

    /// <summary>A number from 0 up to, not including, the bound. Its bias, bound / 2^64, is too small to matter here.</summary>
    internal int Below(int bound) => (int)Math.BigMul(Next(), (ulong)bound, out _);

    /// <summary>Puts the items in a random order.</summary>
    internal void Shuffle<T>(Span<T> items)
    {
        for (var last = items.Length - 1; last > 0; last--)
        {
            var other = Below(last + 1);
            (items[last], items[other]) = (items[other], items[last]);
        }
    }
}
