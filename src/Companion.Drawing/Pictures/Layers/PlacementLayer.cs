namespace Companion.Drawing.Pictures.Layers;

/// <summary>The digits that follow.</summary>
internal sealed class PlacementLayer : ILayer
{
    public IEnumerable<Shape> ShapesOf(Exhibit exhibit)
    {
        foreach (var (cell, digit) in exhibit.Places)
        {
            var (x, y) = CandidatePlace.MiddleOf(cell);
            yield return new LozengeShape(x, y, digit.Value);
        }
    }
}
