namespace Companion.Server.Planning;

/// <summary>Has the numbers and the clock of a way ahead go on from what was done before it.</summary>
internal static class GoneOn
{
    /// <summary>The same sheet with its steps counted, and its clock running, from the start of the puzzle.</summary>
    /// <param name="sheet">The sheet of the way ahead, which counts from 1 and from 0:00.</param>
    /// <param name="steps">How many steps were done.</param>
    /// <param name="seconds">How long they took to say.</param>
    /// <returns>The sheet; its <see cref="RunSheet.Seconds"/> are still those of the way ahead.</returns>
    public static RunSheet After(this RunSheet sheet, int steps, double seconds) => sheet with
    {
        Passages =
        [
            .. sheet.Passages.Select(passage =>
                passage with { First = passage.First + steps, Last = passage.Last + steps, At = Math.Round(passage.At + seconds, 1) }),
        ],
        Steps = [.. sheet.Steps.Select(step => step with { Number = step.Number + steps, At = Math.Round(step.At + seconds, 1) })],
        Featured =
        [
            .. sheet.Featured.Select(featured => featured with
            {
                Step = featured.Step + steps,
                Others = [.. featured.Others.Select(other => other with { FromStep = other.FromStep + steps, ToStep = other.ToStep + steps })],
            }),
        ],
        TalkingPoints = [.. sheet.TalkingPoints.Select(point => point with { Step = point.Step + steps })],
    };
}
