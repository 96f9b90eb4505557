using Companion.Engine;
using Companion.Session.Commands;
using Companion.Session.Events;
using Companion.Session.Planning;

namespace Companion.Session.Entries;

/// <summary>Decides on a new puzzle.</summary>
internal static class PuzzleRequests
{
    // A title or a credit is one line of a picture, an address one line of a description.
    private const int LongestCredit = 120;
    private const int LongestLink = 500;

    private const int MostReasons = 5;

    public static Decision Load(LoadPuzzle load, DateTimeOffset now)
    {
        var (title, setter, link) = (load.Title.Trim(), load.Setter.Trim(), load.Link.Trim());
        var reading = Puzzle.Read(BoardText.Read(load.Grid));
        List<string> reasons = [.. reading.Faults.Select(fault => fault.Sentence)];
        if (title.Length > LongestCredit || setter.Length > LongestCredit)
            reasons.Add($"Title and setter may have {LongestCredit} characters each: shorten them.");
        if (title.Any(char.IsControl) || setter.Any(char.IsControl))
            reasons.Add("Title and setter are one line each: take out line breaks and tabs.");
        if (link.Length > 0 && !IsLink(link))
        {
            reasons.Add(
                $"A link starts with http:// or https:// and has at most {LongestLink} characters: "
                + "correct it or leave it empty.");
        }

        if (PlanRequests.Fault(load.Featured) is { } fault)
            reasons.Add(fault);
        if (!reading.IsGood || reasons.Count > 0)
            return Decision.Refuse(ListReasons(reasons));
        var loaded = new PuzzleLoaded(now, reading.Value.Board.ToString(), title, setter, link);
        return load.Featured.Count == 0 ? Decision.Of(loaded) : Decision.Of(loaded, new RulesFeatured(now, load.Featured));
    }

    // Whole pages get pasted by mistake: a few reasons are enough to see that.
    private static string ListReasons(List<string> reasons) => reasons.Count <= MostReasons
        ? string.Join(' ', reasons)
        : $"{string.Join(' ', reasons.Take(MostReasons))} And {reasons.Count - MostReasons} more reasons like these.";

    private static bool IsLink(string link) =>
        link.Length <= LongestLink && Uri.TryCreate(link, UriKind.Absolute, out var address)
        && (address.Scheme == Uri.UriSchemeHttp || address.Scheme == Uri.UriSchemeHttps);
}
