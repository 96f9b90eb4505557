namespace Companion.Engine;

/// <summary>A full grid: one digit for each cell, none twice in a house.</summary>
public sealed class Solution
{
    private readonly string _digits;

    // Made by the search only, which guarantees the rule.
    internal Solution(string digits) => _digits = digits;

    /// <summary>The digit in the cell.</summary>
    public Digit this[Cell cell] => Digit.At(_digits[cell.Index] - '1');

    /// <summary>Whether the candidate is true in this grid.</summary>
    public bool Holds(Candidate candidate) => this[candidate.Cell] == candidate.Digit;

    /// <summary>The 81 digits, row by row.</summary>
    public override string ToString() => _digits;
}
