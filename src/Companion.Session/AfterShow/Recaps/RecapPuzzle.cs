using System.Collections.Immutable;
using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Planning.Talking;
using Companion.Session.State;

namespace Companion.Session.AfterShow.Recaps;

/// <summary>One puzzle of a show. All times are those of the video.</summary>
/// <param name="Credit">What it is called and whom it is owed to.</param>
/// <param name="Start">The puzzle.</param>
/// <param name="From">When it was loaded.</param>
/// <param name="SolvedAt">When the grid was full and right; null where it never was.</param>
/// <param name="Entries">How many entries were made.</param>
/// <param name="Grade">How hard it is.</param>
public sealed record RecapPuzzle(Credit Credit, Board Start, TimeSpan From, TimeSpan? SolvedAt, int Entries, PuzzleGrade Grade)
{
    /// <summary>What was told: deductions put on air or counted as used, each on its board; a route for those who put remarks into words.</summary>
    public required RunPlan Told { get; init; }

    /// <summary>When each of the steps told was.</summary>
    public required ImmutableArray<TimeSpan> ToldAt { get; init; }

    /// <summary>The places, 0-based, of the steps told that were on air, each pattern once.</summary>
    public required ImmutableArray<int> OnAir { get; init; }

    /// <summary>The places of the steps told that were featured and not on air or, where nothing was either, of the hardest ones.</summary>
    public required ImmutableArray<int> Featured { get; init; }

    /// <summary>Remarks that were true of the steps told.</summary>
    public required ImmutableArray<TalkingPoint> TrueRemarks { get; init; }

    /// <summary>What stood open for long while harder steps were made, the longest first.</summary>
    public required ImmutableArray<Overlooked> Overlooked { get; init; }

    /// <summary>Digits and strikes that the solution does not have, in order. For the presenter alone.</summary>
    public required ImmutableArray<Slip> Slips { get; init; }

    /// <summary>How much was open, as the grid changed.</summary>
    public required ImmutableArray<Openness> Curve { get; init; }

    /// <summary>The digit of which all nine were there first, and when; null where one was there from the beginning, or none ever was.</summary>
    public required (TimeSpan At, Digit Digit)? FirstDigit { get; init; }

    /// <summary>
    /// The cells of which viewers had found the digit before anybody can have seen it entered, with when it was entered and how many of
    /// them at least; empty for shows of versions that did not keep it.
    /// </summary>
    public required ImmutableArray<(TimeSpan At, CalledCell Found)> FoundFirst { get; init; }

    /// <summary>
    /// In how many cells the digit was entered after viewers had called the cell on air. Who they were and what else they called is
    /// never stored.
    /// </summary>
    public required int CalledFirst { get; init; }
}
