using System.CommandLine;
using Companion.Drawing.Stills.Sheets;
using Companion.Server.AfterShow;
using Companion.Server.Data;
using Companion.Server.Settings;
using Companion.Session.Views;

namespace Companion.Server.CommandLine;

/// <summary><c>companion contact-sheet</c>: the moments of a show that mattered, side by side.</summary>
internal static class ContactSheetCommand
{
    /// <summary>The command.</summary>
    public static Command Make()
    {
        var (show, options) = (ShowOptions.Show(), new LadderOptions());
        var perSheet = PlainOption.Number(
            "--per-sheet", $"How many moments go on one sheet; {ContactSheet.Most} by default. More sheets are numbered: FILE-2.png.", 1, ContactSheet.Most);
        var picture = new PictureOptions("The file to write: FILE.png or FILE.svg.", 1920, 1080);
        var command = new Command(
            "contact-sheet", "Draws the moments of a show that mattered, what was put on air and where chapters begin, into a PNG or SVG file.");
        command.Add(show);
        options.AddTo(command);
        command.Add(perSheet);
        picture.AddTo(command);
        command.SetAction((asked, cancel) =>
        {
            var opened = ShowOptions.Open(DataFolder.Open(options.Data(asked)), asked.GetRequiredValue(show), asked.InvocationConfiguration.Error);
            var ladder = options.Whole(asked);
            var wording = ShippedFiles.Wording(ladder);
            var moments = SheetMoments.Of(opened.Show, ShowChapters.Of(opened, ladder, wording).Chapters, new Voice(wording));
            if (moments.IsEmpty)
                throw new PlainException("Nothing was on air in this show and it has no chapters: there is nothing to draw.");
            var sheets = moments.Chunk(asked.GetValue(perSheet) ?? ContactSheet.Most).ToList();
            return Task.FromResult(picture.WriteAll(
                asked,
                "Drawing the contact sheet",
                [.. sheets.Select((sheet, index) => (Func<ImageSize, Drawing.Stills.Artwork>)(size => new ContactSheet(
                    sheets.Count == 1 ? opened.Show.Title : $"{opened.Show.Title} ({index + 1} of {sheets.Count})".TrimStart(),
                    [.. sheet],
                    new(size.Width, size.Height, picture.Theme(asked)))))],
                cancel));
        });
        return command;
    }
}
