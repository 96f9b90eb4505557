using System.Globalization;
using System.Text;

namespace Companion.Sight.Tests.Boards;

/// <summary>What else a screen shows: a title bar, a keypad, a list with lines, text, other frames and a smaller grid.</summary>
internal static class Surroundings
{
    public static string Of(BoardStyle style)
    {
        var random = new Random(~style.Seed);
        var html = new StringBuilder();
        html.Append($"<div style='height:18px;border-bottom:1px solid {style.Colours.BlockLine}'>File &nbsp; Edit &nbsp; View &nbsp; Help</div>");
        var x = style.Left + style.Side + 24 < style.Width - 170 ? style.Left + style.Side + 24 : style.Left - 190;
        if (x < 0)
            return html.ToString();
        var y = style.Top;
        html.Append(N($"<div style='position:absolute;left:{x}px;top:{y}px;width:160px;height:160px;display:grid;grid-template-columns:1fr 1fr 1fr;gap:{random.Next(0, 8)}px'>"));
        for (var digit = 1; digit <= 9; digit++)
            html.Append(N($"<button style='font-size:22px;border:1px solid {style.Colours.BlockLine};border-radius:{style.Rounding}px'>{digit}</button>"));
        html.Append("</div>");
        html.Append(N($"<table style='position:absolute;left:{x}px;top:{y + 180}px;width:160px;border-collapse:collapse'>"));
        for (var row = 0; row < 9; row++)
            html.Append(N($"<tr><td style='border:1px solid {style.Colours.CellLine}'>{random.Next(10, 99)}<td style='border:1px solid {style.Colours.CellLine}'>{random.Next(10, 99)}"));
        html.Append("</table>");
        html.Append(N($"<p style='position:absolute;left:{x}px;top:{y + 390}px;width:160px'>Tonight at the signal station: puzzle 12 of 40, set by the harbour watch. 81 cells, 27 houses.</p>"));
        return html.ToString();
    }

    private static string N(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
