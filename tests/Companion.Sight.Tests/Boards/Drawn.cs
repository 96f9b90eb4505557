using System.Globalization;
using SkiaSharp;

namespace Companion.Sight.Tests.Boards;

/// <summary>A thing drawn on a page, as SVG or as a step of a canvas.</summary>
internal abstract record Drawn
{
    public abstract string Svg { get; }

    public abstract string Canvas { get; }

    /// <summary>The same in one colour.</summary>
    /// <param name="colour">#rrggbb.</param>
    public abstract Drawn In(string colour);

    /// <summary>What it covers of whatever lies under it, in pixels of the page; null for letters, of which only a browser knows the outline.</summary>
    public virtual SKPath? Outline => null;

    private static SKPath Covered(SKPath path, bool isFilled, float thickness, SKStrokeCap cap)
    {
        using var line = new SKPaint { Style = SKPaintStyle.Stroke, StrokeWidth = thickness, StrokeCap = cap };
        var covered = thickness > 0 ? line.GetFillPath(path)! : new SKPath();
        return isFilled ? covered.Op(path, SKPathOp.Union) : covered;
    }

    protected static string N(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    /// <summary>A rectangle; with a second colour it fades into that from top left to bottom right.</summary>
    internal sealed record Box(float X, float Y, float Width, float Height, string Fill, float Rounding = 0, string? Second = null, string? Line = null, float Thickness = 0) : Drawn
    {
        private string Id => N($"g{X:0}-{Y:0}");

        public override Drawn In(string colour) => this with { Fill = Fill == "none" ? Fill : colour, Second = null, Line = Line is null ? null : colour };

        public override SKPath Outline
        {
            get
            {
                using var box = new SKPathBuilder();
                box.AddRoundRect(new SKRect(X, Y, X + Width, Y + Height), Rounding, Rounding);
                using var outline = box.Detach();
                return Covered(outline, Fill != "none", Line is null ? 0 : Thickness, SKStrokeCap.Butt);
            }
        }

        public override string Svg =>
            (Second is null ? "" : N($"<defs><linearGradient id='{Id}' x2='1' y2='1'><stop stop-color='{Fill}'/><stop offset='1' stop-color='{Second}'/></linearGradient></defs>"))
            + N($"<rect x='{X}' y='{Y}' width='{Width}' height='{Height}' rx='{Rounding}' fill='{(Second is null ? Fill : $"url(#{Id})")}' stroke='{Line ?? "none"}' stroke-width='{Thickness}'/>");

        public override string Canvas =>
            (Second is null ? N($"c.fillStyle='{(Fill == "none" ? "#0000" : Fill)}';")
                : N($"{{const g=c.createLinearGradient({X},{Y},{X + Width},{Y + Height});g.addColorStop(0,'{Fill}');g.addColorStop(1,'{Second}');c.fillStyle=g;}}"))
            + N($"c.beginPath();c.roundRect({X},{Y},{Width},{Height},{Rounding});c.fill();")
            + (Line is null ? "" : N($"c.setLineDash([]);c.lineCap='butt';c.strokeStyle='{Line}';c.lineWidth={Thickness};c.stroke();"));
    }

    internal sealed record Stroke(string Points, string Colour, float Thickness, float Dash = 0, bool IsRound = false) : Drawn
    {
        private string Cap => IsRound ? "round" : "butt";

        public override Drawn In(string colour) => this with { Colour = colour };

        public override SKPath Outline
        {
            get
            {
                using var line = SKPath.ParseSvgPathData(Points);
                return Covered(line, isFilled: false, Thickness, IsRound ? SKStrokeCap.Round : SKStrokeCap.Butt);
            }
        }

        public override string Svg => N($"<path d='{Points}' fill='none' stroke='{Colour}' stroke-width='{Thickness}' stroke-dasharray='{(Dash > 0 ? N($"{Dash}") : "none")}' stroke-linecap='{Cap}' stroke-linejoin='{(IsRound ? "round" : "miter")}'/>");

        public override string Canvas => N($"c.setLineDash([{(Dash > 0 ? N($"{Dash},{Dash}") : "")}]);c.lineCap='{Cap}';c.lineJoin='{(IsRound ? "round" : "miter")}';c.strokeStyle='{Colour}';c.lineWidth={Thickness};c.stroke(new Path2D('{Points}'));");
    }

    internal sealed record Shape(string Points, string Fill, string Line = "none", float Thickness = 0) : Drawn
    {
        public override Drawn In(string colour) => this with { Fill = Fill == "none" ? Fill : colour, Line = Line == "none" ? Line : colour };

        public override SKPath Outline
        {
            get
            {
                using var shape = SKPath.ParseSvgPathData(Points);
                return Covered(shape, Fill != "none", Line == "none" ? 0 : Thickness, SKStrokeCap.Butt);
            }
        }

        public override string Svg => N($"<path d='{Points}' fill='{Fill}' stroke='{Line}' stroke-width='{Thickness}'/>");

        public override string Canvas => N($"c.setLineDash([]);c.fillStyle='{(Fill == "none" ? "#0000" : Fill)}';c.fill(new Path2D('{Points}'));c.strokeStyle='{(Line == "none" ? "#0000" : Line)}';c.lineWidth={Math.Max(Thickness, 0.01f)};c.stroke(new Path2D('{Points}'));");

        public static string Circle(float x, float y, float radius) =>
            N($"M{x - radius} {y}a{radius} {radius} 0 1 0 {2 * radius} 0a{radius} {radius} 0 1 0 {-2 * radius} 0Z");
    }

    internal sealed record Letter(float X, float Y, float Size, string Font, int Weight, string Colour, string Text) : Drawn
    {
        public override Drawn In(string colour) => this with { Colour = colour };

        public override string Svg => N($"<text x='{X}' y='{Y}' font-size='{Size}' font-family='{Font}' font-weight='{Weight}' fill='{Colour}' text-anchor='middle' dominant-baseline='central'>{Text}</text>");

        public override string Canvas => N($"c.fillStyle='{Colour}';c.font='{Weight} {Size}px {Font}';c.textAlign='center';c.textBaseline='middle';c.fillText('{Text}',{X},{Y});");
    }
}
