using System.Buffers;

namespace Companion.Sight.Reading;

/// <summary>Values for a moment, all 0 at first. Comparing the marks of a board would else take a hundred megabytes anew.</summary>
/// <param name="length">How many.</param>
internal readonly ref struct Scratch(int length)
{
    private readonly float[] _rented = Cleared(length);

    /// <summary>The values; they are others' once this is disposed of.</summary>
    public Span<float> Values => _rented.AsSpan(0, length);

    /// <summary>Gives them back.</summary>
    public void Dispose() => ArrayPool<float>.Shared.Return(_rented);

    private static float[] Cleared(int length)
    {
        var rented = ArrayPool<float>.Shared.Rent(length);
        rented.AsSpan(0, length).Clear();
        return rented;
    }
}
