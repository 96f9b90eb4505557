using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Server.Planning;

namespace Companion.Server.CommandLine;

/// <summary>A practice sheet; with <c>--json</c> it is written as it stands.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Positions">The positions in order.</param>
internal sealed record SheetResult(RuleId Rule, string Name, ImmutableArray<SheetResult.Position> Positions)
{
    /// <summary>The result of a sheet.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="positions">The positions.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="wording">The words.</param>
    public static SheetResult Of(RuleId rule, ImmutableArray<PracticePosition> positions, PracticeSheet sheet, Wording wording) => new(
        rule,
        wording.NameOf(rule),
        [
            .. positions.Select(position => new Position(
                position.Board.ToString(),
                position.Gone,
                position.Source,
                position.Answer.Places,
                position.Answer.Removes,
                position.Others,
                sheet.Hint(position).Words.Written,
                sheet.Hint(position).Words.Spoken,
                sheet.Proof(position))),
        ]);

    /// <summary>Writes it as text: the positions, and below them the answers.</summary>
    /// <param name="output">Where to.</param>
    public void Write(TextWriter output)
    {
        for (var index = 0; index < Positions.Length; index++)
        {
            var (position, gone) = (Positions[index], string.Join(',', Positions[index].Gone));
            output.WriteLine($"{index + 1,4}  {position.Grid}{(gone.Length > 0 ? $" --without {gone}" : "")}");
        }

        output.WriteLine("Answers:");
        for (var index = 0; index < Positions.Length; index++)
            output.WriteLine($"{index + 1,4}  {Positions[index].Short}{More(Positions[index].Others)}");
    }

    private static string More(int? others) => others > 0 ? $" ({others} more)" : "";

    /// <summary>A position.</summary>
    /// <param name="Grid">Its digits, 81 characters.</param>
    /// <param name="Gone">The candidates that are gone beyond what the digits take out.</param>
    /// <param name="Source">Where it comes from; empty for puzzles that were made for it.</param>
    /// <param name="Places">The digits that follow.</param>
    /// <param name="Removes">The candidates that go.</param>
    /// <param name="Others">How many more instances of the rule are open; null where not all were looked for.</param>
    /// <param name="Short">The answer as a caption.</param>
    /// <param name="Text">The answer as it may be said.</param>
    /// <param name="Proof">The answer as it is printed.</param>
    public sealed record Position(
        string Grid, CandidateSet Gone, string Source, CandidateSet Places, CandidateSet Removes, int? Others, string Short, string Text, string Proof);
}
