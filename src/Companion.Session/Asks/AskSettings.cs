using Companion.Engine.Proofs;
using Companion.Session.Asks.Delays;

namespace Companion.Session.Asks;

/// <summary>How viewers are answered, as it is set before the show; the presenter changes limits and delay while it runs.</summary>
public sealed record AskSettings
{
    /// <summary>What stands before each word: one to three signs, none of them a letter, a digit, a blank, <c>/</c> or <c>.</c>.</summary>
    public string Prefix { get; init; } = "!";

    /// <summary>Whether viewers may ask at all.</summary>
    public bool Open { get; init; } = true;

    /// <summary>The highest grade that viewers get, 1 to 4.</summary>
    public int HighestGrade { get; init; } = (int)Grade.Why;

    /// <summary>Whether viewers are not answered while something is on air.</summary>
    public bool QuietOnAir { get; init; }

    /// <summary>How far behind the presenter the viewers are, in seconds, 0 to 60. Answers are about the board of that time ago.</summary>
    public int DelaySeconds { get; init; } = 15;

    /// <summary>The least time between two asks of one viewer, in seconds, 0 to 600; what comes sooner is not answered.</summary>
    public int ViewerPauseSeconds { get; init; } = 5;

    /// <summary>The least time between two answers in one chat, in seconds, 0 to 60.</summary>
    public int ChatPauseSeconds { get; init; } = 2;

    /// <summary>The least time before the same question is answered again in one chat, in seconds, 0 to 600.</summary>
    public int RepeatPauseSeconds { get; init; } = 20;

    /// <summary>How long a question in a chat waits for others who ask the same, in seconds, 0 to 60.</summary>
    public int GatherSeconds { get; init; } = 2;

    /// <summary>
    /// The least time before a viewer gets the next grade of a deduction, in seconds, 0 to 600; null for as long as the grade
    /// before it takes to read. Those who can click through hints do so (Aleven et al. 2006, as a later survey has it).
    /// </summary>
    public int? GradePauseSeconds { get; init; }

    /// <summary>How many viewers are remembered, 10 to 100,000; who has not asked for longest is forgotten first.</summary>
    public int MostViewers { get; init; } = 5000;

    internal AskLimits Limits => new(Open, (Grade)HighestGrade, QuietOnAir);

    internal Delay Delay => Delay.OfSeconds(DelaySeconds);

    /// <summary>Every reason why these settings cannot be used, each with the way out.</summary>
    public IEnumerable<string> Faults()
    {
        if (Prefix is not { Length: >= 1 and <= 3 } || !Prefix.All(IsSign))
            yield return "asks.prefix is one to three signs such as '!', without letters, digits, blanks, '/' and '.': change it.";
        (string Name, int Value, int Least, int Most)[] numbers =
        [
            ("highestGrade", HighestGrade, (int)Grade.Where, (int)Grade.Why),
            ("delaySeconds", DelaySeconds, 0, Delay.MostSeconds),
            ("viewerPauseSeconds", ViewerPauseSeconds, 0, 600),
            ("chatPauseSeconds", ChatPauseSeconds, 0, 60),
            ("repeatPauseSeconds", RepeatPauseSeconds, 0, 600),
            ("gatherSeconds", GatherSeconds, 0, 60),
            ("gradePauseSeconds", GradePauseSeconds ?? 0, 0, 600),
            ("mostViewers", MostViewers, 10, 100_000),
        ];
        foreach (var (name, value, least, most) in numbers)
        {
            if (value < least || value > most)
                yield return $"asks.{name} is {least} to {most} and not {value}: change it.";
        }
    }

    // What chat servers and other programs take for their own words stays theirs.
    private static bool IsSign(char sign) =>
        char.IsAscii(sign) && !char.IsControl(sign) && !char.IsLetterOrDigit(sign) && sign is not (' ' or '/' or '.');
}
