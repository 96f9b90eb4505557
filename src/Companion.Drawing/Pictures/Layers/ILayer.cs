namespace Companion.Drawing.Pictures.Layers;

/// <summary>Turns one kind of data into one kind of shape.</summary>
internal interface ILayer
{
    /// <summary>The shapes, in board units, in the order in which they are drawn.</summary>
    IEnumerable<Shape> ShapesOf(Exhibit exhibit);
}
