using Companion.Engine.Proofs;

namespace Companion.Engine.Tests.Rules;

/// <summary>A deduction that a test expects.</summary>
/// <param name="Pattern">Rule, digits, cells by role and houses, as a deduction writes them.</param>
/// <param name="Conclusion">Drawn: <c>58</c> where 5 and 8 go, <c>=5</c> where 5 is placed.</param>
internal sealed record Found(string Pattern, string Conclusion)
{
    /// <summary>Drawn: the absent candidates it must rest on; not looked at where null.</summary>
    public string? RestsOn { get; init; }

    /// <summary>
    /// The links, such as <c>r1c1=5 - r1c2=5</c>, with <c>=</c> for a strong one and commas between, and a group such as
    /// <c>r1c2+r1c3=5</c>; not looked at where null.
    /// </summary>
    public string? Links { get; init; }

    /// <summary>This one as a line of text, with those parts of the actual deduction that are not looked at.</summary>
    public string Beside(Deduction? actual) => Line(
        Pattern,
        Drawing.Filled(Conclusion),
        Drawing.Candidates(Conclusion),
        RestsOn is null ? actual?.RestsOn ?? default : Drawing.Candidates(RestsOn),
        Links ?? Write(actual));

    /// <summary>A deduction as the same line of text.</summary>
    public static string Text(Deduction actual)
    {
        var pattern = actual.ToString();
        var conclusion = pattern.IndexOf(actual.Places.IsEmpty ? " removes " : " places ", StringComparison.Ordinal);
        return Line(pattern[..conclusion], actual.Places, actual.Removes, actual.RestsOn, Write(actual));
    }

    private static string Line(string pattern, CandidateSet places, CandidateSet removes, CandidateSet restsOn, string links) =>
        $"{pattern}; places {places}; removes {removes}; rests on {restsOn}; links {links}";

    private static string Write(Deduction? actual) => actual is null
        ? ""
        : string.Join(", ", actual.Links.Select(link => $"{End(link.From, link.FromGroup)} {(link.IsStrong ? '=' : '-')} {End(link.To, link.ToGroup)}"));

    private static string End(Candidate candidate, CellSet group) =>
        group.IsEmpty ? candidate.ToString() : $"{string.Join('+', group)}={candidate.Digit}";
}
