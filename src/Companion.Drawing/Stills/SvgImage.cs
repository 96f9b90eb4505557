using System.Xml;
using System.Xml.Linq;
using SkiaSharp;

namespace Companion.Drawing.Stills;

/// <summary>
/// Artworks as SVG files. Letters are drawn as outlines, so that a file looks the same wherever it is opened; its title says what it shows.
/// </summary>
public static class SvgImage
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <summary>Draws it. The same artwork gives the same bytes.</summary>
    /// <param name="artwork">What to draw.</param>
    /// <returns>An SVG file in UTF-8.</returns>
    public static byte[] Of(Artwork artwork)
    {
        ArgumentNullException.ThrowIfNull(artwork);
        using var drawn = new MemoryStream();
        Draw(artwork, drawn);
        drawn.Position = 0;
        var document = XDocument.Load(drawn);
        var root = document.Root!;
        root.SetAttributeValue("viewBox", FormattableString.Invariant($"0 0 {artwork.Width} {artwork.Height}"));
        root.SetAttributeValue("role", "img");
        if (artwork.Description.Length > 0)
            root.AddFirst(new XElement(Svg + "title", Clean(artwork.Description)));

        using var file = new MemoryStream();
        using (var writer = XmlWriter.Create(file, new() { Encoding = new System.Text.UTF8Encoding(false) }))
            document.Save(writer);
        return file.ToArray();
    }

    private static void Draw(Artwork artwork, MemoryStream into)
    {
        using var canvas = SKSvgCanvas.Create(SKRect.Create(artwork.Width, artwork.Height), into);
        using var letters = new Lettering(asOutlines: true);
        artwork.Paint(canvas, letters);
    }

    // A title may hold what XML cannot, half a surrogate pair for one.
    private static string Clean(string text) =>
        string.Concat(text.EnumerateRunes().Select(rune => rune.IsBmp && !XmlConvert.IsXmlChar((char)rune.Value) ? " " : rune.ToString()));
}
