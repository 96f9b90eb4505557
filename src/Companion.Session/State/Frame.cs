namespace Companion.Session.State;

/// <summary>Where the board lies in the picture of a scene, as fractions of the overlay's width and height, 0 to 1.</summary>
/// <param name="Left">Left edge, from the left.</param>
/// <param name="Top">Top edge, from the top.</param>
/// <param name="Width">Width, more than 0.</param>
/// <param name="Height">Height, more than 0.</param>
public sealed record Frame(double Left, double Top, double Width, double Height);
