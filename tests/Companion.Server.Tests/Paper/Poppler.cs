using System.Globalization;
using Companion.Server.Tests.Running;
using SkiaSharp;

namespace Companion.Server.Tests.Paper;

/// <summary>What Poppler reads in a PDF file; it shares no code with what wrote it.</summary>
internal static class Poppler
{
    /// <summary>The words, a form feed after each page.</summary>
    public static string Text(string file) => DebianPackages.Poppler.Run("pdftotext", ["-raw", file, "-"]);

    /// <summary>The lines of its table of fonts: name, type, encoding, emb, sub, uni, object.</summary>
    public static string[] Fonts(string file) => DebianPackages.Poppler.Run("pdffonts", [file]).TrimEnd().Split('\n')[2..];

    /// <summary>What it says of the file: Title, Pages, Page size and so on.</summary>
    public static IReadOnlyDictionary<string, string> Info(string file) => DebianPackages.Poppler.Run("pdfinfo", [file]).TrimEnd().Split('\n')
        .ToDictionary(line => line[..line.IndexOf(':', StringComparison.Ordinal)], line => line[(line.IndexOf(':', StringComparison.Ordinal) + 1)..].Trim());

    /// <summary>The pages as a printer without colour puts them on paper.</summary>
    /// <param name="file">The file.</param>
    /// <param name="dots">Dots for each inch.</param>
    public static IReadOnlyList<SKBitmap> Grey(string file, int dots)
    {
        DebianPackages.Poppler.Run("pdftoppm", ["-gray", "-png", "-r", dots.ToString(CultureInfo.InvariantCulture), file, file]);
        return [.. Directory.GetFiles(Path.GetDirectoryName(file)!, Path.GetFileName(file) + "-*.png").Order().Select(SKBitmap.Decode)];
    }
}
