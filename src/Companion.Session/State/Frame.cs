namespace Companion.Session.State;

/// <summary>Where the board lies in the picture of a scene, as fractions of the overlay's width and height, 0 to 1.</summary>
/// <param name="Left">Left edge, from the left.</param>
/// <param name="Top">Top edge, from the top.</param>
/// <param name="Width">Width, more than 0.</param>
/// <param name="Height">Height, more than 0.</param>
public sealed record Frame(double Left, double Top, double Width, double Height)
{
    /// <summary>A square board in the middle of a picture of 16 by 9.</summary>
    /// <param name="height">Its height as a fraction of the picture's, more than 0 and at most 1.</param>
    public static Frame Centred(double height)
    {
        var width = height * 9 / 16;
        return new((1 - width) / 2, (1 - height) / 2, width, height);
    }
}
