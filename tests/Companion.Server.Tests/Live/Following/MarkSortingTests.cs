using System.Collections.Immutable;
using Companion.Engine;
using Companion.Server.Live.Following;
using Companion.Session.Following;
using Companion.Sight;

namespace Companion.Server.Tests.Live.Following;

/// <summary>Small digits by their places, as programs commonly set them.</summary>
public sealed class MarkSortingTests
{
    // Digits with the places of their middles, in hundredths of the cell; what they are.
    [Theory]
    [InlineData("4 15 15", "4", "")] // alone in a corner
    [InlineData("1 15 15; 5 85 15; 6 15 85; 9 85 85", "1569", "")]
    [InlineData("1 15 15; 2 85 15; 3 15 85; 4 85 85; 6 50 15; 7 50 85; 8 15 50; 9 85 50", "12346789", "")] // and along the edges
    [InlineData("5 50 50", "", "5")]
    [InlineData("2 42 50; 7 58 50", "", "27")]
    [InlineData("1 20 50; 2 35 50; 4 50 50; 6 65 50; 8 80 50", "", "12468")] // from edge to edge
    [InlineData("4 15 15; 4 85 85; 2 42 50; 7 58 50", "4", "27")] // both at once
    public void By_place(string marks, string block, string list)
    {
        var cell = Cell(marks);

        Assert.Equal(new CellContent(null, DigitSet.Parse(block), DigitSet.Parse(list)), MarkSorting.Content(cell, hasCandidatePlaces: false));
        Assert.NotEqual(true, MarkSorting.HasCandidatePlaces(Board(cell)));
    }

    [Theory]
    [InlineData("1 17 17; 2 50 17; 6 83 50; 9 83 83")]
    [InlineData("1 22 22; 2 50 22; 6 78 50; 9 78 78")] // set in from the edges
    [InlineData("8 50 83")]
    public void A_place_for_each_candidate(string marks)
    {
        var cell = Cell(marks);
        var content = MarkSorting.Content(cell, hasCandidatePlaces: true);

        Assert.True(MarkSorting.HasCandidatePlaces(Board(cell)));
        Assert.Equal((0, cell.Marks.Length), (content.BlockMarks.Count, content.CellMark.Count));
    }

    [Theory]
    [InlineData("")]
    [InlineData("1 15 15")]
    [InlineData("1 15 15; 3 85 15")]
    [InlineData("5 50 50")]
    public void Some_say_nothing_about_it(string marks) => Assert.Null(MarkSorting.HasCandidatePlaces(Board(Cell(marks))));

    [Fact]
    public void A_struck_mark_stays_in_its_list()
    {
        var cell = new CellReading(default, null, null, null, [Readings.Mark(2, 0.4f, 0.5f, isStruck: true), Readings.Mark(7, 0.6f, 0.5f)], 1);

        Assert.Equal(new CellContent(null, default, DigitSet.Parse("27"), DigitSet.Parse("2")), MarkSorting.Content(cell, hasCandidatePlaces: false));
    }

    private static CellReading Cell(string marks) => new(default, null, null, null, [.. Marks(marks)], Certainty: 1);

    private static IEnumerable<MarkReading> Marks(string marks) => marks.Split("; ", StringSplitOptions.RemoveEmptyEntries)
        .Select(mark => mark.Split(' ')).Select(parts => Readings.Mark(int.Parse(parts[0]), int.Parse(parts[1]) / 100f, int.Parse(parts[2]) / 100f));

    private static BoardReading Board(CellReading cell) => new([cell, .. Enumerable.Range(1, Engine.Cell.Count - 1).Select(index =>
        new CellReading(Engine.Cell.At(index), null, null, null, ImmutableArray<MarkReading>.Empty, Certainty: 1))]);
}
