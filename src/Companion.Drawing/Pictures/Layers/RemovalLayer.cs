namespace Companion.Drawing.Pictures.Layers;

/// <summary>The candidates that go.</summary>
internal sealed class RemovalLayer : ILayer
{
    public IEnumerable<Shape> ShapesOf(Exhibit exhibit)
    {
        foreach (var candidate in exhibit.Removes)
        {
            var (x, y) = CandidatePlace.Of(candidate);
            yield return new SlashShape(x, y, candidate.Digit.Value);
        }
    }
}
