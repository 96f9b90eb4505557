using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Proofs;

namespace Companion.Server.CommandLine;

/// <summary>What <c>scan --json</c> writes.</summary>
/// <param name="Grid">The position, 81 characters.</param>
/// <param name="Deductions">Every open deduction, easiest rule first.</param>
internal sealed record ScanResult(string Grid, ImmutableArray<ScanResult.Found> Deductions)
{
    /// <summary>The result of scanning a board.</summary>
    /// <param name="board">The board.</param>
    /// <param name="found">What was found on it.</param>
    /// <param name="wording">The words of the deductions.</param>
    public static ScanResult Of(Board board, IEnumerable<Deduction> found, Wording wording) => new(
        BoardText.Write(board),
        [.. found.Select(deduction => Found.Of(deduction, wording.HintsFor(board, deduction).Why.Words.Spoken))]);

    /// <summary>One open deduction.</summary>
    internal sealed record Found(
        RuleId Rule,
        ImmutableArray<PatternCell> Cells,
        DigitSet Digits,
        CandidateSet RestsOn,
        CandidateSet Places,
        CandidateSet Removes,
        string Text)
    {
        internal static Found Of(Deduction deduction, string text) => new(
            deduction.Rule,
            deduction.Cells,
            deduction.Digits,
            deduction.RestsOn,
            deduction.Places,
            deduction.Removes,
            text);
    }
}
