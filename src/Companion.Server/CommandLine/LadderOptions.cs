using System.CommandLine;
using Companion.Engine;
using Companion.Engine.Rules;
using Companion.Engine.Search;
using Companion.Server.Data;
using Companion.Server.Settings;

namespace Companion.Server.CommandLine;

/// <summary>The options of a command that scans: which rules it looks with.</summary>
internal sealed class LadderOptions
{
    private readonly Option<string> _stopAt = new("--stop-at", "--max")
    {
        Description = "The last rule of the ladder to look with; all of them where none is named.",
        HelpName = "rule",
    };

    private readonly Option<string[]> _withoutFamily = new("--without-family")
    {
        Description = "A family of rules to leave out, as ladder.json calls it; may be given several times.",
        HelpName = "name",
        DefaultValueFactory = _ => [],
    };

    private readonly Option<string> _data = SharedOptions.Data();

    /// <summary>Gives a command these options.</summary>
    /// <param name="command">The command.</param>
    public void AddTo(Command command)
    {
        command.Add(_stopAt);
        command.Add(_withoutFamily);
        command.Add(_data);
    }

    /// <summary>The folder that was named, or null.</summary>
    /// <param name="asked">What was typed.</param>
    public string? Data(ParseResult asked) => asked.GetValue(_data);

    /// <summary>The whole ladder of the presenter, with the names of its rules.</summary>
    /// <param name="asked">What was typed.</param>
    /// <exception cref="PlainException">The file cannot be used.</exception>
    public Ladder Whole(ParseResult asked) => LadderFile.Read(DataFolder.Find(Data(asked)));

    /// <summary>Whether a last rule was named.</summary>
    /// <param name="asked">What was typed.</param>
    public bool IsCut(ParseResult asked) => asked.GetValue(_stopAt) is not null;

    /// <summary>What of the ladder is asked for.</summary>
    /// <param name="asked">What was typed.</param>
    /// <param name="ladder">The whole ladder.</param>
    /// <exception cref="PlainException">There is no such rule or family.</exception>
    public Ladder Cut(ParseResult asked, Ladder ladder)
    {
        var left = asked.GetValue(_withoutFamily)!;
        if (left.Except(ladder.Families.Select(family => family.Name)).FirstOrDefault() is { } unknown)
        {
            throw new PlainException(
                $"No family of rules is called '{unknown}': name {string.Join(", ", ladder.Families.Select(family => $"'{family.Name}'"))}.");
        }

        if (asked.GetValue(_stopAt) is not { } last)
            return ladder.AtFirst.Without(left);
        return ladder.Has(new(last))
            ? ladder.UpTo(new(last)).AtFirst.Without(left)
            : throw new PlainException($"No rule is called '{last}': name one of ladder.json, such as xy-wing.");
    }

    /// <summary>
    /// What of a ladder may be used on a board: the rules that assume one solution only where its digits alone have just one,
    /// whatever candidates are gone.
    /// </summary>
    /// <param name="board">The board.</param>
    /// <param name="ladder">The ladder.</param>
    public static Ladder For(Board board, Ladder ladder) =>
        SolutionCounter.Count(BoardText.Write(board)) == 1 ? ladder : ladder.WithoutUniqueness();
}
