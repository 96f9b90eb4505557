using System.CommandLine;
using Companion.Drawing.Stills.Thumbnails;
using Companion.Engine.Proofs;
using Companion.Session.AfterShow;
using Companion.Session.Shows;
using Companion.Session.State;

namespace Companion.Server.CommandLine;

/// <summary><c>companion thumbnail</c>: the picture by which a recording is chosen from a list.</summary>
internal static class ThumbnailCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var scenes = new SceneOptions(Teaser, "the first featured rule on air, or else the start,");
        var title = new Option<string?>("--title") { Description = "The title; that of the puzzle by default.", HelpName = "text" };
        var credit = new Option<string?>("--credit") { Description = "Whom the puzzle is owed to; its setter by default.", HelpName = "text" };
        var pattern = new PatternOptions(Grade.Which, "which gives nothing away");
        var picture = new PictureOptions("The file to write: FILE.png or FILE.svg.");
        var command = new Command("thumbnail", "Draws title, credit and board in large letters, to be read at 160 pixels of width, into a PNG or SVG file.");
        scenes.AddTo(command);
        command.Add(title);
        command.Add(credit);
        pattern.AddTo(command);
        picture.AddTo(command);
        command.SetAction((asked, cancel) => Task.FromResult(scenes.Draw(
            asked,
            picture,
            "Drawing the thumbnail",
            (scene, wording, size) => new Thumbnail(
                asked.GetValue(title) ?? scene.View!.Credit.Title,
                asked.GetValue(credit) ?? (scene.View!.Credit.Setter.Length > 0 ? $"set by {scene.View.Credit.Setter}" : ""),
                scene.View!.Cells,
                pattern.On(asked, scene, wording, cancel),
                new(size.Width, size.Height, picture.Theme(asked))),
            cancel)));
        return command;
    }

    // A show's end would give all of it away: what it is about, and no more of that than a grade that leaves the finding to the viewer.
    private static SessionState Teaser(StoredShow show)
    {
        var featured = Airing.Of(show).FirstOrDefault(airing => airing.IsFeatured);
        return featured is null
            ? (show.Moments.FirstOrDefault(moment => moment.State.Grid.Puzzle is not null) ?? show.Moments[0]).State
            : featured.First.State with { OnAir = featured.Cue with { Grade = Grade.Which } };
    }
}
