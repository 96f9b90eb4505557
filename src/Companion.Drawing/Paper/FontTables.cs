using System.Buffers.Binary;
using System.Text;

namespace Companion.Drawing.Paper;

/// <summary>The tables of a TrueType font. Source: OpenType specification 1.9.1, "The OpenType Font File".</summary>
internal static class FontTables
{
    private const uint TrueType = 0x00010000;
    private const int HeaderSize = 12;
    private const int EntrySize = 16;
    private const int AdjustmentPlace = 8;
    private const uint WholeFile = 0xB1B0AFBA;

    /// <summary>Reads them by name.</summary>
    public static Dictionary<string, byte[]> Read(byte[] font)
    {
        var tables = new Dictionary<string, byte[]>();
        for (var index = 0; index < BinaryPrimitives.ReadUInt16BigEndian(font.AsSpan(4)); index++)
        {
            var entry = font.AsSpan(HeaderSize + EntrySize * index, EntrySize);
            var (start, length) = ((int)BinaryPrimitives.ReadUInt32BigEndian(entry[8..]), (int)BinaryPrimitives.ReadUInt32BigEndian(entry[12..]));
            tables.Add(Encoding.ASCII.GetString(entry[..4]), font[start..(start + length)]);
        }

        return tables;
    }

    /// <summary>Writes a font of these tables, in the order of their names and each at a multiple of four bytes.</summary>
    public static byte[] Write(Dictionary<string, byte[]> tables)
    {
        var names = tables.Keys.Order(StringComparer.Ordinal).ToList();
        var start = HeaderSize + EntrySize * names.Count;
        var font = new byte[start + names.Sum(name => Padded(tables[name].Length))];
        WriteHeader(font, names.Count);
        for (var (index, at) = (0, start); index < names.Count; at += Padded(tables[names[index]].Length), index++)
        {
            var table = tables[names[index]];
            table.CopyTo(font, at);
            if (names[index] == "head")
                BinaryPrimitives.WriteUInt32BigEndian(font.AsSpan(at + AdjustmentPlace), 0);
            var entry = font.AsSpan(HeaderSize + EntrySize * index, EntrySize);
            Encoding.ASCII.GetBytes(names[index], entry);
            BinaryPrimitives.WriteUInt32BigEndian(entry[4..], Sum(font.AsSpan(at, Padded(table.Length))));
            BinaryPrimitives.WriteUInt32BigEndian(entry[8..], (uint)at);
            BinaryPrimitives.WriteUInt32BigEndian(entry[12..], (uint)table.Length);
        }

        Adjust(font, names.IndexOf("head"));
        return font;
    }

    private static void WriteHeader(Span<byte> font, int count)
    {
        var power = 1 << (int)Math.Log2(count);
        BinaryPrimitives.WriteUInt32BigEndian(font, TrueType);
        BinaryPrimitives.WriteUInt16BigEndian(font[4..], (ushort)count);
        BinaryPrimitives.WriteUInt16BigEndian(font[6..], (ushort)(EntrySize * power));
        BinaryPrimitives.WriteUInt16BigEndian(font[8..], (ushort)Math.Log2(power));
        BinaryPrimitives.WriteUInt16BigEndian(font[10..], (ushort)(EntrySize * (count - power)));
    }

    private static void Adjust(Span<byte> font, int head)
    {
        var at = (int)BinaryPrimitives.ReadUInt32BigEndian(font[(HeaderSize + EntrySize * head + 8)..]);
        BinaryPrimitives.WriteUInt32BigEndian(font[(at + AdjustmentPlace)..], unchecked(WholeFile - Sum(font)));
    }

    private static uint Sum(ReadOnlySpan<byte> words)
    {
        var sum = 0u;
        for (var at = 0; at < words.Length; at += 4)
            sum = unchecked(sum + BinaryPrimitives.ReadUInt32BigEndian(words[at..]));
        return sum;
    }

    private static int Padded(int length) => (length + 3) / 4 * 4;
}
