using Companion.Drawing.Colours;
using Companion.Drawing.Stills;
using SkiaSharp;

namespace Companion.Drawing.Paper;

/// <summary>Writes documents as PDF.</summary>
public static class PaperPdf
{
    private const float PointsPerInch = 72;

    /// <summary>Writes a document. The same one gives the same bytes.</summary>
    /// <param name="document">The document.</param>
    /// <returns>A PDF file whose fonts are embedded and hold the letters that it uses.</returns>
    public static byte[] Write(PaperDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        var drawn = new HashSet<char>();
        using var whole = new Lettering(drawn: drawn);
        var pages = PaperLayout.Of(document, whole);

        // Once for nothing, to learn which letters are needed.
        using var nowhere = new SKNoDrawCanvas(document.Size.Width, document.Size.Height);
        for (var page = 0; page < pages.Count; page++)
            Paint(new(nowhere, whole, Palette.Standard), document, pages, page);

        using var faces = Typefaces.Changed((file, face) => FontSubset.Of(file, face, drawn));
        using var letters = new Lettering(faces);
        return PdfLanguage.Set(Draw(document, pages, letters), document.Language);
    }

    private static byte[] Draw(PaperDocument document, IReadOnlyList<IReadOnlyList<(Strip, float)>> pages, Lettering letters)
    {
        using var file = new MemoryStream();
        using (var pdf = SKDocument.CreatePdf(file, Properties(document)))
        {
            for (var page = 0; page < pages.Count; page++)
            {
                using var canvas = pdf.BeginPage(document.Size.Width, document.Size.Height);
                Paint(new(canvas, letters, Palette.Standard), document, pages, page);
                pdf.EndPage();
            }

            pdf.Close();
        }

        return file.ToArray();
    }

    private static SKDocumentPdfMetadata Properties(PaperDocument document) => new(PointsPerInch)
    {
        Title = document.Title,
        Author = document.Author,
        Creator = "Companion",
        Creation = document.Dated?.UtcDateTime,
        Modified = document.Dated?.UtcDateTime,
    };

    private static void Paint(Sheet sheet, PaperDocument document, IReadOnlyList<IReadOnlyList<(Strip Strip, float Top)>> pages, int page)
    {
        var body = Measures.Body(document.Size);
        foreach (var (strip, top) in pages[page])
            strip.Paint(sheet, body.Top + top);
        PageFoot.Paint(sheet, document, body, page + 1, pages.Count);
    }
}
