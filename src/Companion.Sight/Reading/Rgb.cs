namespace Companion.Sight.Reading;

/// <summary>A colour, each part from 0 to 255.</summary>
/// <param name="Red">Red.</param>
/// <param name="Green">Green.</param>
/// <param name="Blue">Blue.</param>
internal readonly record struct Rgb(float Red, float Green, float Blue)
{
    /// <summary>The colour of a pixel.</summary>
    /// <param name="pixel">Red, green and blue from its lowest byte up, as four bytes of a <see cref="Frame"/> are read.</param>
    public static Rgb Of(uint pixel) => new(pixel & 0xFF, pixel >> 8 & 0xFF, pixel >> 16 & 0xFF);

    /// <summary>How far two colours are apart: the greatest difference of a part.</summary>
    /// <param name="other">The other one.</param>
    public float Distance(Rgb other) =>
        Math.Max(Math.Abs(Red - other.Red), Math.Max(Math.Abs(Green - other.Green), Math.Abs(Blue - other.Blue)));

    /// <summary>How far it is from the nearest mixture of two colours.</summary>
    /// <param name="first">The one.</param>
    /// <param name="second">The other.</param>
    public float DistanceToMix(Rgb first, Rgb second)
    {
        var along = second - first;
        var length = along.Dot(along);
        var part = length == 0 ? 0 : Math.Clamp((this - first).Dot(along) / length, 0, 1);
        return Distance(first + along * part);
    }

    public static Rgb operator +(Rgb a, Rgb b) => new(a.Red + b.Red, a.Green + b.Green, a.Blue + b.Blue);

    public static Rgb operator -(Rgb a, Rgb b) => new(a.Red - b.Red, a.Green - b.Green, a.Blue - b.Blue);

    public static Rgb operator *(Rgb a, float by) => new(a.Red * by, a.Green * by, a.Blue * by);

    /// <summary>The sum of the products of their parts.</summary>
    /// <param name="other">The other one.</param>
    public float Dot(Rgb other) => Red * other.Red + Green * other.Green + Blue * other.Blue;
}
