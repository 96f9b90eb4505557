using Companion.Engine.Proofs;

namespace Companion.Drawing.Pictures.Layers;

/// <summary>The houses or the chute to look at.</summary>
internal sealed class HouseLayer : ILayer
{
    public IEnumerable<Shape> ShapesOf(Exhibit exhibit) => exhibit.Regions.Select(Outline);

    private static HouseShape Outline(Region region)
    {
        var cells = region.Cells;
        var (first, last) = (cells.First, cells.Last());
        return new(first.Column - 1, first.Row - 1, last.Column - first.Column + 1, last.Row - first.Row + 1);
    }
}
