using System.Buffers.Binary;
using SkiaSharp;

namespace Companion.Drawing.Paper;

/// <summary>
/// Leaves in a TrueType font what some letters need: their outlines, and where they are found. Glyphs keep their numbers, so that
/// lines come out as with the whole font. The natives of SkiaSharp embed a font as it is; the whole of ours is 750 kB.
/// Source: OpenType specification 1.9.1, chapters "The OpenType Font File", glyf, loca, hmtx and cmap.
/// </summary>
internal static class FontSubset
{
    private const string GlyphTable = "glyf";
    private const string PlaceTable = "loca";
    private const string WidthTable = "hmtx";
    private const string CharacterTable = "cmap";

    // By these a font is measured that does not say how high its letters are.
    private const string Measured = "Hx";

    // What a rasterizer needs; not what shaping, kerning and naming of glyphs need.
    private static readonly string[] Kept =
        ["OS/2", CharacterTable, "cvt ", "fpgm", GlyphTable, "head", "hhea", WidthTable, PlaceTable, "maxp", "name", "post", "prep"];

    /// <summary>Cuts a font down.</summary>
    /// <param name="font">The file: TrueType outlines with long offsets, as all fonts of more than 128 kB have.</param>
    /// <param name="face">The same font, loaded.</param>
    /// <param name="letters">The letters to keep; those that the font does not have are left out.</param>
    public static byte[] Of(byte[] font, SKTypeface face, IEnumerable<char> letters)
    {
        var tables = FontTables.Read(font);
        using var numbers = new SKFont(face);
        var glyphs = letters.Union(Measured).Order()
            .Select(letter => (Letter: letter, Glyph: numbers.GetGlyph(letter)))
            .Where(found => found.Glyph != 0)
            .ToList();
        var outlines = new GlyphOutlines(tables[GlyphTable], tables[PlaceTable]).Keep([0, .. glyphs.Select(found => (int)found.Glyph)]);

        var cut = Kept.Where(tables.ContainsKey).ToDictionary(name => name, name => tables[name]);
        cut[GlyphTable] = outlines.Glyphs;
        cut[PlaceTable] = outlines.Places;
        cut[WidthTable] = Widths(tables[WidthTable], WidthCount(tables["hhea"]), outlines.Kept);
        cut[CharacterTable] = Characters(glyphs);
        cut["post"] = WithoutNames(tables["post"]);
        return FontTables.Write(cut);
    }

    // Format 3: the glyphs have no names.
    private static byte[] WithoutNames(byte[] table)
    {
        var header = table[..32];
        BinaryPrimitives.WriteUInt32BigEndian(header, 0x00030000);
        return header;
    }

    private static int WidthCount(byte[] header) => BinaryPrimitives.ReadUInt16BigEndian(header.AsSpan(34));

    // Those of glyphs that are gone become 0, which takes no room once the file is packed. What is beyond the pairs of width and
    // bearing are bearings alone.
    private static byte[] Widths(byte[] table, int count, IReadOnlySet<int> kept)
    {
        var widths = table.ToArray();
        for (var glyph = 0; glyph < count - 1; glyph++)
        {
            if (!kept.Contains(glyph))
                widths.AsSpan(4 * glyph, 4).Clear();
        }

        return widths;
    }

    // One table of format 4 for Windows and Unicode, with a segment for each letter and the closing one.
    private static byte[] Characters(List<(char Letter, ushort Glyph)> glyphs)
    {
        var segments = glyphs.Append((Letter: '\uffff', Glyph: (ushort)0)).ToList();
        var power = 1 << (int)Math.Log2(segments.Count);
        ushort[] words =
        [
            0, 1, 3, 1, 0, 12,
            4, (ushort)(16 + 8 * segments.Count), 0,
            (ushort)(2 * segments.Count), (ushort)(2 * power), (ushort)Math.Log2(power), (ushort)(2 * (segments.Count - power)),
            .. segments.Select(segment => (ushort)segment.Letter),
            0,
            .. segments.Select(segment => (ushort)segment.Letter),
            .. segments.Select(segment => unchecked((ushort)(segment.Glyph - segment.Letter))),
            .. segments.Select(_ => (ushort)0),
        ];
        var table = new byte[2 * words.Length];
        for (var word = 0; word < words.Length; word++)
            BinaryPrimitives.WriteUInt16BigEndian(table.AsSpan(2 * word), words[word]);
        return table;
    }
}
