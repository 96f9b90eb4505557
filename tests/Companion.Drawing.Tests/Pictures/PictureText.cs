using Companion.Drawing.Pictures;
using Companion.Engine;

namespace Companion.Drawing.Tests.Pictures;

/// <summary>
/// Writes a picture as text, a line for each run of shapes of one kind. It reads places off the shapes by itself: a candidate is
/// told by which third of which cell its middle lies in.
/// </summary>
internal static class PictureText
{
    internal static string Of(Picture picture)
    {
        var lines = new List<string>();
        foreach (var (kind, place) in picture.Shapes.Select(KindAndPlace))
        {
            if (lines.Count > 0 && lines[^1].StartsWith(kind + ' ', StringComparison.Ordinal))
                lines[^1] += $" {place}";
            else
                lines.Add($"{kind} {place}");
        }

        return string.Join('\n', lines);
    }

    private static (string Kind, string Place) KindAndPlace(Shape shape) => shape switch
    {
        HouseShape house => ("house", Region(house)),
        CellShape cell => ($"cell {(cell.IsSecond ? "second" : "first")} {cell.Tab}", $"{CellAt(cell.X, cell.Y)}"),
        GroupShape group => ("group", $"{CandidateAt(group.X1, group.Y1)}~{CandidateAt(group.X2, group.Y2)}"),
        LinkShape link => (
            $"link {(link.IsStrong ? "strong" : "weak")}",
            $"{CandidateAt(link.X1, link.Y1)}~{CandidateAt(link.X2, link.Y2)}"),
        MarkShape mark => ("mark", Checked(mark.X, mark.Y, mark.Digit)),
        SlashShape slash => ("slash", Checked(slash.X, slash.Y, slash.Digit)),
        LozengeShape lozenge => ("lozenge", $"{CellAt(lozenge.X, lozenge.Y)}={lozenge.Digit}"),
        _ => throw new ArgumentException($"No text for {shape.GetType().Name}."),
    };

    internal static Cell CellAt(double x, double y) => Cell.Of(1 + (int)y, 1 + (int)x);

    internal static Candidate CandidateAt(double x, double y) =>
        new(CellAt(x, y), Digit.Of(1 + (int)(3 * (x - Math.Floor(x))) + 3 * (int)(3 * (y - Math.Floor(y)))));

    private static string Checked(double x, double y, int digit)
    {
        Assert.Equal(digit, CandidateAt(x, y).Digit.Value);
        return CandidateAt(x, y).ToString();
    }

    private static string Region(HouseShape house) => (house.Width, house.Height) switch
    {
        (9, 1) => $"r{house.Y + 1}",
        (1, 9) => $"c{house.X + 1}",
        (3, 3) => $"b{house.Y + house.X / 3 + 1}",
        (9, 3) => $"band{house.Y / 3 + 1}",
        (3, 9) => $"stack{house.X / 3 + 1}",
        _ => throw new ArgumentException($"{house} is no house."),
    };
}
