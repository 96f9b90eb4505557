using System.Collections.Immutable;
using Companion.Sight.Reading;
using Companion.Sight.Tests.Digits;
using Companion.Sight.Training.Boards;

namespace Companion.Sight.Tests.Reading;

/// <summary>Painted boards with many lines and pointers, read with and without looking at unsure cells as a whole.</summary>
public sealed class WholeCellsTests
{
    private static readonly Lazy<(PaintedBoard Board, BoardReading Without, BoardReading With)[]> Boards = new(() =>
    {
        const int First = 40, Count = 30;
        var families = HeldOutFonts.Families.ToDictionary(family => family.Name);
        return [.. Enumerable.Range(First, Count).AsParallel().AsOrdered().Select(seed =>
        {
            var board = PaintedBoard.Of(seed, families);
            return (board, Read(board, null), Read(board, CellReader.Standard));
        })];
    });

    private static IEnumerable<(CellReading Without, CellReading With)> Pairs => Boards.Value.SelectMany(board => board.Without.Cells.Zip(board.With.Cells));

    [Fact]
    public void What_is_sure_stays_what_it_is() =>
        Assert.All(Pairs.Where(pair => !pair.Without.IsUnsure), pair => Assert.Equal(Text(pair.Without), Text(pair.With)));

    [Fact]
    public void Nothing_becomes_surer()
    {
        Assert.All(Pairs, pair => Assert.Equal(pair.Without.Certainty, pair.With.Certainty));
        Assert.All(Pairs, pair => Assert.All(pair.With.Marks, mark => Assert.True(
            mark.Certainty <= (pair.Without.Marks.FirstOrDefault(other => other.Digit == mark.Digit)?.Certainty ?? Siblings.Doubted))));
    }

    // It would count as a cell without a big digit.
    [Fact]
    public void Where_something_as_large_as_a_digit_was_not_read_no_marks_are_proposed()
    {
        var unread = Pairs.Where(pair => pair.Without is { Digit: null, Glyph: not null, Marks.IsEmpty: true }).ToList();

        Assert.NotEmpty(unread);
        Assert.All(unread, pair => Assert.Empty(pair.With.Marks));
    }

    [Fact]
    public void More_of_what_is_proposed_is_right()
    {
        var all = Boards.Value.SelectMany(board => Truth(board.Board).Select((truth, index) => (truth, Without: Text(board.Without.Cells[index]), With: Text(board.With.Cells[index])))).ToList();

        var (mended, broken) = (all.Count(cell => cell.Without != cell.truth && cell.With == cell.truth), all.Count(cell => cell.Without == cell.truth && cell.With != cell.truth));

        Assert.True(mended >= 10 && broken <= mended / 5, $"{mended} mended, {broken} broken");
    }

    private static BoardReading Read(PaintedBoard board, CellReader? whole) =>
        BoardReader.Read(board.Frame, board.Place, glyphs => GlyphReader.Standard.Read(glyphs), SignReader.Standard, whole);

    private static ImmutableArray<string> Truth(PaintedBoard board)
    {
        var pieces = board.Pieces.ToLookup(piece => piece.Cell);
        return [.. Enumerable.Range(0, 81).Select(cell => Text(pieces[cell].Select(piece => (piece.Digit, piece.IsBig, piece.IsStruck))))];
    }

    private static string Text(CellReading cell) => Text(
        cell.Digit is { } digit ? [(digit.Value, true, false)] : cell.Marks.Select(mark => (mark.Digit.Value, false, mark.IsStruck)));

    private static string Text(IEnumerable<(int Digit, bool IsBig, bool IsStruck)> digits) =>
        string.Join(' ', digits.OrderBy(one => one.Digit).Select(one => $"{(one.IsBig ? "big " : "")}{one.Digit}{(one.IsStruck ? "/" : "")}"));
}
