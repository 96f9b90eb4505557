using System.Collections.Immutable;
using Companion.Drawing.Pictures.Layers;
using Companion.Engine.Proofs;
using Companion.Session.Asks.Calls;
using Companion.Session.State;

namespace Companion.Drawing.Pictures;

/// <summary>Turns what goes on air into pictures.</summary>
public static class PictureOf
{
    // The lowest first: what must be read lies above what only guides the eye.
    private static readonly ImmutableArray<ILayer> Layers =
    [
        new HouseLayer(),
        new CellLayer(),
        new GroupLayer(),
        new LinkLayer(),
        new MarkLayer(),
        new RemovalLayer(),
        new PlacementLayer(),
    ];

    /// <summary>The picture of a hint, with nothing in it that the hint's grade does not give.</summary>
    /// <param name="hint">The hint.</param>
    public static Picture Hint(Hint hint)
    {
        ArgumentNullException.ThrowIfNull(hint);
        var exhibit = Exhibit.Of(hint);
        return new([.. Layers.SelectMany(layer => layer.ShapesOf(exhibit))], exhibit.Caption);
    }

    /// <summary>The picture of the cells that viewers call.</summary>
    /// <param name="cells">The cells.</param>
    /// <param name="caption">The words that go with them.</param>
    public static Picture Called(IEnumerable<CalledCell> cells, string caption)
    {
        ArgumentNullException.ThrowIfNull(cells);
        return new([.. cells.Select(ShapeOf)], caption);
    }

    private static CalledShape ShapeOf(CalledCell called)
    {
        var corner = CandidatePlace.CornerOf(called.Cell);
        return new(corner.X, corner.Y, CallBands.NameOf(called.AtLeast));
    }
}
