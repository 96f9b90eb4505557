using SkiaSharp;

namespace Companion.Drawing.Tests.Stills;

public class FontTests
{
    [Theory]
    [InlineData("DejaVuSans.ttf")]
    [InlineData("DejaVuSans-Bold.ttf")]
    public void The_fonts_have_all_that_pictures_and_captions_need(string name)
    {
        using var file = Resource.Open(name);
        using var face = SKTypeface.FromStream(file);
        using var font = new SKFont(face);

        var letters = string.Concat(Enumerable.Range('!', '~' - '!' + 1).Select(code => (char)code));
        Assert.True(font.ContainsGlyphs(letters));
        Assert.True(font.ContainsGlyphs("→…–—’“”·×≤≥ÄÖÜäöüßÀÉÈÑçñåøŁłŠšŽžĞğİıΑαΩωЖжЯя"));
    }

    [Fact]
    public void The_licence_of_the_fonts_travels_with_them()
    {
        using var reader = new StreamReader(Resource.Open("LICENSE.txt"));

        Assert.Contains("Bitstream Vera Fonts Copyright", reader.ReadToEnd(), StringComparison.Ordinal);
    }
}
