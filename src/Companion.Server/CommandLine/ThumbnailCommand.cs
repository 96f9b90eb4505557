using System.CommandLine;
using Companion.Drawing.Pictures;
using Companion.Drawing.Stills;
using Companion.Drawing.Stills.Thumbnails;
using Companion.Engine.Proofs;
using Companion.Server.Settings;

namespace Companion.Server.CommandLine;

/// <summary><c>companion thumbnail</c>: the picture by which a recording is chosen from a list.</summary>
internal static class ThumbnailCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var scenes = new SceneOptions();
        var title = new Option<string?>("--title") { Description = "The title; that of the puzzle by default.", HelpName = "text" };
        var credit = new Option<string?>("--credit") { Description = "Whom the puzzle is owed to; its setter by default.", HelpName = "text" };
        var deduction = PlainOption.Number("--deduction", "Which open deduction to draw, by its number in the scan; what is on air by default.", 1, int.MaxValue);
        var grade = PlainOption.Number("--grade", "How much of it: 1 where, 2 what, 3 which, 4 why; 3 by default, which gives nothing away.", 1, 4);
        var picture = new PictureOptions("The file to write: FILE.png or FILE.svg.");
        var command = new Command("thumbnail", "Draws title, credit and board in large letters, to be read at 160 pixels of width, into a PNG or SVG file.");
        scenes.AddTo(command);
        command.Add(title);
        command.Add(credit);
        command.Add(deduction);
        command.Add(grade);
        picture.AddTo(command);
        command.SetAction((asked, cancel) =>
        {
            var ladder = scenes.Ladder.Whole(asked);
            var wording = ShippedFiles.Wording(ladder);
            var scene = scenes.Read(asked, ladder, wording);
            if (scene.Faults.Length > 0)
                return Task.FromResult(scene.Refuse(asked.InvocationConfiguration.Error));
            var theirs = scene.View!.Credit;
            return Task.FromResult(picture.Write(asked, "Drawing the thumbnail", Draw, cancel));

            Artwork Draw(ImageSize size) => new Thumbnail(
                asked.GetValue(title) ?? theirs.Title,
                asked.GetValue(credit) ?? (theirs.Setter.Length > 0 ? $"set by {theirs.Setter}" : ""),
                scene.View.Cells,
                Pattern(scene),
                new(size.Width, size.Height, picture.Theme(asked)));

            Picture? Pattern(StillScene scene) => asked.GetValue(deduction) is { } number
                ? scene.PictureOf(number, (Grade)(asked.GetValue(grade) ?? 3), wording, cancel)
                : scene.OnAir;
        });
        return command;
    }
}
