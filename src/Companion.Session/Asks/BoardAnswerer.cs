using Companion.Engine;
using Companion.Engine.Proofs;
using Companion.Session.Asks.Answers;
using Companion.Session.Asks.Gathering;
using Companion.Session.Asks.Steps;
using Companion.Session.State;

namespace Companion.Session.Asks;

/// <summary>Answers what is asked about the board as it stands: why a digit follows, how many are left.</summary>
/// <param name="wording">The words.</param>
/// <param name="cache">Where what is open is looked up.</param>
internal sealed class BoardAnswerer(Wording wording, StepsCache cache)
{
    /// <summary>Why the digit in a cell follows.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="seen">What the viewer sees.</param>
    public Prepared Why(Cell cell, SessionState seen)
    {
        if (seen.Grid.DigitAt(cell) is not { } digit)
            return Prepared.Of(new WhyOpen(cell));
        if (seen.Grid.Givens.Contains(cell))
            return Prepared.Of(new WhyGiven(cell));
        if (EntryReason.Of(seen, new(cell, digit), cache) is not { } reason)
            return Prepared.Of(new WhyUnknown(cell));
        var why = wording.HintsFor(reason.Board, reason.Deduction).Why;
        return new(new WhyFollows(cell, why, reason.StepsBefore), ("why", reason.Deduction));
    }

    /// <summary>How many of each digit are still to be placed.</summary>
    /// <param name="seen">What the viewer sees.</param>
    public static Prepared Left(SessionState seen)
    {
        var digits = seen.Grid.Digits;

        // After a wrong digit there may be ten of one.
        return Prepared.Of(new DigitsLeft(new([.. Digit.All.Select(digit => Math.Max(0, 9 - digits[digit].Count))])));
    }
}
