using System.Collections.Immutable;
using Companion.Drawing.Paper;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;

namespace Companion.Server.Planning;

/// <summary>A sheet of positions to practise a rule on, and after them the answers.</summary>
/// <param name="rule">The rule.</param>
/// <param name="positions">The positions.</param>
/// <param name="withMarks">Whether the candidates that still stand are written in the open cells.</param>
/// <param name="wording">The words.</param>
internal sealed class PracticeSheet(RuleId rule, ImmutableArray<PracticePosition> positions, bool withMarks, Wording wording)
{
    // The answers to a page of positions stand on a page: of a pattern fewer digits are written than of a position, and words below.
    private const int Columns = 2;
    private const int Rows = 3;
    private const int ColumnsOfAnswers = 3;
    private const int RowsOfAnswers = 2;

    /// <summary>The title of the document.</summary>
    public string Title => $"Practice: {wording.NameOf(rule)}";

    /// <summary>The blocks of the document: the positions, and the answers on pages of their own.</summary>
    public ImmutableArray<PaperBlock> Blocks =>
    [
        new Paragraph(Task),
        new FigureGrid(Columns, Rows, [.. positions.Select((position, index) => new Tile($"{index + 1}", Figure.Of(position.Board, withMarks)))]),
        new PageBreak(),
        new Heading($"{Title}, answers"),
        new Paragraph(wording.Explain(rule)),
        new FigureGrid(ColumnsOfAnswers, RowsOfAnswers, [.. positions.Select(Answer)]),
    ];

    /// <summary>Why an answer holds, and whether there are more.</summary>
    /// <param name="position">The position.</param>
    public string Proof(PracticePosition position) => wording.ToRead(position.Answer) + position.Others switch
    {
        null or 0 => "",
        1 => " One more of this rule is open here.",
        { } others => $" {others} more of this rule are open here.",
    };

    /// <summary>The answer with why it holds.</summary>
    /// <param name="position">The position.</param>
    public WhyHint Hint(PracticePosition position) => wording.HintsFor(position.Board, position.Answer).Why;

    private string Task =>
        $"In each position look for {wording.OneOf(rule)}. It is open there, and nothing easier is. "
        + (withMarks ? "Small digits are the candidates that still stand." : "All candidates that the digits leave still stand.");

    private Tile Answer(PracticePosition position, int index) => new(
        position.Source.Length > 0 ? $"{index + 1} ({position.Source})" : $"{index + 1}",
        Figure.Of(position.Board, Hint(position), withMarks: false),
        Proof(position));
}
