using Companion.Drawing.Stills;
using SkiaSharp;

namespace Companion.Drawing.Paper;

/// <summary>Lays a document out on pages.</summary>
/// <param name="letters">What measures its words.</param>
/// <param name="body">What the blocks may take of a page.</param>
internal sealed class PaperLayout(Lettering letters, SKRect body)
{
    private const float RuleWidth = 0.6f;
    private const float RuleGap = 4;
    private const float ClockWidth = 42;

    private readonly PageFlow _flow = new(body.Height);

    /// <summary>The pages of a document, each with its strips and where their top edges are.</summary>
    internal static IReadOnlyList<IReadOnlyList<(Strip Strip, float Top)>> Of(PaperDocument document, Lettering letters)
    {
        var layout = new PaperLayout(letters, Measures.Body(document.Size));
        layout._flow.Add(layout.Title(document.Title));
        foreach (var block in document.Blocks)
            layout.Add(block);
        return layout._flow.Pages();
    }

    private void Add(PaperBlock block)
    {
        switch (block)
        {
            case Heading heading:
                _flow.Add(Strips(heading));
                break;
            case Paragraph paragraph:
                _flow.Add(Apart(TextStrips.Of(letters, paragraph.Text, Whole), Measures.Gap));
                break;
            case Points points:
                foreach (var item in points.Items)
                    _flow.Add(new StepStrips(letters, body).Of("•", new(item)));
                break;
            case Steps steps:
                for (var index = 0; index < steps.Items.Length; index++)
                    _flow.Add(new StepStrips(letters, body).Of($"{steps.First + index}", steps.Items[index]));
                break;
            case FigureWithWords figure:
                _flow.Add([FigureStrips.WithWords(figure, letters, body)]);
                break;
            case FigureGrid grid:
                _flow.Add(GridStrips.Of(grid, letters, body, _flow.Room));
                break;
            case Drawn drawn:
                _flow.Add([FigureStrips.OfArtwork(drawn.Artwork, body)]);
                break;
            case PageBreak:
                _flow.Break();
                break;
            default:
                throw new ArgumentException($"No strips are made of a {block.GetType().Name}.", nameof(block));
        }
    }

    private TextPlace Whole => new(body.Left, body.Width);

    private IEnumerable<Strip> Title(string title) =>
        TextStrips.Of(letters, title, Whole with { Size = Measures.TitleText, IsBold = true }).Select(line => line with { StaysWithNext = true });

    private IEnumerable<Strip> Strips(Heading heading)
    {
        var indent = heading.At.Length > 0 ? ClockWidth : 0;
        var aside = heading.Aside.Length > 0 ? letters.WidthOf(heading.Aside, Measures.Text) + Measures.FigureGap : 0;
        var place = new TextPlace(body.Left + indent, body.Width - indent - aside) { Size = Measures.HeadingText, IsBold = true };
        var lines = TextStrips.Of(letters, heading.Text, place);
        lines[0] = lines[0]
            .After((sheet, top) => sheet.Write(heading.At, body.Left, top, Measures.HeadingText, bold: true))
            .Before((sheet, top) => sheet.WriteUpTo(heading.Aside, body.Right, top, Measures.Text));
        lines.Insert(0, new(RuleWidth + RuleGap, (sheet, top) => sheet.Rule(body.Left, body.Right, top, RuleWidth)) { Gap = 2 * Measures.Gap });
        return lines.Select(line => line with { StaysWithNext = true });
    }

    private static List<Strip> Apart(List<Strip> strips, float gap)
    {
        if (strips.Count > 0)
            strips[0] = strips[0] with { Gap = gap };
        return strips;
    }
}
