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
    private const int Columns = 2;
    private const int Rows = 3;

    // The small digits of a pattern are to be read too.
    private const int RowsOfAnswers = 2;

    /// <summary>The title of the document.</summary>
    public string Title => $"Practice: {wording.NameOf(rule)}";

    /// <summary>The blocks of the document: the positions, and the answers on pages of their own.</summary>
    public ImmutableArray<PaperBlock> Blocks =>
    [
        new Paragraph(Task),
        Grid(Rows, positions.Select((position, index) => new Tile($"{index + 1}", Figure.Of(position.Board, withMarks)))),
        new PageBreak(),
        new Heading($"{Title}, answers"),
        new Paragraph(wording.Explain(rule)),
        Grid(RowsOfAnswers, positions.Select(Answer)),
    ];

    /// <summary>What is said of an answer: why it holds, and whether there are more.</summary>
    /// <param name="position">The position.</param>
    public string Words(PracticePosition position) => position.Others switch
    {
        null or 0 => Hint(position).Words.Spoken,
        1 => $"{Hint(position).Words.Spoken} One more of this rule is open here.",
        { } others => $"{Hint(position).Words.Spoken} {others} more of this rule are open here.",
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
        Words(position));

    private static FigureGrid Grid(int rows, IEnumerable<Tile> tiles) => new(Columns, rows, [.. tiles]);
}
