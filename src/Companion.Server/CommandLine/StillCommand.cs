using System.CommandLine;
using Companion.Drawing.Stills;
using Companion.Drawing.Stills.Overlays;
using Companion.Engine.Proofs;
using Companion.Session.State;

namespace Companion.Server.CommandLine;

/// <summary><c>companion still</c>: draws the board, or what is on air alone, into a file.</summary>
internal static class StillCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var scenes = new SceneOptions();
        var pattern = new PatternOptions(Grade.Why);
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
        pattern.AddTo(command);
        command.Add(bare);
        command.Add(transparent);
        command.Add(sceneName);
        picture.AddTo(command);
        command.SetAction((asked, cancel) =>
        {
            return Task.FromResult(scenes.Draw(asked, picture, "Drawing the still", Still, cancel));

            Artwork Still(StillScene scene, Wording wording, ImageSize size)
            {
                var onAir = asked.GetValue(bare) ? null : pattern.On(asked, scene, wording, cancel);
                return asked.GetValue(transparent)
                    ? new AirStill(onAir, scene.FrameOf(asked.GetValue(sceneName) ?? Scenes.Main), size.Width, size.Height)
                    : new StageStill(scene.View!, onAir, new(size.Width, size.Height, picture.Theme(asked)));
            }
        });
        return command;
    }
}
