using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Companion.Sight.Tests.Boards;

/// <summary>A page that shows a board in a style, by one of several techniques.</summary>
internal static class BoardPage
{
    public static string Html(BoardStyle style, ImmutableArray<DrawnCell> cells)
    {
        var (under, over) = Decoration.Of(style);
        var letters = Lettering.Of(style, cells).Select(piece => piece.Drawn).ToList();
        var board = style.Technique switch
        {
            Technique.Table => Svg(style, under) + Table(style) + Svg(style, letters.Concat(over)),
            Technique.Cards => Cards(style) + Svg(style, under.Where(shape => shape is not Drawn.Box)) + Svg(style, letters.Concat(over)),
            Technique.Svg => Svg(style, under.Concat(Lines(style)).Concat(letters).Concat(over)),
            _ => Canvas(style, under.Concat(Lines(style)).Concat(letters).Concat(over)),
        };
        return Page(style, (style.HasSurroundings ? Surroundings.Of(style) : "") + N($"<div id='board'>{board}</div>"));
    }

    /// <summary>A page with nothing but one thing of a board, where it is on the board's own page and drawn likewise: black on white.</summary>
    /// <param name="style">The board's style.</param>
    /// <param name="drawn">The thing.</param>
    public static string Alone(BoardStyle style, Drawn drawn)
    {
        var bare = style with { Colours = style.Colours with { Page = "#ffffff", Cell = "#ffffff" } };
        Drawn[] black = [drawn.In("#000000")];
        return Page(bare, N($"<div id='board'>{(style.Technique == Technique.Canvas ? Canvas(style, black) : Svg(style, black))}</div>"));
    }

    private static string Page(BoardStyle style, string body)
    {
        var faces = string.Concat(new[] { style.DigitFont, style.MarkFont }.Distinct().Select(FontFiles.FontFaces));
        return N($$"""
            <!doctype html><meta charset='utf-8'><style>{{faces}}
            body{margin:0;background:{{style.Colours.Page}};color:{{style.Colours.Given}};font:14px sans-serif;overflow:hidden}
            #board{position:absolute;left:{{style.Left}}px;top:{{style.Top}}px;width:{{style.Side}}px;height:{{style.Side}}px;background:{{style.Colours.Cell}};border-radius:{{style.Rounding}}px}
            #board>*{position:absolute;left:0;top:0}
            </style>{{body}}
            """);
    }

    private static string Svg(BoardStyle style, IEnumerable<Drawn> drawn) =>
        N($"<svg width='{style.Side}' height='{style.Side}' viewBox='0 0 {style.Side} {style.Side}' style='overflow:visible'>{string.Concat(drawn.Select(shape => shape.Svg))}</svg>");

    private static string Canvas(BoardStyle style, IEnumerable<Drawn> drawn) =>
        N($"<canvas id='c' width='{style.Side * style.Scale + 40}' height='{style.Side * style.Scale + 40}' style='left:-10px;top:-10px;width:{style.Side + 40 / style.Scale}px'></canvas>")
        + N($"<script>Promise.all(['400 20px {style.DigitFont}','700 20px {style.DigitFont}','400 20px {style.MarkFont}'].map(f=>document.fonts.load(f))).then(()=>{{const c=document.getElementById('c').getContext('2d');c.scale({style.Scale},{style.Scale});c.translate(10,10);{string.Concat(drawn.Select(shape => shape.Canvas))}document.title='drawn'}})</script>");

    private static IEnumerable<Drawn> Lines(BoardStyle style)
    {
        foreach (var isBlock in (bool[])[false, true])
        {
            for (var line = 1; line < 9; line++)
            {
                if (line % 3 == 0 != isBlock)
                    continue;
                var (at, colour, thickness) = (line * style.Cell, isBlock ? style.Colours.BlockLine : style.Colours.CellLine, isBlock ? style.BlockLine : style.CellLine);
                yield return new Drawn.Stroke(N($"M{at} 0V{style.Side}"), colour, thickness);
                yield return new Drawn.Stroke(N($"M0 {at}H{style.Side}"), colour, thickness);
            }
        }

        if (style.Border > 0)
            yield return new Drawn.Box(0, 0, style.Side, style.Side, "none", style.Rounding, null, style.Colours.BlockLine, style.Border);
    }

    private static string Table(BoardStyle style)
    {
        var html = new StringBuilder();
        // Half of the border is outside the board, as it is with the other techniques: else lines lie beside the cells of the letters.
        var border = Math.Max(style.Border, style.BlockLine);
        html.Append(N($"<style>table{{border-collapse:collapse;table-layout:fixed;width:{style.Side + border}px;height:{style.Side + border}px;margin:{-border / 2f}px}}"))
            .Append(N($"td{{padding:0;box-sizing:border-box;height:{style.Cell}px;border:{style.CellLine}px solid {style.Colours.CellLine}}}"))
            .Append(N($"td:nth-child(3n){{border-right:{style.BlockLine}px solid {style.Colours.BlockLine}}}tr:nth-child(3n) td{{border-bottom:{style.BlockLine}px solid {style.Colours.BlockLine}}}"))
            .Append(N($"table{{border:{border}px solid {style.Colours.BlockLine}}}</style><table>"));
        for (var row = 0; row < 9; row++)
            html.Append("<tr><td><td><td><td><td><td><td><td><td>");
        return html.Append("</table>").ToString();
    }

    // Cells apart from each other, rounded, a wider gap between blocks.
    private static string Cards(BoardStyle style)
    {
        var html = new StringBuilder();
        var shades = new Random(style.Seed).Next(9);
        for (var index = 0; index < 81; index++)
        {
            var (row, column) = (index / 9, index % 9);
            var gap = style.CellLine / 2f + 0.5f;
            var ground = style.ShadesHouses && row == shades ? style.Colours.Shade : style.Colours.Cell;
            html.Append(N($"<div style='position:absolute;left:{column * style.Cell + gap}px;top:{row * style.Cell + gap}px;width:{style.Cell - 2 * gap}px;height:{style.Cell - 2 * gap}px;"))
                .Append(N($"background:{ground};border-radius:{Math.Min(style.Rounding, style.Cell / 6)}px'></div>"));
        }

        return N($"<div style='position:absolute;width:{style.Side}px;height:{style.Side}px;background:{style.Colours.BlockLine}'>{html}</div>");
    }

    private static string N(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
