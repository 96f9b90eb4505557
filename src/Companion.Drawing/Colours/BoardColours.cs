namespace Companion.Drawing.Colours;

/// <summary>The greys of one board. They carry no meaning that weight and place do not carry too.</summary>
/// <param name="Surround">Behind and around the board.</param>
/// <param name="Panel">The plate of the words beside the board.</param>
/// <param name="Cell">An open cell, or one with a placed digit.</param>
/// <param name="GivenCell">A cell with a given.</param>
/// <param name="ThinLine">Between cells.</param>
/// <param name="ThickLine">Between blocks and round the board.</param>
/// <param name="Given">A given.</param>
/// <param name="Placed">A digit that the presenter placed.</param>
/// <param name="Mark">A digit of a block mark or cell mark.</param>
/// <param name="Words">Words.</param>
/// <param name="QuietWords">Words of less weight, and the numbers of rows and columns.</param>
public sealed record BoardColours(
    Colour Surround,
    Colour Panel,
    Colour Cell,
    Colour GivenCell,
    Colour ThinLine,
    Colour ThickLine,
    Colour Given,
    Colour Placed,
    Colour Mark,
    Colour Words,
    Colour QuietWords);
