using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Engine.Search;
using Route = Companion.Engine.Planning.Route;

namespace Companion.Server.Planning;

/// <summary>Says what vetting a puzzle found out.</summary>
internal static class VetSentences
{
    private const int MostCorrections = 12;

    // More cells in a sentence are not read.
    private const int MostRedundant = 20;

    // No puzzle with fewer givens has one solution: G. McGuire, B. Tugemann, G. Civario, "There Is No 16-Clue Sudoku" (2012).
    private const int FewestGivens = 17;

    /// <summary>The sentences in the order in which they are read: sound, shape, hardness, rules, featured rules, corrections.</summary>
    /// <param name="vetting">The vetting.</param>
    /// <param name="wording">The words.</param>
    public static IEnumerable<string> Of(Vetting vetting, Wording wording)
    {
        foreach (var fault in vetting.Faults)
            yield return fault.Sentence;
        if (vetting.Puzzle?.Board.IsFull == true)
        {
            yield return "The grid is full and right: nothing is left to solve.";
            yield break;
        }

        if (vetting.Route is { } route)
        {
            yield return $"One solution, {vetting.Givens.Count} givens, {Spare(vetting.Redundant, vetting.Givens.Count)}.";
            yield return Shape(vetting);
            yield return Hardness(PuzzleGrade.Of(route));
            yield return $"Rules, hardest first: {List(route.Rungs.Select(rung => Use(rung, route, wording)))}.";
        }

        foreach (var need in vetting.Needs)
            yield return Of(need, wording);
        if (vetting.Faults.Length > 0 && MayBeMistyped(vetting.Draft))
            yield return Corrections(vetting);
    }

    private static string Spare(CellSet redundant, int givens) => redundant.Count switch
    {
        0 => "minimal",
        1 => $"not minimal: the one in {redundant.First} follows from the others",
        var all when all == givens => "not minimal: each of them follows from the others",
        > MostRedundant and var many => $"not minimal: {many} of them follow, each by itself, from the others",
        _ => $"not minimal: each of those in {List(redundant.Select(cell => cell.ToString()))} follows from the others",
    };

    private static string Shape(Vetting vetting) => vetting.Symmetries.IsEmpty
        ? "The givens are not placed symmetrically."
        : $"The cells of the givens look the same {List(vetting.Symmetries.Select(Name))}.";

    private static string Name(GridSymmetry symmetry) => symmetry switch
    {
        GridSymmetry.HalfTurn => "after a half-turn",
        GridSymmetry.QuarterTurn => "after a quarter-turn",
        GridSymmetry.LeftRight => "mirrored left-right",
        GridSymmetry.TopBottom => "mirrored top-bottom",
        GridSymmetry.FallingDiagonal => "mirrored at the falling diagonal",
        GridSymmetry.RisingDiagonal => "mirrored at the rising diagonal",
        _ => throw new ArgumentOutOfRangeException(nameof(symmetry)),
    };

    private static string Hardness(PuzzleGrade grade)
    {
        var way = $"{Count(grade.Rounds, "round")}, {grade.Gates} of them gates, with one way on";
        return grade.Work is { } work
            ? $"It is {GradeFigures.WordOf(grade)}: work {work}, {way}."
            : $"It is unclimbed: this ladder does not solve it and stops after {way}.";
    }

    private static string Use(Rung rung, Route route, Wording wording) =>
        $"{wording.NameOf(rung.Rule.Id)} ({Count(route.Rounds.Count(round => round.Rung == rung), "round")})";

    private static string Of(RuleNeed need, Wording wording)
    {
        var name = Capital(wording.NameOf(need.Rule));
        var way = List(need.Instead.Select(rung => wording.NameOf(rung.Rule.Id)));
        return need.Need switch
        {
            Need.Spare => $"{name}: not needed, since easier rules solve it: {way}.",
            Need.Needed => $"{name}: needed. Without it and anything harder the ladder stops at {Stop(need)}. {Round(need, wording)}",
            Need.Late => $"{name}: comes only after harder rules, at {Stop(need)}. {Round(need, wording)}",
            _ when need.Instead.IsEmpty => $"{name}: {NotOpen(need)}; this ladder does not solve the puzzle.",
            _ => $"{name}: not needed, and {NotOpen(need)}. The puzzle goes by {way}.",
        };
    }

    private static string NotOpen(RuleNeed need) => need.Beside is { } board
        ? $"not open where easier rules stop, though it is on the way beside easier ones, first at {Count(board.Open.Count, "open cell")}"
        : "not open where easier rules stop";

    private static string Stop(RuleNeed need) => Count(need.Board!.Open.Count, "open cell");

    private static string Round(RuleNeed need, Wording wording)
    {
        var harder = need.Instead.TakeWhile(rung => rung.Rule.Id != need.Rule).ToList();
        return harder is [var hardest, ..]
            ? $"It can be gone round by {wording.NameOf(hardest.Rule.Id)}."
            : "Nothing else on the ladder gets round it.";
    }

    // What is no grid, or has more than one given too few, does not come from one slip.
    private static bool MayBeMistyped(GridDraft draft) =>
        draft.Text.Length == Cell.Count && draft.Text.Count(char.IsAsciiDigit) >= FewestGivens - 1;

    private static string Corrections(Vetting vetting)
    {
        var count = vetting.Corrections.Length;
        if (count == 0)
            return "No change of one cell gives it one solution: more than one digit differs from the source.";
        var shown = List(vetting.Corrections.Take(MostCorrections).Select(Say));
        return count <= MostCorrections
            ? $"It has one solution with one change: {shown}."
            : $"It has one solution with one of {count} changes, the likeliest first: {shown} and {count - MostCorrections} more.";
    }

    private static string Say(Correction correction) => correction switch
    {
        { From: { } from, To: { } to } => $"{correction.Cell} {to} for {from}",
        { To: { } to } => $"{correction.Cell} {to} added",
        _ => $"{correction.Cell} without its {correction.From}",
    };

    private static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..];

    private static string Count(int count, string what) => count == 1 ? $"1 {what}" : $"{count} {what}s";

    private static string List(IEnumerable<string> items) => string.Join(", ", items);
}
