using System.CommandLine;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;

namespace Companion.Server.CommandLine;

/// <summary>What a command that draws a board takes: a position, or the session as it stands.</summary>
internal sealed class SceneOptions
{
    private readonly Argument<string?> _grid = new("grid")
    {
        Description = "The position: 81 characters row by row, or nine lines of nine. Without it the session's stage is drawn.",
        Arity = ArgumentArity.ZeroOrOne,
    };

    /// <summary>The rules to look with.</summary>
    public LadderOptions Ladder { get; } = new();

    /// <summary>Gives a command these options.</summary>
    /// <param name="command">The command.</param>
    public void AddTo(Command command)
    {
        command.Add(_grid);
        Ladder.AddTo(command);
    }

    /// <summary>The scene.</summary>
    /// <param name="asked">What was typed.</param>
    /// <param name="ladder">The whole ladder.</param>
    /// <param name="wording">The words.</param>
    /// <exception cref="PlainException">There is no session, or no such rule or family.</exception>
    public StillScene Read(ParseResult asked, Ladder ladder, Wording wording) => asked.GetValue(_grid) is { } text
        ? StillScene.OfGrid(text, Ladder.Cut(asked, ladder))
        : StillScene.OfSession(Ladder.Data(asked), ladder, wording);
}
