using System.CommandLine;
using Companion.Drawing.Colours;
using Companion.Drawing.Stills;
using Companion.Engine.Proofs;
using Companion.Server.Data;
using Companion.Server.Settings;

namespace Companion.Server.CommandLine;

/// <summary><c>companion still</c>: draws the board into a file.</summary>
internal static class StillCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var grid = new Argument<string?>("grid")
        {
            Description = "The position: 81 characters row by row, or nine lines of nine. Without it the session's stage is drawn.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var deduction = PlainOption.Number("--deduction", "Which open deduction to draw, by its number in the scan.", 1, int.MaxValue);
        var grade = PlainOption.Number("--grade", "How much of it: 1 where, 2 what, 3 which, 4 why; 4 by default.", 1, 4);
        var size = PlainOption.Of(
            "--size", "Width and height in pixels; 1280x720 by default.", ImageSize.Read, "a size such as 1280x720, 240 to 8192 each way,");
        var theme = new Option<Theme>("--theme") { Description = "Light or dark; light by default." }.AcceptOnlyFromAmong("light", "dark");
        var output = new Option<string>("--out") { Description = "The PNG file to write.", Required = true, HelpName = "file" };
        var options = new LadderOptions();
        var command = new Command("still", "Draws the board, with a deduction on it if one is named, into a PNG file.")
        {
            grid, deduction, grade, size, theme, output,
        };
        options.AddTo(command);
        command.SetAction((asked, cancel) =>
        {
            var ladder = options.Whole(asked);
            var wording = ShippedFiles.Wording(ladder);
            var file = OutputFile.At(asked.GetRequiredValue(output), output.Name);
            return Task.FromResult(Run(
                asked.GetValue(grid) is { } text
                    ? StillScene.OfGrid(text, options.Cut(asked, ladder))
                    : StillScene.OfSession(options.Data(asked), ladder, wording),
                asked.GetValue(deduction),
                (Grade)(asked.GetValue(grade) ?? 4),
                wording,
                asked.GetValue(size) is { } pixels ? new(pixels.Width, pixels.Height, asked.GetValue(theme)) : new(1280, 720, asked.GetValue(theme)),
                file,
                asked.InvocationConfiguration,
                cancel));
        });
        return command;
    }

    private static int Run(
        StillScene scene,
        int? deduction,
        Grade grade,
        Wording wording,
        StillOptions options,
        OutputFile file,
        InvocationConfiguration streams,
        CancellationToken cancel)
    {
        if (scene.Faults.Length > 0)
        {
            foreach (var fault in scene.Faults)
                streams.Error.WriteLine(fault);
            return ExitCode.BadPuzzle;
        }

        using (LongWork.Begin(streams, "Drawing the still"))
        {
            var picture = deduction is { } number ? scene.PictureOf(number, grade, wording, cancel) : scene.OnAir;
            file.Write(Still.Png(scene.View!, picture, options), cancel);
        }

        streams.Output.WriteLine($"Drawn to {file}.");
        return ExitCode.Fine;
    }
}
