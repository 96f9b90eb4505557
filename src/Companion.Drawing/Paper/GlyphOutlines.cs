using System.Buffers.Binary;

namespace Companion.Drawing.Paper;

/// <summary>The outlines of a TrueType font. Source: OpenType specification 1.9.1, glyf and loca.</summary>
/// <param name="glyphs">The table of the outlines.</param>
/// <param name="places">The table of where each begins, in the long format; the next one's beginning is its end.</param>
internal sealed class GlyphOutlines(byte[] glyphs, byte[] places)
{
    private const int PartsPlace = 10;

    // Flags of a part of a composite glyph.
    private const ushort HasWords = 0x0001;
    private const ushort HasScale = 0x0008;
    private const ushort HasMore = 0x0020;
    private const ushort HasTwoScales = 0x0040;
    private const ushort HasMatrix = 0x0080;

    /// <summary>The tables with some glyphs alone, those among them that others are composed of included.</summary>
    public (byte[] Glyphs, byte[] Places, IReadOnlySet<int> Kept) Keep(IEnumerable<int> wanted)
    {
        var kept = new SortedSet<int>();
        var waiting = new Queue<int>(wanted);
        while (waiting.TryDequeue(out var glyph))
        {
            if (!kept.Add(glyph))
                continue;
            foreach (var part in PartsOf(Outline(glyph)))
                waiting.Enqueue(part);
        }

        var (outlines, begins) = (new MemoryStream(), new byte[places.Length]);
        for (var place = 0; place < places.Length / 4; place++)
        {
            BinaryPrimitives.WriteUInt32BigEndian(begins.AsSpan(4 * place), (uint)outlines.Length);
            if (!kept.Contains(place))
                continue;
            outlines.Write(Outline(place));
            outlines.SetLength((outlines.Length + 3) / 4 * 4);
            outlines.Position = outlines.Length;
        }

        return (outlines.ToArray(), begins, kept);
    }

    private ReadOnlySpan<byte> Outline(int glyph) => glyphs.AsSpan(Begin(glyph)..Begin(glyph + 1));

    private int Begin(int glyph) => (int)BinaryPrimitives.ReadUInt32BigEndian(places.AsSpan(4 * glyph));

    // A negative number of contours says that the glyph is composed.
    private static List<int> PartsOf(ReadOnlySpan<byte> outline)
    {
        var parts = new List<int>();
        if (outline.IsEmpty || BinaryPrimitives.ReadInt16BigEndian(outline) >= 0)
            return parts;
        for (var at = PartsPlace; ;)
        {
            var flags = BinaryPrimitives.ReadUInt16BigEndian(outline[at..]);
            parts.Add(BinaryPrimitives.ReadUInt16BigEndian(outline[(at + 2)..]));
            if ((flags & HasMore) == 0)
                return parts;
            at += 4 + ((flags & HasWords) != 0 ? 4 : 2);
            at += (flags & HasScale) != 0 ? 2 : (flags & HasTwoScales) != 0 ? 4 : (flags & HasMatrix) != 0 ? 8 : 0;
        }
    }
}
