namespace Companion.Sight.Tests.Boards;

/// <summary>Styles made at random; the same seed gives the same one.</summary>
internal static class BoardStyles
{
    // Letters smaller than this cannot be told apart once they have been through lossy compression, in pixels of the picture.
    private const float SmallestLossless = 12, SmallestLossy = 15;

    private static readonly (int Width, int Height)[] _screens = [(1280, 720), (1366, 768), (1920, 1080), (1600, 1260)];
    private static readonly float[] _scales = [1, 1, 1, 1.25f, 1.5f, 2];

    public static BoardStyle Of(int seed, IReadOnlyList<string> fonts)
    {
        var random = new Random(seed);
        bool Chance(double part) => random.NextDouble() < part;
        float Between(double from, double to) => (float)(from + random.NextDouble() * (to - from));
        var (width, height) = _screens[random.Next(_screens.Length)];
        var scale = _scales[random.Next(_scales.Length)];
        var most = (int)Math.Min(height - 60, 1200 / scale);
        var side = (int)Math.Max(300 / scale, Between(300 / scale, most + 1));
        var encoding = random.Next(4) switch
        {
            0 => new Encoding("png", 100),
            1 => new("webp", random.Next(60, 100)),
            _ => new("jpeg", random.Next(50, 96)),
        };
        var smallest = (encoding.Format == "png" ? SmallestLossless : SmallestLossy) / scale;
        var marks = (MarkPlaces)random.Next(4);
        var largestMark = marks switch { MarkPlaces.Candidates => 0.31f, MarkPlaces.CentreRow => 0.3f, _ => 0.34f };
        if (smallest > largestMark * side / 9)
            marks = MarkPlaces.None;
        var cellLine = random.Next(1, 3);
        var hasBold = side > 500 && Chance(0.3);
        var weights = Chance(0.4) ? (400, 400) : Chance(0.7) ? (700, 400) : (700, 700);
        var font = fonts[random.Next(fonts.Count)];
        return new()
        {
            Seed = seed,
            Technique = (Technique)random.Next(4),
            Side = side,
            Scale = scale,
            Width = width,
            Height = height,
            Left = random.Next(20, Math.Max(21, width - side - 20)),
            Top = random.Next(20, Math.Max(21, height - side - 20)),
            Colours = BoardColours.Of(random),
            CellLine = cellLine,
            BlockLine = cellLine + random.Next(1, hasBold ? 5 : 3),
            Border = random.Next(5) == 0 ? 0 : random.Next(1, 6),
            Rounding = Chance(0.3) ? random.Next(4, 14) : 0,
            DigitFont = font,
            MarkFont = Chance(0.7) ? font : fonts[random.Next(fonts.Count)],
            DigitSize = Between(0.55, 0.82),
            MarkSize = Math.Max(Between(0.2, largestMark), smallest / (side / 9f)),
            GivenWeight = weights.Item1,
            EnteredWeight = weights.Item2,
            Marks = marks,
            Strike = Chance(0.75) ? Strike.None : (Strike)random.Next(1, 3),
            ShadesHouses = Chance(0.35),
            Selection = random.Next(3),
            HasFills = Chance(0.3),
            HasThermos = Chance(0.2),
            HasCages = Chance(0.15),
            HasCircles = Chance(0.15),
            HasPointer = Chance(0.15),
            HasSurroundings = Chance(0.7),
            Encoding = encoding,
        };
    }
}
