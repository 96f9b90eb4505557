using System.Buffers.Binary;
using Companion.Drawing.Paper;
using SkiaSharp;

namespace Companion.Drawing.Tests.Paper;

public sealed class FontSubsetTests
{
    private const string Kept = "0123456789 Ärger → Łódź ½";

    public static TheoryData<string> Fonts => ["DejaVuSans.ttf", "DejaVuSans-Bold.ttf"];

    [Theory]
    [MemberData(nameof(Fonts))]
    public void Every_letter_kept_looks_as_in_the_whole_font_and_is_as_wide(string name)
    {
        using var whole = SKTypeface.FromData(SKData.CreateCopy(FileOf(name)));
        using var part = SKTypeface.FromData(SKData.CreateCopy(FontSubset.Of(FileOf(name), whole, Kept)));
        using var large = new SKFont(whole, 1000) { Hinting = SKFontHinting.None };
        using var cut = new SKFont(part, 1000) { Hinting = SKFontHinting.None };

        Assert.All(Kept, letter =>
        {
            using var before = large.GetTextPath(letter.ToString(), new SKPoint(0, 0));
            using var after = cut.GetTextPath(letter.ToString(), new SKPoint(0, 0));
            Assert.Equal(before.ToSvgPathData(), after.ToSvgPathData());
            Assert.Equal(large.MeasureText(letter.ToString()), cut.MeasureText(letter.ToString()));
        });
        Assert.Equal(large.Metrics.CapHeight, cut.Metrics.CapHeight);
    }

    [Theory]
    [MemberData(nameof(Fonts))]
    public void What_is_not_kept_is_gone_and_the_file_is_a_tenth(string name)
    {
        using var whole = SKTypeface.FromData(SKData.CreateCopy(FileOf(name)));
        var file = FontSubset.Of(FileOf(name), whole, Kept);
        using var part = SKTypeface.FromData(SKData.CreateCopy(file));
        using var cut = new SKFont(part, 1000);

        Assert.True(cut.ContainsGlyphs(Kept));
        Assert.All("abcXYZäЖ", letter => Assert.False(cut.ContainsGlyph(letter) && !Kept.Contains(letter)));
        Assert.Equal(part.GetGlyphs(Kept), whole.GetGlyphs(Kept));
        Assert.InRange(file.Length, 1000, FileOf(name).Length / 7);
    }

    // OpenType 1.9.1, "The OpenType Font File": the sum of the whole file as 32-bit numbers is 0xB1B0AFBA.
    [Theory]
    [MemberData(nameof(Fonts))]
    public void The_sum_over_the_file_is_the_one_that_the_format_asks_for(string name)
    {
        using var whole = SKTypeface.FromData(SKData.CreateCopy(FileOf(name)));
        var file = FontSubset.Of(FileOf(name), whole, Kept);

        Assert.Equal(0xB1B0AFBA, SumOf(FileOf(name)));
        Assert.Equal(0xB1B0AFBA, SumOf(file));
    }

    private static uint SumOf(byte[] file)
    {
        var padded = file.Concat(new byte[(4 - file.Length % 4) % 4]).ToArray();
        return padded.Chunk(4).Aggregate(0u, (sum, word) => unchecked(sum + BinaryPrimitives.ReadUInt32BigEndian(word)));
    }

    private static byte[] FileOf(string name)
    {
        using var file = Resource.Open(name);
        using var copy = new MemoryStream();
        file.CopyTo(copy);
        return copy.ToArray();
    }
}
