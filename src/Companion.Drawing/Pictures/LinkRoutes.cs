using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Proofs;

namespace Companion.Drawing.Pictures;

/// <summary>
/// Finds a way for each link of a picture: the straight line, unless a bent one spoils less. What a line spoils is counted in
/// points along it, a tenth of a cell apart.
/// </summary>
internal sealed class LinkRoutes(Exhibit exhibit)
{
    // How far the middle of a link may stand off the straight line, in cells, in the order of preference.
    private static readonly ImmutableArray<double> Bows =
        [0, 0.22, -0.22, 0.4, -0.4, 0.6, -0.6, 0.9, -0.9, 1.3, -1.3, 1.8, -1.8, 2.4, -2.4];

    // Nearer than this to the middle of a plate or tab, a line is hidden by it or hides it.
    private const double Clear = CandidatePlace.PlateRadius + 0.05;

    // Nearer than this to the middle of a cell, a line may run through a digit; the picture does not know which cells are filled.
    private const double DigitRadius = 0.26;
    private const double DigitWeight = 0.3;

    // Nearer than this, two lines are not told apart.
    private const double Apart = 0.12;

    private readonly CellSet _cells = CellSet.Of([.. exhibit.Cells.Select(cell => cell.Cell)]);

    private readonly ImmutableArray<BoardPoint> _plates =
    [
        .. (exhibit.Candidates | exhibit.Removes).Select(CandidatePlace.Of),
        .. exhibit.Cells.Select(cell => CandidatePlace.CornerOf(cell.Cell)),
    ];

    private readonly List<Curve> _drawn = [];

    /// <summary>The way of the next link, which keeps clear of those before it.</summary>
    internal LinkShape Next(Link link)
    {
        var (from, to) = (CandidatePlace.Of(link.From), CandidatePlace.Of(link.To));
        var foreign = _cells.Without(link.From.Cell).Without(link.To.Cell);
        var best = Curve.Bowed(from, to, Bows.MinBy(bow => Spoilt(Curve.Bowed(from, to, bow), foreign) + Math.Abs(bow)));
        _drawn.Add(best);
        return new(from.X, from.Y, to.X, to.Y, best.Control.X, best.Control.Y, link.IsStrong);
    }

    private double Spoilt(Curve way, CellSet foreign)
    {
        var (spoilt, seen) = (0.0, 0);
        foreach (var point in way.Points())
        {
            if (point.X is < 0 or > 9 || point.Y is < 0 or > 9)
                return double.PositiveInfinity;
            if (Math.Min(point.DistanceTo(way.From), point.DistanceTo(way.To)) < Clear)
                continue;
            seen++;
            var cell = Cell.Of(1 + (int)Math.Min(point.Y, 8.99), 1 + (int)Math.Min(point.X, 8.99));
            if (foreign.Contains(cell))
                spoilt++;
            if (!_cells.Contains(cell) && CandidatePlace.MiddleOf(cell).DistanceTo(point) < DigitRadius)
                spoilt += DigitWeight;
            if (_plates.Any(plate => plate.DistanceTo(point) < Clear))
                spoilt++;
            if (_drawn.Any(other => other.Points().Any(its => its.DistanceTo(point) < Apart)))
                spoilt++;
        }

        // Between neighbouring candidates a straight line would lie under their plates.
        return seen >= 2 ? spoilt : spoilt + 10;
    }
}
