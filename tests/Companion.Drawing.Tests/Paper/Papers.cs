using Companion.Drawing.Paper;
using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Drawing.Tests.Paper;

/// <summary>Documents to print.</summary>
internal static class Papers
{
    // Of our own generator.
    internal static readonly Board Board = Board.Parse("45...9....8..5.4.31....48..6..9......7..1..9......2..8..61....25.2.9..4....4...35");

    internal static readonly Wording Wording = new(Phrases.Parse(File.ReadAllText(Repository.File("configs/phrases/en.json"))));

    /// <summary>A document with a block of every kind.</summary>
    internal static PaperDocument Whole(PaperSize size) => new("Evening at the signal station", size,
    [
        new FigureWithWords(Figure.Of(Board, withMarks: false), ["What stands beside the board.", "And once more."]),
        new Heading("Singles in the top band", "0:25", "1:05"),
        new Paragraph("Words that run over more than a line, as those of a presenter do who has much to say about a board that says little."),
        new Steps(9, [new("The ninth step."), new("The tenth, with all there is.", "gate", "Breathe.", First())]),
        new Points(["One point.", "Another point."]),
        new PageBreak(),
        new FigureGrid(2, 3, [.. Enumerable.Range(1, 7).Select(number => new Tile($"{number} of seven", Figure.Of(Board, withMarks: true), "Below."))]),
    ])
    {
        Author = "A. Setter",
    };

    internal static PaperDocument Of(params PaperBlock[] blocks) => new("Title", PaperSize.A4, [.. blocks]);

    internal static Figure First()
    {
        var deduction = Ladder.Standard.Easiest(Board)!;
        return Figure.Of(Board, Wording.HintsFor(Board, deduction).Why, withMarks: true);
    }

    /// <summary>The words of a board: the numbers of rows and columns and the digits, in the order in which they are drawn.</summary>
    internal static string OnBoard(Figure figure) => string.Concat(
        figure.Cells.Select(cell => cell.Digit?.ToString() ?? string.Concat(cell.CellMark ?? default))
            .Concat(Enumerable.Range(1, 9).Select(number => $"r{number}c{number}")));
}
