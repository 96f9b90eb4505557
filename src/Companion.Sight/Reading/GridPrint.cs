using System.Numerics;

namespace Companion.Sight.Reading;

/// <summary>The pixels of a grid as they were when it was read, to tell which cells look different now.</summary>
internal sealed class GridPrint
{
    // Compression makes a pixel flicker by less than this, and what changes on a board changes more pixels than this.
    private const byte Flicker = 24;
    private const int FewPixels = 3;

    private readonly byte[] _pixels;
    private readonly CellBox[] _boxes;
    private readonly (int Width, int Height) _size;

    private GridPrint(byte[] pixels, CellBox[] boxes, (int Width, int Height) size) => (_pixels, _boxes, _size) = (pixels, boxes, size);

    /// <summary>Keeps the pixels of a grid.</summary>
    /// <param name="frame">The frame that was read.</param>
    /// <param name="board">Where its cells are.</param>
    public static GridPrint Of(Frame frame, StraightBoard board)
    {
        var first = 4 * frame.Width * board.Boxes[0].Top;
        var last = 4 * frame.Width * board.Boxes[^1].Bottom;
        return new(frame.Pixels[first..last].ToArray(), board.Boxes, (frame.Width, frame.Height));
    }

    /// <summary>Whether a frame has the size of the one that was read.</summary>
    /// <param name="frame">Another frame.</param>
    public bool Fits(Frame frame) => (frame.Width, frame.Height) == _size;

    /// <summary>The cells that look different, by their indices; null where the frame has another size.</summary>
    /// <param name="frame">Another frame.</param>
    public List<int>? Changed(Frame frame)
    {
        if (!Fits(frame))
            return null;
        var changed = new List<int>();
        for (var index = 0; index < _boxes.Length; index++)
        {
            if (Differs(frame, _boxes[index]))
                changed.Add(index);
        }

        return changed;
    }

    /// <summary>Keeps cells as they look now. The others stay as they were read, so that what fades in slowly is seen in the end.</summary>
    /// <param name="frame">A frame of the same size.</param>
    /// <param name="cells">Which were read anew, by their indices.</param>
    public void Renew(Frame frame, IEnumerable<int> cells)
    {
        var stride = 4 * frame.Width;
        foreach (var box in cells.Select(index => _boxes[index]))
        {
            for (var y = box.Top; y < box.Bottom; y++)
                frame.Pixels.Slice(y * stride + 4 * box.Left, 4 * box.Width).CopyTo(_pixels.AsSpan((y - _boxes[0].Top) * stride + 4 * box.Left));
        }
    }

    private bool Differs(Frame frame, CellBox box)
    {
        var stride = 4 * frame.Width;
        var top = _boxes[0].Top;
        var different = 0;
        for (var y = box.Top; y < box.Bottom && different <= FewPixels; y++)
        {
            var now = frame.Pixels.Slice(y * stride + 4 * box.Left, 4 * box.Width);
            var then = _pixels.AsSpan((y - top) * stride + 4 * box.Left, 4 * box.Width);
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
