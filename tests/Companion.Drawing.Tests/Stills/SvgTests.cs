using System.Globalization;
using System.Xml;
using System.Xml.Linq;
using Companion.Drawing.Pictures;
using Companion.Drawing.Stills;
using Companion.Drawing.Stills.Overlays;
using Companion.Drawing.Tests.Pictures;
using Companion.Session.State;

namespace Companion.Drawing.Tests.Stills;

/// <summary>SVG files: valid XML that looks the same anywhere, whatever words come in. That they look like the PNGs is tested in a browser.</summary>
public class SvgTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    // No text, which needs a font, no image, style or script.
    private static readonly string[] Drawn = ["svg", "title", "g", "path", "rect", "circle", "ellipse", "line", "clipPath", "defs"];

    public static TheoryData<string> Titles =>
    [
        "</title><script>alert(1)</script>",
        "\"quoted\" & 'quoted' <b>",
        "]]> --> <!-- <![CDATA[",
        "tab\tline\nbell\a null\0 half \ud800 pair",
        "&#0; &amp; &unknown;",
    ];

    [Theory]
    [MemberData(nameof(Titles))]
    public void Hostile_words_are_words_and_nothing_else(string words)
    {
        var view = Boards.View with { Credit = new(words, words, "") };

        var root = Read(SvgImage.Of(new StageStill(view, new([], words), new(640, 360, Companion.Drawing.Colours.Theme.Light))));

        var title = Assert.Single(root.Elements(Svg + "title"));
        Assert.Empty(title.Elements());
        Assert.Contains(words[..3], title.Value, StringComparison.Ordinal);
        Assert.All(root.DescendantsAndSelf(), element => Assert.Contains(element.Name.LocalName, Drawn));
    }

    [Fact]
    public void Nothing_in_it_comes_from_elsewhere_and_letters_are_outlines()
    {
        foreach (var (rule, drawn) in OneOfEachRule.Drawn)
        {
            var picture = PictureOf.Hint(Standing.HintsOf(rule, drawn.Standing).Why);
            var root = Read(SvgImage.Of(new AirStill(picture, Scenes.Initial[Scenes.Main]!, 1280, 720)));

            Assert.All(root.DescendantsAndSelf(), element => Assert.Contains(element.Name.LocalName, Drawn));
            Assert.All(
                root.DescendantsAndSelf().Attributes().Where(attribute => !attribute.IsNamespaceDeclaration),
                attribute => Assert.DoesNotContain("http", attribute.Value, StringComparison.Ordinal));
            Assert.Equal(picture.Caption, root.Element(Svg + "title")!.Value);
        }
    }

    [Fact]
    public void It_has_its_size_and_the_same_artwork_gives_the_same_bytes()
    {
        var still = new StageStill(Boards.View, null, new(8192, 240, Companion.Drawing.Colours.Theme.Dark));

        var root = Read(SvgImage.Of(still));

        Assert.Equal("8192", root.Attribute("width")!.Value);
        Assert.Equal("240", root.Attribute("height")!.Value);
        Assert.Equal("0 0 8192 240", root.Attribute("viewBox")!.Value);
        Assert.Equal(SvgImage.Of(still), SvgImage.Of(still));
    }

    [Fact]
    public void Numbers_are_written_with_points_whatever_the_culture()
    {
        var before = CultureInfo.CurrentCulture;
        var still = new StageStill(Boards.View, null, new(641, 361, Companion.Drawing.Colours.Theme.Dark));
        var invariant = SvgImage.Of(still);
        try
        {
            var commas = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            commas.NumberFormat.NumberDecimalSeparator = ",";
            CultureInfo.CurrentCulture = commas;
            Assert.Equal(invariant, SvgImage.Of(still));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static XElement Read(byte[] file)
    {
        using var reader = XmlReader.Create(new MemoryStream(file), new() { DtdProcessing = DtdProcessing.Prohibit });
        return XDocument.Load(reader).Root!;
    }
}
