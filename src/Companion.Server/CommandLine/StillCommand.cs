using System.CommandLine;
using Companion.Drawing.Pictures;
using Companion.Drawing.Stills;
using Companion.Drawing.Stills.Overlays;
using Companion.Engine.Proofs;
using Companion.Server.Settings;
using Companion.Session.State;

namespace Companion.Server.CommandLine;

/// <summary><c>companion still</c>: draws the board, or what is on air alone, into a file.</summary>
internal static class StillCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var scenes = new SceneOptions();
        var deduction = PlainOption.Number("--deduction", "Which open deduction to draw, by its number in the scan.", 1, int.MaxValue);
        var grade = PlainOption.Number("--grade", "How much of it: 1 where, 2 what, 3 which, 4 why; 4 by default.", 1, 4);
        var bare = new Option<bool>("--without-air") { Description = "The board alone, without what is on air." };
        var transparent = new Option<bool>("--transparent")
        {
            Description = "What is on air alone, where the overlay draws it, on a transparent ground.",
        };
        var sceneName = new Option<string>("--scene")
        {
            Description = $"The scene whose overlay --transparent draws; {Scenes.Main} by default.",
            HelpName = "name",
        };
        var picture = new PictureOptions("The file to write: FILE.png or FILE.svg.");
        var command = new Command("still", "Draws the board, with what is on air or with a deduction on it, into a PNG or SVG file.");
        scenes.AddTo(command);
        command.Add(deduction);
        command.Add(grade);
        command.Add(bare);
        command.Add(transparent);
        command.Add(sceneName);
        picture.AddTo(command);
        command.SetAction((asked, cancel) =>
        {
            var ladder = scenes.Ladder.Whole(asked);
            var wording = ShippedFiles.Wording(ladder);
            var scene = scenes.Read(asked, ladder, wording);
            if (scene.Faults.Length > 0)
                return Task.FromResult(scene.Refuse(asked.InvocationConfiguration.Error));
            return Task.FromResult(picture.Write(asked, "Drawing the still", Draw, cancel));

            Artwork Draw(ImageSize size) => asked.GetValue(transparent)
                ? new AirStill(OnAir(scene), scene.FrameOf(asked.GetValue(sceneName) ?? Scenes.Main), size.Width, size.Height)
                : new StageStill(scene.View!, OnAir(scene), new(size.Width, size.Height, picture.Theme(asked)));

            Picture? OnAir(StillScene scene)
            {
                if (asked.GetValue(bare))
                    return null;
                return asked.GetValue(deduction) is { } number
                    ? scene.PictureOf(number, (Grade)(asked.GetValue(grade) ?? 4), wording, cancel)
                    : scene.OnAir;
            }
        });
        return command;
    }
}
