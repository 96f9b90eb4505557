namespace Companion.Drawing.Pictures.Layers;

/// <summary>The cells of the pattern with their roles.</summary>
internal sealed class CellLayer : ILayer
{
    public IEnumerable<Shape> ShapesOf(Exhibit exhibit)
    {
        var tabs = new Tabs();
        foreach (var (cell, role) in exhibit.Cells)
        {
            var corner = CandidatePlace.CornerOf(cell);
            yield return new CellShape(corner.X, corner.Y, Tabs.IsSecond(role), tabs.Next(role, exhibit.Sets, cell));
        }
    }
}
