using System.Collections.Concurrent;
using Companion.Drawing.Pictures;
using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Drawing.Tests.Pictures;

/// <summary>What holds of every picture, looked at on all deductions that are open while whole puzzles are worked.</summary>
public class EveryPictureTests
{
    // From P. Norvig's essay "Solving Any Sudoku Puzzle" (grid1), the SWI-Prolog manual (clpfd, problem 1), and the code that
    // goes with Russell & Norvig's textbook (easy example).
    public static TheoryData<string> Puzzles =>
    [
        "530070000600195000098000060800060003400803001700020006060000280000419005000080079",
        "000000000000003085001020000000507000004000100090000000500000073002010000000040009",
        "003020600900305001001806400008102900700000008006708200002609500800203009005010300",
    ];

    private static readonly ConcurrentDictionary<string, List<Picture>> Pictures = new();

    [Theory]
    [MemberData(nameof(Puzzles))]
    public void Every_shape_lies_within_the_board(string puzzle) => Assert.All(PicturesOf(puzzle).SelectMany(its => its.Shapes), shape =>
    {
        var (left, top, right, bottom) = BoundsOf(shape);
        Assert.True(left >= 0 && top >= 0 && right <= 9 && bottom <= 9, $"{shape}");
    });

    [Theory]
    [MemberData(nameof(Puzzles))]
    public void No_candidate_is_drawn_twice(string puzzle) => Assert.All(PicturesOf(puzzle), picture =>
    {
        var marks = picture.Shapes.OfType<MarkShape>().Select(mark => (mark.X, mark.Y));
        var slashes = picture.Shapes.OfType<SlashShape>().Select(slash => (slash.X, slash.Y));
        var places = marks.Concat(slashes).ToList();
        Assert.Equal(places.Count, places.Distinct().Count());

        var lozenges = picture.Shapes.OfType<LozengeShape>().Select(its => PictureText.CellAt(its.X, its.Y)).ToHashSet();
        Assert.DoesNotContain(places, place => lozenges.Contains(PictureText.CellAt(place.X, place.Y)));
    });

    [Theory]
    [MemberData(nameof(Puzzles))]
    public void What_must_be_read_lies_above_what_guides_the_eye(string puzzle)
    {
        Type[] order =
        [
            typeof(HouseShape),
            typeof(CellShape),
            typeof(GroupShape),
            typeof(LinkShape),
            typeof(MarkShape),
            typeof(SlashShape),
            typeof(LozengeShape),
        ];

        Assert.All(PicturesOf(puzzle), picture =>
        {
            var ranks = picture.Shapes.Select(shape => Array.IndexOf(order, shape.GetType())).ToList();
            Assert.Equal(ranks.Order(), ranks);
        });
    }

    private static List<Picture> PicturesOf(string puzzle) => Pictures.GetOrAdd(puzzle, static puzzle =>
    {
        var pictures = new List<Picture>();
        var board = Board.Parse(puzzle);
        for (var found = Ladder.Standard.Scan(board); found.Count > 0; found = Ladder.Standard.Scan(board))
        {
            foreach (var hints in found.Select(deduction => Standing.HintsOf(board, deduction)))
                pictures.AddRange(Enum.GetValues<Grade>().Select(grade => PictureOf.Hint(hints[grade])));

            // All of them at once, or the same deductions would be drawn again at every step.
            foreach (var deduction in found.Where(deduction => board.Candidates.ContainsAll(deduction.Places)))
                board = board.Apply(deduction);
        }

        Assert.True(pictures.Count > 100);
        return pictures;
    });

    private static (double Left, double Top, double Right, double Bottom) BoundsOf(Shape shape) => shape switch
    {
        HouseShape house => (house.X, house.Y, house.X + house.Width, house.Y + house.Height),
        CellShape cell => (cell.X, cell.Y, cell.X + 1, cell.Y + 1),
        GroupShape group => Around([new(group.X1 - 0.2, group.Y1 - 0.2), new(group.X2 + 0.2, group.Y2 + 0.2)]),
        LinkShape link => Around(new Curve(new(link.X1, link.Y1), new(link.BendX, link.BendY), new(link.X2, link.Y2)).Points()),
        MarkShape mark => Around([new(mark.X - 0.14, mark.Y - 0.14), new(mark.X + 0.14, mark.Y + 0.14)]),
        SlashShape slash => Around([new(slash.X - 0.14, slash.Y - 0.14), new(slash.X + 0.14, slash.Y + 0.14)]),
        LozengeShape lozenge => Around([new(lozenge.X - 0.5, lozenge.Y - 0.5), new(lozenge.X + 0.5, lozenge.Y + 0.5)]),
        _ => throw new ArgumentException($"No bounds of {shape.GetType().Name}."),
    };

    private static (double, double, double, double) Around(IEnumerable<BoardPoint> points)
    {
        var all = points.ToList();
        return (all.Min(point => point.X), all.Min(point => point.Y), all.Max(point => point.X), all.Max(point => point.Y));
    }
}
