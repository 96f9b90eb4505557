namespace Companion.Session.AfterShow.Recaps;

/// <summary>How much was open at a time.</summary>
/// <param name="At">From when on, in the video.</param>
/// <param name="Deductions">How many deductions were open; null where the grid could not be scanned, as after a slip that breaks it.</param>
/// <param name="BivalueCells">How many cells had two candidates left.</param>
public sealed record Openness(TimeSpan At, int? Deductions, int BivalueCells);
