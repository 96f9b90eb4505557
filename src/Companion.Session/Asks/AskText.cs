using Companion.Engine;
using Companion.Engine.Proofs;

namespace Companion.Session.Asks;

/// <summary>Reads what viewers write: <c>!hint</c>, <c>!hint 3</c>, <c>!hint r4c7</c>, <c>!call r4c7 5</c>.</summary>
/// <param name="prefix">What stands before each of our words; see <see cref="AskSettings.Prefix"/>.</param>
public sealed class AskText(string prefix)
{
    /// <summary>The longest line that is looked at, in characters. No way of writing to us needs more.</summary>
    public const int Longest = 500;

    /// <summary>Reads one line. Never throws, and takes time in proportion to its length.</summary>
    /// <param name="line">Anything.</param>
    /// <returns>What is asked, or null where the line is not meant for us.</returns>
    public Ask? Read(string? line)
    {
        if (line is null || line.Length > Longest)
            return null;
        var words = PlainText.Of(line).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return words is [var first, .. var rest] && first.StartsWith(prefix, StringComparison.Ordinal)
            ? Read(first[prefix.Length..], rest)
            : null;
    }

    private static Ask? Read(string word, string[] rest) => word switch
    {
        "hint" => Hint(rest),
        "why" => rest is [var cell] && Cell.TryParse(cell, out var at) ? new AskWhy(at) : new AskUnclear(AskWord.Why),
        "call" => Call(rest),
        "left" => rest is [] ? new AskLeft() : new AskUnclear(AskWord.Left),
        "puzzle" => rest is [] ? new AskPuzzle() : new AskUnclear(AskWord.Puzzle),
        "delay" => rest is [var code] ? new AskDelay(code) : new AskUnclear(AskWord.Delay),
        _ => null,
    };

    // The cell and the grade in any order, each at most once.
    private static Ask Hint(string[] rest)
    {
        Cell? cell = null;
        Grade? grade = null;
        foreach (var part in rest)
        {
            if (cell is null && Cell.TryParse(part, out var at))
                cell = at;
            else if (grade is null && part is ['1' or '2' or '3' or '4'])
                grade = (Grade)(part[0] - '0');
            else
                return new AskUnclear(AskWord.Hint);
        }

        return new AskHint(cell, grade);
    }

    private static Ask Call(string[] rest) =>
        rest is [var cell, var digit] && Cell.TryParse(cell, out var at) && Digit.TryParse(digit, out var found)
            ? new AskCall(at, found)
            : new AskUnclear(AskWord.Call);
}
