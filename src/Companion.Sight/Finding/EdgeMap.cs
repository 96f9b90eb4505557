using System.Runtime.Intrinsics;

namespace Companion.Sight.Finding;

/// <summary>Where neighbouring pixels differ, a bit for each pair: the only thing that all lines of all styles have in common.</summary>
internal sealed class EdgeMap
{
    private readonly ulong[] _down;
    private readonly ulong[] _across;

    private EdgeMap(int width, int height)
    {
        (Width, Height, Words) = (width, height, (width + 63) / 64);
        _down = new ulong[Words * height];
        _across = new ulong[Words * height];
    }

    /// <summary>Columns.</summary>
    public int Width { get; }

    /// <summary>Rows.</summary>
    public int Height { get; }

    /// <summary>Words of 64 pixels in a row; the bits past the last column are clear.</summary>
    public int Words { get; }

    /// <summary>For each pixel of a row whether it differs from the one below it; clear in the last row.</summary>
    /// <param name="y">The row.</param>
    public ReadOnlySpan<ulong> Down(int y) => _down.AsSpan(y * Words, Words);

    /// <summary>For each pixel of a row whether it differs from the one to the right of it; clear in the last column.</summary>
    /// <param name="y">The row.</param>
    public ReadOnlySpan<ulong> Across(int y) => _across.AsSpan(y * Words, Words);

    /// <summary>Compares all neighbours.</summary>
    /// <param name="frame">The picture.</param>
    /// <param name="least">How much one of the three colours must differ at least, 1 to 255.</param>
    public static EdgeMap Of(Frame frame, byte least)
    {
        var map = new EdgeMap(frame.Width, frame.Height);
        var stride = 4 * frame.Width;
        for (var y = 0; y < frame.Height; y++)
        {
            var row = frame.Pixels.Slice(y * stride, stride);
            Compare(row[..^4], row[4..], map._across.AsSpan(y * map.Words, map.Words), least);
            if (y + 1 < frame.Height)
                Compare(row, frame.Pixels.Slice((y + 1) * stride, stride), map._down.AsSpan(y * map.Words, map.Words), least);
        }

        return map;
    }

    private static void Compare(ReadOnlySpan<byte> first, ReadOnlySpan<byte> second, Span<ulong> bits, byte least)
    {
        const int PixelsAtOnce = 8;
        var threshold = Vector256.Create(least);
        var pixels = first.Length / 4;
        var x = 0;
        for (; x + PixelsAtOnce <= pixels; x += PixelsAtOnce)
        {
            var a = Vector256.Create(first.Slice(4 * x, 32));
            var b = Vector256.Create(second.Slice(4 * x, 32));
            var difference = Vector256.Max(a, b) - Vector256.Min(a, b);
            var reached = Vector256.Equals(Vector256.Max(difference, threshold), difference);
            var none = Vector256.Equals(reached.AsUInt32(), Vector256<uint>.Zero);
            bits[x >> 6] |= (ulong)(~none.ExtractMostSignificantBits() & 0xFF) << (x & 63);
        }

        for (; x < pixels; x++)
        {
            var differs = false;
            for (var channel = 4 * x; channel < 4 * x + 3; channel++)
                differs |= Math.Abs(first[channel] - second[channel]) >= least;
            if (differs)
                bits[x >> 6] |= 1UL << (x & 63);
        }
    }
}
