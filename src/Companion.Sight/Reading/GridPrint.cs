using System.Numerics;

namespace Companion.Sight.Reading;

/// <summary>
/// The pixels of a grid as they were when its cells were read, to tell which cells look different now. A cell that does not stays as it was
/// read, so that what fades in slowly is seen in the end.
/// </summary>
/// <param name="cells">The cells; the print goes along with what is put there.</param>
/// <param name="size">The size of the frame that was read.</param>
internal sealed class GridPrint(CellSketch[] cells, (int Width, int Height) size)
{
    // Compression makes a pixel flicker by less than this, and what changes on a board changes more pixels than this.
    private const byte Flicker = 24;
    private const int FewPixels = 3;

    /// <summary>Whether a frame has the size of the one that was read.</summary>
    /// <param name="frame">Another frame.</param>
    public bool Fits(Frame frame) => (frame.Width, frame.Height) == size;

    /// <summary>The cells that look different, by their indices; null where the frame has another size.</summary>
    /// <param name="frame">Another frame.</param>
    public List<int>? Changed(Frame frame) =>
        Fits(frame) ? [.. Enumerable.Range(0, cells.Length).Where(index => Differs(frame, cells[index].Ink))] : null;

    private static bool Differs(Frame frame, CellInk ink)
    {
        var different = 0;
        for (var y = 0; y < ink.Box.Height && different <= FewPixels; y++)
        {
            var now = ink.Box.Row(frame, y);
            var then = ink.Cell.Row(y);
            if (!now.SequenceEqual(then))
                different += Count(now, then);
        }

        return different > FewPixels;
    }

    private static int Count(ReadOnlySpan<byte> now, ReadOnlySpan<byte> then)
    {
        var different = 0;
        var at = 0;
        var flicker = new Vector<byte>(Flicker);
        for (; at + Vector<byte>.Count <= now.Length; at += Vector<byte>.Count)
        {
            var (a, b) = (new Vector<byte>(now[at..]), new Vector<byte>(then[at..]));
            if (Vector.GreaterThanAny(Vector.Max(a, b) - Vector.Min(a, b), flicker))
                different += Count(now.Slice(at, Vector<byte>.Count), then.Slice(at, Vector<byte>.Count), 4);
        }

        return different + Count(now[at..], then[at..], 4);
    }

    private static int Count(ReadOnlySpan<byte> now, ReadOnlySpan<byte> then, int step)
    {
        var different = 0;
        for (var at = 0; at + step <= now.Length; at += step)
        {
            var isDifferent = false;
            for (var channel = 0; channel < 3; channel++)
                isDifferent |= Math.Abs(now[at + channel] - then[at + channel]) > Flicker;
            different += isDifferent ? 1 : 0;
        }

        return different;
    }
}
