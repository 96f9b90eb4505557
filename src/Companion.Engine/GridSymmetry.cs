namespace Companion.Engine;

/// <summary>A turn of the grid, or a mirror in it, under which the cells of the givens may stay the same cells.</summary>
public enum GridSymmetry
{
    /// <summary>Turned upside down, by 180 degrees.</summary>
    HalfTurn,

    /// <summary>Turned by 90 degrees. Whatever stays the same under it stays so under <see cref="HalfTurn"/> too.</summary>
    QuarterTurn,

    /// <summary>Left and right changed over: the mirror is column 5.</summary>
    LeftRight,

    /// <summary>Top and bottom changed over: the mirror is row 5.</summary>
    TopBottom,

    /// <summary>Rows and columns changed over: the mirror is the diagonal from r1c1 to r9c9.</summary>
    FallingDiagonal,

    /// <summary>The mirror is the diagonal from r9c1 to r1c9.</summary>
    RisingDiagonal,
}
