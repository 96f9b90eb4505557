namespace Companion.Drawing.Stills;

/// <summary>How large the small letters of a board are, in cells.</summary>
/// <param name="Mark">A block mark or cell mark.</param>
/// <param name="Number">The numbers of rows and columns; 0 where there are none.</param>
internal sealed record BoardLetters(double Mark, double Number)
{
    private const double UsualOnPlate = 0.235;

    /// <summary>
    /// How much larger than on a screen the plates of a picture are, with their digits and letters: 1 to 1.2, at which the plates of two
    /// neighbouring candidates still stand apart.
    /// </summary>
    internal double Plates { get; init; } = 1;

    /// <summary>The digit on the plate of a candidate; as a rule it grows with the plate, and larger ones reach over its edge.</summary>
    internal double OnPlate { get => field > 0 ? field : UsualOnPlate * Plates; init; }

    /// <summary>Whether the tabs of the cells of a pattern have their letters, which grow with the plates.</summary>
    internal bool HasTabLetters { get; init; } = true;

    /// <summary>As on a screen; marks have the size of the candidates in pictures.</summary>
    internal static BoardLetters Usual { get; } = new(0.215, 0.24);

    /// <summary>The same without numbers of rows and columns.</summary>
    internal static BoardLetters WithoutNumbers { get; } = Usual with { Number = 0 };
}
