using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Drawing.Tests.Pictures;

/// <summary>
/// Boards drawn as the candidates that stand, such as <c>r1c1=58 r1c4=58</c>, with no cell filled; or as a grid of digits.
/// </summary>
internal static class Standing
{
    private static readonly Wording Wording = new(Phrases.Parse(File.ReadAllText(Repository.File("configs/phrases/en.json"))));

    internal static Board Board(string standing)
    {
        if (!standing.Contains('r', StringComparison.Ordinal))
            return Engine.Board.Parse(standing);
        var candidates = CandidateSet.Empty;
        foreach (var word in standing.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries))
            candidates |= CandidateSet.Of(CellSet.Of(Cell.Parse(word[..4])), DigitSet.Parse(word[5..]));
        return Engine.Board.Blank.Remove(Engine.Board.Blank.Candidates - candidates);
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
