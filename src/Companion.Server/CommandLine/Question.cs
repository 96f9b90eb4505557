using Companion.Engine;

namespace Companion.Server.CommandLine;

/// <summary>What <c>companion why</c> is asked.</summary>
/// <param name="Asked">The digit and the cell.</param>
/// <param name="IsAgainst">Whether it is asked why the digit can not be there.</param>
internal sealed record Question(Candidate Asked, bool IsAgainst)
{
    /// <summary>Reads <c>r4c7=5</c>, why r4c7 is 5, or <c>r4c7-5</c>, why r4c7 cannot be 5; no shell takes either apart.</summary>
    /// <param name="text">What to read.</param>
    /// <exception cref="PlainException">It is neither.</exception>
    public static Question Read(string text)
    {
        var isAgainst = text.Length == 6 && text[4] == '-';
        return Candidate.TryParse(isAgainst ? text.Replace('-', '=') : text, out var asked)
            ? new(asked, isAgainst)
            : throw new PlainException($"'{text}' is no question: ask r4c7=5, why r4c7 is 5, or r4c7-5, why r4c7 cannot be 5.");
    }
}
