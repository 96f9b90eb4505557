using System.Xml.Linq;
using Companion.Drawing.Stills;

namespace Companion.Drawing.Paper;

/// <summary>Writes documents as one page of HTML to read or print: nothing in it is fetched from elsewhere.</summary>
public static class PaperHtml
{
    private const string Style =
        """
        body { font: 11pt/1.45 "DejaVu Sans", Verdana, sans-serif; color: #000; background: #fff; max-width: 46em; margin: 2em auto; padding: 0 1em; }
        h2 { font-size: 1.1em; margin: 1.2em 0 .3em; border-top: 1px solid #000; padding-top: .4em; break-after: avoid; }
        h2 time { display: inline-block; min-width: 3.5em; font-variant-numeric: tabular-nums; }
        h2 small { float: right; font-weight: normal; }
        ol { margin: 0; padding-left: 3.5em; }
        li { break-inside: avoid; }
        b.sign { border: 2px solid #000; padding: 0 .3em; }
        p.note { font-weight: bold; margin: .2em 0; border-left: 3px solid #000; padding-left: .6em; }
        figure { margin: .5em 0 0; break-inside: avoid; }
        img { max-width: 100%; height: auto; }
        div.beside { display: flex; gap: 1.5em; align-items: flex-start; }
        div.grid { display: grid; gap: 1em; }
        div.grid figure { margin: 0; }
        div.grid p { font-size: .8em; margin: .2em 0 0; }
        @media print { div.grid p { font-size: 7.6pt; line-height: 1.35; } }
        figcaption { font-weight: bold; }
        div.break { break-after: page; }
        """;

    private const float StepSide = FigureImage.StepSide;
    private const float BesideSide = 165;
    private const float TilesAcross = 480;

    /// <summary>Writes a document.</summary>
    /// <param name="document">The document.</param>
    public static string Write(PaperDocument document)
    {
        ArgumentNullException.ThrowIfNull(document);
        var html = new XElement(
            "html",
            new XAttribute("lang", document.Language),
            new XElement(
                "head",
                new XElement("meta", new XAttribute("charset", "utf-8")),
                new XElement("title", document.Title),
                document.Author.Length > 0 ? new XElement("meta", new XAttribute("name", "author"), new XAttribute("content", document.Author)) : null,
                new XElement("style", $"{Style}\n@page {{ size: {document.Size.Name}; margin: 16mm; }}")),
            new XElement(
                "body",
                new XElement("h1", document.Title),
                document.Author.Length > 0 ? new XElement("p", document.Author) : null,
                document.Blocks.Select(Of)));
        return "<!DOCTYPE html>\n" + html.ToString(SaveOptions.DisableFormatting);
    }

    private static XElement Of(PaperBlock block) => block switch
    {
        Heading heading => new(
            "h2",
            heading.At.Length > 0 ? new XElement("time", heading.At) : null,
            heading.Text,
            heading.Aside.Length > 0 ? new XElement("small", heading.Aside) : null),
        Paragraph paragraph => new("p", paragraph.Text),
        Points points => new("ul", points.Items.Select(item => new XElement("li", item))),
        Steps steps => new("ol", new XAttribute("start", steps.First), steps.Items.Select(Of)),
        FigureWithWords figure => new(
            "div",
            new XAttribute("class", "beside"),
            Image(figure.Figure, BesideSide, withLegend: false),
            new XElement("div", figure.Words.Select(words => new XElement("p", words)))),
        FigureGrid grid => new(
            "div",
            new XAttribute("class", "grid"),
            new XAttribute("style", $"grid-template-columns: repeat({grid.Columns}, 1fr)"),
            grid.Tiles.Select(tile => Of(tile, TilesAcross / grid.Columns))),
        Drawn { Artwork: var artwork } => new(
            "img",
            new XAttribute("alt", artwork.Description),
            new XAttribute("src", $"data:image/svg+xml;base64,{Convert.ToBase64String(SvgImage.Of(artwork))}")),
        PageBreak => new("div", new XAttribute("class", "break"), ""),
        _ => throw new ArgumentException($"No element is made of a {block.GetType().Name}.", nameof(block)),
    };

    private static XElement Of(Step step) => new(
        "li",
        step.Sign.Length > 0 ? new XElement("b", new XAttribute("class", "sign"), step.Sign) : null,
        step.Sign.Length > 0 ? " " : null,
        step.Text,
        step.Note.Length > 0 ? new XElement("p", new XAttribute("class", "note"), step.Note) : null,
        step.Figure is { } figure ? new XElement("figure", Image(figure, StepSide, withLegend: true)) : null);

    private static XElement Of(Tile tile, float side) => new(
        "figure",
        new XElement("figcaption", tile.Title),
        Image(tile.Figure, side, withLegend: false),
        tile.Words.Length > 0 ? new XElement("p", tile.Words) : null);

    private static XElement Image(Figure figure, float side, bool withLegend)
    {
        var png = FigureImage.Png(figure, side, withLegend);
        return new(
            "img",
            new XAttribute("alt", figure.Alternative),
            new XAttribute("width", (int)(FigureImage.WidthOf(side, withLegend) * 4 / 3)),
            new XAttribute("src", $"data:image/png;base64,{Convert.ToBase64String(png)}"));
    }
}
