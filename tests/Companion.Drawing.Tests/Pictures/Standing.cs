using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Drawing.Tests.Pictures;

/// <summary>
/// Boards drawn as the candidates that stand, such as <c>r1c1=58 r1c4=58</c>, with no cell filled; or, after <c>all but</c>, as what
/// stands, or after a minus does not, in some cells, where all stands in the others; or as a grid of digits.
/// </summary>
internal static class Standing
{
    private const string AllBut = "all but ";

    private static readonly Wording Wording = new(Phrases.Parse(File.ReadAllText(Repository.File("configs/phrases/en.json"))));

    internal static Board Board(string standing)
    {
        if (!standing.Contains('r', StringComparison.Ordinal))
            return Engine.Board.Parse(standing);
        if (standing.StartsWith(AllBut, StringComparison.Ordinal))
            return Words(standing[AllBut.Length..]).Aggregate(Engine.Board.Blank, Narrow);
        var candidates = CandidateSet.Empty;
        foreach (var word in Words(standing))
            candidates |= CandidateSet.Of(CellSet.Of(Cell.Parse(word[..4])), DigitSet.Parse(word[5..]));
        return Engine.Board.Blank.Remove(Engine.Board.Blank.Candidates - candidates);
    }

    private static string[] Words(string text) => text.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries);

    private static Board Narrow(Board board, string word)
    {
        var gone = word[5] == '-' ? DigitSet.Parse(word[6..]) : ~DigitSet.Parse(word[5..]);
        return board.Remove(CandidateSet.Of(CellSet.Of(Cell.Parse(word[..4])), gone));
    }

    /// <summary>The hints of the first deduction that the rule finds on the board.</summary>
    internal static Hints HintsOf(string rule, string standing)
    {
        var (board, found) = (Board(standing), new Findings());
        Ladder.Whole.Rules.Single(its => its.Id.Value == rule).Find(board, found);
        return HintsOf(board, found[0]);
    }

    internal static Hints HintsOf(Board board, Deduction deduction) => Wording.HintsFor(board, deduction);
}
