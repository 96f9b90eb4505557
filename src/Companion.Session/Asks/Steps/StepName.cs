using Companion.Engine.Proofs;

namespace Companion.Session.Asks.Steps;

/// <summary>Names deductions as viewers remember them.</summary>
internal static class StepName
{
    /// <summary>
    /// The same for the same pattern in the same puzzle, whatever still follows from it: who had a grade of it goes on from there
    /// when another entry has done a part of what it removes.
    /// </summary>
    public static string Of(int loading, Deduction deduction) =>
        $"{loading} {deduction.Rule} {deduction.Digits} {string.Join(' ', deduction.Cells.Select(part => part.Cell))}";
}
