using Companion.Server.Shows;
using Companion.Server.Wire;
using Companion.Session.Shows;
using Companion.Session.Views;
using Microsoft.AspNetCore.SignalR;

namespace Companion.Server.Live.Replay;

/// <summary>
/// Where a page gets the stage of a stored show, moment by moment. It knows nothing of the running session, and what it sends goes to the
/// page that asked alone: a replay is never mixed with what is on air. The page keeps the time.
/// </summary>
/// <param name="shows">The shows.</param>
/// <param name="voice">The words.</param>
internal sealed class ReplayHub(ShowLibrary shows, Voice voice) : Hub
{
    private const string Opened = "show";

    /// <summary>Opens a show: its number, or <c>latest</c>.</summary>
    public async Task<OpenedReplay> OpenShow(string? show)
    {
        try
        {
            // A file's path is for the command line; a page names none.
            if (show is not { Length: > 0 and <= 20 } || !(show == ShowLibrary.Latest || show.All(char.IsAsciiDigit)))
                throw new PlainException("A show is named by its number in the list of shows: open it from there.");
            var opened = await Task.Run(() => shows.Open(show), Context.ConnectionAborted);
            Context.Items[Opened] = opened.Show;
            return new(null, Timeline.Of(opened.Show));
        }
        catch (PlainException plain)
        {
            return new(plain.Message, null);
        }
    }

    /// <summary>The stage as it was after an event of the opened show; null where there is none.</summary>
    public StageWire? StageAfter(int number) =>
        Context.Items[Opened] is StoredShow show && number >= 1 && number <= show.Moments.Length
            // A code that viewers once wrote measures nothing any more.
            ? StageWire.Of(show.Moments[number - 1].State, voice) with { Code = null }
            : null;
}
