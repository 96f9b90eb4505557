using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace Companion.Drawing.Paper;

/// <summary>
/// Names the language of a PDF file, which readers aloud ask for and SkiaSharp has no place for: an incremental update with another
/// catalogue. Source: ISO 32000-1:2008, 7.5.6 "Incremental updates" and 14.9.2 "Natural language specification".
/// </summary>
internal static partial class PdfLanguage
{
    // What stands before the catalogue: a line with the object's number, and the end of the line before it.
    private const int LongestNumber = 20;

    /// <summary>The file with its language.</summary>
    /// <param name="pdf">A file as SkiaSharp writes it: with one table of cross references, and none of its objects packed.</param>
    /// <param name="language">The language, as BCP 47 writes it.</param>
    internal static byte[] Set(byte[] pdf, string language)
    {
        // Latin-1 has a character for each byte.
        var text = Encoding.Latin1.GetString(pdf);
        var at = text.LastIndexOf("\ntrailer\n", StringComparison.Ordinal);
        var trailer = Trailer().Match(text, Math.Max(0, at));
        var catalogue = Catalogue().Match(text, Math.Max(0, text.LastIndexOf("<</Type /Catalog\n", StringComparison.Ordinal) - LongestNumber));
        if (!catalogue.Success || !trailer.Success)
            throw new InvalidOperationException("The PDF file was not written as expected.");

        // The new object stands for the old one of this number.
        var update = new StringBuilder();
        var number = catalogue.Groups["number"].Value;
        update.Append(CultureInfo.InvariantCulture, $"{number} 0 obj\n<</Type /Catalog\n/Lang ({language}){catalogue.Groups["rest"].Value}\nendobj\n");
        var table = pdf.Length + update.Length;
        update.Append(CultureInfo.InvariantCulture, $"xref\n{number} 1\n{pdf.Length:D10} 00000 n \n");
        update.Append(CultureInfo.InvariantCulture, $"trailer\n<<{trailer.Groups["entries"].Value}\n/Prev {trailer.Groups["table"].Value}>>\n");
        update.Append(CultureInfo.InvariantCulture, $"startxref\n{table}\n%%EOF\n");
        return [.. pdf, .. Encoding.Latin1.GetBytes(update.ToString())];
    }

    [GeneratedRegex(@"\n(?<number>[0-9]+) 0 obj\n<</Type /Catalog(?<rest>\n.*?)\nendobj\n", RegexOptions.Singleline)]
    private static partial Regex Catalogue();

    [GeneratedRegex(@"\ntrailer\n<<(?<entries>.*?)>>\nstartxref\n(?<table>[0-9]+)\n%%EOF", RegexOptions.Singleline)]
    private static partial Regex Trailer();
}
