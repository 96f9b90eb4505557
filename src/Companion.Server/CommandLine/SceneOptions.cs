using System.CommandLine;
using Companion.Drawing.Stills;
using Companion.Engine.Proofs;
using Companion.Engine.Rules;
using Companion.Server.AfterShow;
using Companion.Server.Data;
using Companion.Server.Settings;
using Companion.Server.Shows;
using Companion.Session.AfterShow;
using Companion.Session.Shows;
using Companion.Session.State;

namespace Companion.Server.CommandLine;

/// <summary>What a command that draws a board takes: a position, the session as it stands, or a moment of a stored show.</summary>
/// <param name="usual">What of a show is drawn where no moment is named; null for its end.</param>
/// <param name="whatIsUsual">The same in words, as in "the show's end".</param>
internal sealed class SceneOptions(Func<StoredShow, SessionState>? usual = null, string whatIsUsual = "the show's end")
{
    private readonly Argument<string?> _grid = new("grid")
    {
        Description = $"{PuzzleFile.OneLayout} Without it the session's stage is drawn.",
        HelpName = "grid|file|-",
        Arity = ArgumentArity.ZeroOrOne,
    };

    private readonly Option<string?> _show = new("--show")
    {
        Description = "A stored show instead: its number, the path of a show file, or 'latest'.",
        HelpName = "show",
    };

    private readonly Option<TimeSpan?> _at = new("--at")
    {
        Description = $"The time in the show's video, as in 4:05; {whatIsUsual} by default.",
        CustomParser = result =>
        {
            if (VideoClock.Read(result.Tokens[0].Value) is { } time)
                return time;
            result.AddError($"--at takes a time such as 4:05 or 1:04:05 and not '{result.Tokens[0].Value}'.");
            return null;
        },
        HelpName = "time",
    };

    private readonly Option<int?> _step = PlainOption.Number("--step", "Which of the show's events to stop after, from 1 on.", 1, int.MaxValue);

    private LadderOptions Ladder { get; } = new();

    /// <summary>Gives a command these options.</summary>
    /// <param name="command">The command.</param>
    public void AddTo(Command command)
    {
        command.Add(_grid);
        command.Add(_show);
        command.Add(_at);
        command.Add(_step);
        Ladder.AddTo(command);
    }

    /// <summary>Draws the scene into the file that was asked for.</summary>
    /// <param name="asked">What was typed.</param>
    /// <param name="picture">The size, the theme and the file.</param>
    /// <param name="what">What is being done, as in "Drawing the still".</param>
    /// <param name="draw">Makes what to draw.</param>
    /// <param name="cancel">Leaves the file as it was.</param>
    /// <returns>What the command leaves behind.</returns>
    /// <exception cref="PlainException">There is no session, or no such rule, family or show, or the file cannot be written.</exception>
    public int Draw(
        ParseResult asked, PictureOptions picture, string what, Func<StillScene, Wording, ImageSize, Artwork> draw, CancellationToken cancel)
    {
        var ladder = Ladder.Whole(asked);
        var wording = ShippedFiles.Wording(ladder);
        var scene = Read(asked, ladder, wording);
        return scene.Faults.Length > 0
            ? scene.Refuse(asked.InvocationConfiguration.Error)
            : picture.Write(asked, what, size => draw(scene, wording, size), cancel);
    }

    private StillScene Read(ParseResult asked, Ladder ladder, Wording wording)
    {
        var isOfShow = asked.GetValue(_show) is not null || asked.GetValue(_at) is not null || asked.GetValue(_step) is not null;
        if (asked.GetValue(_grid) is { } text)
        {
            return isOfShow
                ? throw new PlainException("A grid has no moments: leave out --show, --at and --step, or the grid.")
                : StillScene.OfGrid(PuzzleFile.One(text), Ladder.Cut(asked, ladder));
        }

        return isOfShow
            ? StillScene.OfState(StateOf(asked), ladder, wording)
            : StillScene.OfSession(Ladder.Data(asked), ladder, wording);
    }

    private SessionState StateOf(ParseResult asked)
    {
        var show = ShowOptions.Open(
            DataFolder.Open(Ladder.Data(asked)), asked.GetValue(_show) ?? ShowLibrary.Latest, asked.InvocationConfiguration.Error).Show;
        if (asked.GetValue(_step) is { } step)
        {
            return step <= show.Moments.Length
                ? show.Moments[step - 1].State
                : throw new PlainException($"The show has {show.Moments.Length} events and no number {step}: name an earlier one with --step.");
        }

        if (asked.GetValue(_at) is not { } at)
            return usual is null ? show.Last : usual(show);

        // The last second counts as a whole one, as times are written without parts of it.
        return Math.Floor(at.TotalSeconds) <= Math.Floor(show.VideoLength.TotalSeconds)
            ? VideoTime.MomentAt(show, at).State
            : throw new PlainException($"The show is {VideoClock.Of(show.VideoLength)} long and has no {VideoClock.Of(at)}: name an earlier time with --at.");
    }
}
