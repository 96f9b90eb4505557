namespace Companion.Sight.Tests.Boards;

internal enum Technique { Table, Cards, Svg, Canvas }

internal enum MarkPlaces { None, Corners, CentreRow, Candidates }

internal enum Strike { None, Level, Diagonal }

/// <summary>How a board looks: everything a page of anybody's making may choose.</summary>
internal sealed record BoardStyle
{
    public required int Seed { get; init; }
    public required Technique Technique { get; init; }

    /// <summary>The board's side in pixels of the page.</summary>
    public required int Side { get; init; }

    /// <summary>Pixels of the picture to one of the page.</summary>
    public required float Scale { get; init; }
    public required int Width { get; init; }
    public required int Height { get; init; }
    public required int Left { get; init; }
    public required int Top { get; init; }
    public required BoardColours Colours { get; init; }
    public required int CellLine { get; init; }
    public required int BlockLine { get; init; }
    public required int Border { get; init; }
    public required int Rounding { get; init; }
    public required string DigitFont { get; init; }
    public required string MarkFont { get; init; }

    /// <summary>Sizes of the letters as parts of the cell.</summary>
    public required float DigitSize { get; init; }
    public required float MarkSize { get; init; }
    public required int GivenWeight { get; init; }
    public required int EnteredWeight { get; init; }
    public required MarkPlaces Marks { get; init; }
    public required Strike Strike { get; init; }

    /// <summary>Row, column and block of the selected cell shaded.</summary>
    public required bool ShadesHouses { get; init; }

    /// <summary>0 none, 1 filled, 2 framed.</summary>
    public required int Selection { get; init; }

    /// <summary>Cells filled with colours, with gradients too.</summary>
    public required bool HasFills { get; init; }
    public required bool HasThermos { get; init; }
    public required bool HasCages { get; init; }
    public required bool HasCircles { get; init; }
    public required bool HasPointer { get; init; }

    /// <summary>Text, a keypad, a table and frames beside the board.</summary>
    public required bool HasSurroundings { get; init; }
    public required Encoding Encoding { get; init; }

    public float Cell => Side / 9f;

    /// <summary>Whether givens and entered digits differ to the eye.</summary>
    public bool TellsGivens => Colours.Given != Colours.Entered || GivenWeight != EnteredWeight;
}

/// <summary>How the picture is stored.</summary>
/// <param name="Format">png, jpeg or webp.</param>
/// <param name="Quality">1 to 100, where it matters.</param>
internal readonly record struct Encoding(string Format, int Quality);
