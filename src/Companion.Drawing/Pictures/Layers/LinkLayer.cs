namespace Companion.Drawing.Pictures.Layers;

/// <summary>The links of the pattern, bent where they would run through something else.</summary>
internal sealed class LinkLayer : ILayer
{
    public IEnumerable<Shape> ShapesOf(Exhibit exhibit)
    {
        var routes = new LinkRoutes(exhibit);
        return exhibit.Links.Select(routes.Next);
    }
}
