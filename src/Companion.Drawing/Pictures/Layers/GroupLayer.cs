using Companion.Engine;

namespace Companion.Drawing.Pictures.Layers;

/// <summary>The groups that links take as one candidate, each once.</summary>
internal sealed class GroupLayer : ILayer
{
    public IEnumerable<Shape> ShapesOf(Exhibit exhibit) => exhibit.Links
        .SelectMany(link => new[] { (Cells: link.FromGroup, link.From.Digit), (Cells: link.ToGroup, link.To.Digit) })
        .Where(group => !group.Cells.IsEmpty)
        .Distinct()
        .Select(group => Outline(group.Cells, group.Digit));

    private static GroupShape Outline(CellSet cells, Digit digit)
    {
        var (first, last) = (CandidatePlace.Of(new(cells.First, digit)), CandidatePlace.Of(new(cells.Last(), digit)));
        return new(first.X, first.Y, last.X, last.Y);
    }
}
