using Companion.Drawing.Pictures;
using Companion.Drawing.Pictures.Layers;
using Companion.Engine;
using Companion.Engine.Proofs;

namespace Companion.Drawing.Tests.Pictures;

public class LinkTests
{
    [Fact]
    public void A_link_with_nothing_in_its_way_is_straight()
    {
        var link = Assert.Single(Drawn("r2c3=7 r2c6=7", "r2c3=7~r2c6=7"));

        Assert.Equal((link.X1 + link.X2) / 2, link.BendX, 9);
        Assert.Equal((link.Y1 + link.Y2) / 2, link.BendY, 9);
    }

    [Theory]
    [InlineData("r5c1=5 r5c5=5 r5c9=5", "r5c1=5~r5c9=5")]
    [InlineData("r1c2=8 r5c2=8 r9c2=8", "r1c2=8~r9c2=8")]
    [InlineData("r1c1=3 r1c4=3 r1c7=3", "r1c1=3~r1c7=3")]
    [InlineData("r2c2=5 r4c4=5 r8c8=5", "r2c2=5~r8c8=5")]
    public void A_link_goes_round_a_cell_of_the_pattern_between_its_ends(string pattern, string links)
    {
        var between = Candidate.Parse(pattern.Split(' ')[1]).Cell;

        var link = Assert.Single(Drawn(pattern, links));

        Assert.All(PointsOf(link), point => Assert.NotEqual(between, PictureText.CellAt(point.X, point.Y)));
    }

    [Theory]
    [InlineData("r5c1=7 r5c2=7 r5c8=7 r5c9=7", "r5c1=7~r5c8=7 r5c2=7~r5c9=7")]
    [InlineData("r1c3=3 r6c3=3", "r1c3=3~r6c3=3 r6c3=3~r1c3=3")]
    public void Links_on_one_line_do_not_lie_on_each_other(string pattern, string links)
    {
        var drawn = Drawn(pattern, links);
        var (first, second, ends) = (drawn[0], drawn[1], drawn.SelectMany(EndsOf).ToList());

        // They may cross, and they meet at a common end; what is not told apart is shorter than a third of a cell.
        var common = PointsOf(first).Count(point => ends.All(end => end.DistanceTo(point) > 0.5)
            && PointsOf(second).Any(its => its.DistanceTo(point) < 0.08));
        Assert.InRange(common, 0, 3);
    }

    [Theory]
    [InlineData("r4c4=45", "r4c4=4~r4c4=5")]
    [InlineData("r1c1=12", "r1c1=1~r1c1=2")]
    [InlineData("r9c9=69", "r9c9=6~r9c9=9")]
    public void A_link_within_a_cell_shows_beside_the_plates(string pattern, string links)
    {
        var link = Assert.Single(Drawn(pattern, links));

        var shown = PointsOf(link).Where(point => EndsOf(link).All(end => end.DistanceTo(point) > CandidatePlace.PlateRadius + 0.03));
        Assert.True(shown.Count() >= 2);
    }

    [Fact]
    public void The_same_links_are_drawn_the_same_way()
    {
        const string Pattern = "r1c1=5 r1c5=5 r1c9=5 r9c9=5";
        const string Links = "r1c1=5~r1c9=5 r1c1=5~r1c5=5 r1c9=5~r9c9=5";

        Assert.Equal(Drawn(Pattern, Links), Drawn(Pattern, Links));
    }

    private static List<LinkShape> Drawn(string pattern, string links)
    {
        var candidates = Standing.Board(pattern).Candidates;
        return [.. new LinkLayer().ShapesOf(new Exhibit("")
        {
            Cells = [.. candidates.Cells.Select(cell => new PatternCell(cell, Role.Base))],
            Candidates = candidates,
            Links = [.. links.Split(' ').Select(Link)],
        }).Cast<LinkShape>()];
    }

    private static Link Link(string text)
    {
        var ends = text.Split('~');
        return new(Candidate.Parse(ends[0]), Candidate.Parse(ends[1]), IsStrong: true);
    }

    private static BoardPoint[] EndsOf(LinkShape link) => [new(link.X1, link.Y1), new(link.X2, link.Y2)];

    private static IEnumerable<BoardPoint> PointsOf(LinkShape link) =>
        new Curve(new(link.X1, link.Y1), new(link.BendX, link.BendY), new(link.X2, link.Y2)).Points();
}
