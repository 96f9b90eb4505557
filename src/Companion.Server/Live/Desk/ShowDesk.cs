using System.Globalization;
using System.Text;
using Companion.Engine.Rules;
using Companion.Server.Access;
using Companion.Server.AfterShow;
using Companion.Server.Shows;
using Companion.Server.Wire;
using Companion.Session.Chapters;
using Companion.Session.Recording;
using Companion.Session.Views;

namespace Companion.Server.Live.Desk;

/// <summary>What the presenter's page asks about kept shows. Reading one may take a while, and is done beside the entries.</summary>
internal sealed class ShowDesk(LateAnswers answers, ShowLibrary shows, Ladder ladder, Voice voice)
{
    /// <summary>Pushes the list of shows.</summary>
    public Reply List(AccessRole who, string connection) => Answer(who, connection, page => page.Shows(new(shows.List())));

    /// <summary>Pushes the chapters of a show.</summary>
    public Reply Chapters(AccessRole who, string connection, int show) => Answer(who, connection, page => Push(page, show));

    /// <summary>Keeps edited chapters, or goes back to those of the log, and pushes what came of it.</summary>
    /// <param name="who">Whose key it came with.</param>
    /// <param name="connection">The page.</param>
    /// <param name="show">The show.</param>
    /// <param name="edited">The chapters by their times in the video; null for those of the log.</param>
    public Reply SaveChapters(AccessRole who, string connection, int show, IReadOnlyList<ChaptersWire.Mark?>? edited) =>
        Answer(who, connection, page =>
        {
            shows.SetChapters(show, edited is null ? null : ShowChapters.ToKeep([.. edited.Select(Mark)], Opened(show).Show));
            return Push(page, show);
        });

    /// <summary>Corrects the recording's offset, and pushes the chapters as they are then.</summary>
    public Reply SetOffset(AccessRole who, string connection, int show, double seconds) => Answer(who, connection, page =>
    {
        shows.SetOffset(show, seconds);
        return Push(page, show);
    });

    /// <summary>Pushes the chapters in one of their forms.</summary>
    public Reply WriteChapters(AccessRole who, string connection, int show, string? form, string? rate) => Answer(who, connection, page =>
    {
        var format = ChapterFormat.Named(form) ?? throw new PlainException("Chapters have no such form: choose one of the list.");
        var frames = FrameRate.All.FirstOrDefault(each => each.Name == (rate ?? "25"))
            ?? throw new PlainException("There is no such frame rate: choose one of the list.");
        return page.Save(new(
            string.Create(CultureInfo.InvariantCulture, $"show-{show}-chapters.{format.Extension}"),
            format.Write(ShowChapters.Of(Opened(show), ladder, voice.Wording), frames)));
    });

    /// <summary>Pushes a show as it is exported.</summary>
    public Reply Export(AccessRole who, string connection, int show) => Answer(who, connection, page =>
    {
        using var bytes = new MemoryStream();
        shows.Export(Name(show), bytes);
        return page.Save(new(string.Create(CultureInfo.InvariantCulture, $"show-{show}.json"), Encoding.UTF8.GetString(bytes.ToArray())));
    });

    private Task Push(IDeskClient page, int show)
    {
        var opened = Opened(show);
        return page.Chapters(ChaptersWire.Of(
            show,
            ShowChapters.Of(opened, ladder, voice.Wording),
            opened.Show.Offset.TotalSeconds,
            opened.Show.Recording.Phase != RecordingPhase.None));
    }

    private OpenedShow Opened(int show) => shows.Open(Name(show));

    private static string Name(int show) => show.ToString(CultureInfo.InvariantCulture);

    private static ChapterMark Mark(ChaptersWire.Mark? mark) => mark is { Title: not null, At: >= 0 and <= 24 * 60 * 60 }
        ? new(TimeSpan.FromSeconds(Math.Round(mark.At, 3)), mark.Title)
        : throw new PlainException("A chapter has a time within the video and a title: correct it.");

    // What cannot be done is said where the answer would be.
    private Reply Answer(AccessRole who, string connection, Func<IDeskClient, Task> work) => answers.Ask(who, connection, _ => async page =>
    {
        try
        {
            await work(page);
        }
        catch (PlainException plain)
        {
            await page.ShowsRefused(plain.Message);
        }
    });
}
