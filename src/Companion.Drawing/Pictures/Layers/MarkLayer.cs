using Companion.Engine;

namespace Companion.Drawing.Pictures.Layers;

/// <summary>The candidates of the pattern, but for those over which a slash or a lozenge is drawn.</summary>
internal sealed class MarkLayer : ILayer
{
    public IEnumerable<Shape> ShapesOf(Exhibit exhibit)
    {
        var ends = CandidateSet.Of([.. exhibit.Links.SelectMany(link => new[] { link.From, link.To })]);
        foreach (var candidate in (exhibit.Candidates | ends) - exhibit.Removes)
        {
            if (exhibit.Places.Cells.Contains(candidate.Cell))
                continue;
            var (x, y) = CandidatePlace.Of(candidate);
            yield return new MarkShape(x, y, candidate.Digit.Value);
        }
    }
}
